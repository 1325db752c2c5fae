import { stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { bearing } from '../../report/plan-lines.ts';
import { counted } from '../../survey/counted.ts';
import { writePosition } from '../../survey/position-notation.ts';
import { planReplace, type ReplaceResult } from '../../tasks/plan/replace.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { planTools } from '../plan-tools.ts';

interface ReplaceOptions extends CommonOptions {
  readonly station: string;
  readonly why: string;
  readonly by: string;
}

export const planReplaceCommand: CliCommand = {
  name: 'replace',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'replace',
      'a station that cannot be worked gives its place to the next of the list in its stratum',
      'slateline plan replace spring --station NF-03 --why "surf on the reef edge" --by "Officer A" --book north-reefs',
    )
      .argument('<plan>', 'the plan')
      .requiredOption('--station <code>', 'the station that is given up')
      .requiredOption('--why <text>', 'why it cannot be worked')
      .requiredOption('--by <who>', 'who decides')
      .action(async (name: string, options: ReplaceOptions) => {
        await withBook(io, options.book, async (store) => {
          const request = { name, code: options.station, why: options.why };
          const result = await planReplace(request, planTools(io, store, options.by));
          setExitCode(stops(result.problems) ? exitCodes.held : exitCodes.done);
          if (options.json) {
            const { json: _, ...settings } = options;
            const rows = result.dropped === null ? [] : [rowOf(result)];
            printJson(io, {
              ...{
                command: 'plan replace',
                dataVersion: result.dataVersion,
                settings: { plan: name, ...settings },
              },
              ...{ rows, problems: [], planProblems: result.problems },
            });
            return;
          }
          for (const line of planProblemLines(result.problems)) io.stderr(`${line}\n`);
          for (const line of linesOf(result)) io.stdout(`${line}\n`);
        });
      }),
};

function rowOf({ dropped, replacement, sparesLeft }: ReplaceResult) {
  return { dropped: dropped!.code, replacement, stratum: dropped!.stratum, sparesLeft };
}

function linesOf({ dropped, replacement, sparesLeft, plan }: ReplaceResult): readonly string[] {
  if (dropped === null || replacement === null) return ['Nothing was changed.'];
  const course = bearing(replacement, 'magneticBearingDeg');
  const belts = course === '' ? '' : `, belts on ${course} by compass`;
  const lay =
    plan.content.laid !== null && course === '' ? ' It has no belts yet: “slateline plan lay”.' : '';
  return [
    `${dropped.code} is dropped; ${replacement.code} takes its place at ${writePosition(replacement.position)}${belts}.${lay}`,
    `${dropped.stratum}: ${counted(sparesLeft, 'spare')} left.`,
  ];
}

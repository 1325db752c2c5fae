import { Option } from 'commander';
import type { RichnessSettings } from '../../estimates/richness/richness-scopes.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { richnessLines } from '../../report/richness-lines.ts';
import { compareSpeciesNumbers, type RichnessAnswer } from '../../tasks/richness.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';

interface RichnessOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly by: RichnessSettings['by'];
  readonly accept?: { who: string; why: string };
}

export const richnessCommand: CliCommand = {
  name: 'richness',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'richness',
      'numbers of species, compared at equal effort only',
      'slateline richness --book north-reefs --survey "North 2026" --by stratum',
    )
      .option('--survey <name>', 'one survey only')
      .addOption(
        new Option('--by <scope>', 'what is compared: surveys, or the parts of each')
          .choices(['survey', 'stratum', 'zone', 'site'])
          .default('survey'),
      )
      .addOption(asOfOption())
      .option('--accept <who: why>', 'compare what is held, by name and reason', acceptanceOption)
      .action(async (options: RichnessOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const acceptance = options.accept ?? null;
          const request = { survey: options.survey ?? null, settings: { by: options.by, acceptance } };
          const { answers, dataVersion } = await compareSpeciesNumbers(store, request);
          if (options.json) {
            const { json: _, ...settings } = options;
            printJson(io, {
              command: 'richness',
              dataVersion,
              settings,
              rows: answers.map(rowOf),
              problems: [],
            });
          } else {
            if (acceptance !== null) io.stdout(`Accepted by ${acceptance.who}: ${acceptance.why}\n\n`);
            io.stdout(`${richnessLines(answers).join('\n')}\n\nData version ${dataVersion}\n`);
          }
          const held = answers.some(({ reason }) => reason !== null && holds.has(reason.code));
          if (held) setExitCode(exitCodes.held);
        });
      }),
};

const holds: ReadonlySet<string> = new Set([
  'unresolved-stations',
  'change-other-method',
  'richness-unequal-stations',
]);

function rowOf({ reason, cautions, ...numbers }: RichnessAnswer): Readonly<Record<string, unknown>> {
  return {
    ...numbers,
    reason: reason === null ? null : sentence('en', reason),
    reasonCode: reason?.code ?? null,
    cautions: cautions.map((caution) => sentence('en', caution)),
  };
}

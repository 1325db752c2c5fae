import { type Command, InvalidArgumentError, Option } from 'commander';
import { decodedText } from '../../exchange/text-encoding.ts';
import { stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { planLines } from '../../report/plan-lines.ts';
import { type PlanDrawResult, planDraw } from '../../tasks/plan/draw.ts';
import type { PlanDrawRequest, StratumNumber } from '../../tasks/plan/draw-request.ts';
import { handPickedTable } from '../../tasks/plan/hand-picked.ts';
import { acceptanceOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { readOneFile } from '../files.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { asWritten, listOption, plainNumber } from '../plan-options.ts';
import { planTools } from '../plan-tools.ts';

interface DrawOptions extends CommonOptions {
  readonly for: string;
  readonly stations: readonly StratumNumber[];
  readonly total?: number;
  readonly rule: 'proportional' | 'neyman';
  readonly pilot?: string;
  readonly species: readonly string[];
  readonly minimum: number;
  readonly stratum: readonly string[];
  readonly spares: readonly (StratumNumber | number)[];
  readonly method: 'acceptance' | 'pivotal';
  readonly seed: number;
  readonly spacing?: number;
  readonly redraws: number;
  readonly revisit?: string;
  readonly panel: readonly string[];
  readonly share: number;
  readonly handPicked: readonly string[];
  readonly protocol?: string;
  readonly decision?: string;
  readonly by?: string;
  readonly accept?: { who: string; why: string };
  readonly dryRun?: true;
}

export const planDrawCommand: CliCommand = {
  name: 'draw',
  define: (io, setExitCode) =>
    drawOptions(
      commandOf(
        io,
        'draw',
        'which stations: spread at random inside the mapped strata, spares in order, kept in the book',
        'slateline plan draw spring --for "North 2027" --stations "north flat: 8" --stations "lagoon: 6" --seed 7 --book north-reefs',
      ).argument('<name>', 'what the plan is called'),
    ).action(async (name: string, options: DrawOptions) => {
      await withBook(io, options.book, async (store) => {
        const request = requestOf(io, name, options);
        const result = await planDraw(request, planTools(io, store, options.by));
        if (options.json) printRows(io, { name, ...options }, result);
        else printForPeople(io, name, options, result);
        setExitCode(stops(result.problems) ? exitCodes.held : exitCodes.done);
      });
    }),
};

function drawOptions(command: Command): Command {
  return command
    .requiredOption('--for <survey>', 'the survey it is for; it need not be in the book yet')
    .option(
      '--stations <stratum: n>',
      'stations of one stratum, as in "lagoon: 6"; repeat it',
      listOption(stratumNumber),
      [],
    )
    .option('--total <n>', 'stations in all, divided over the strata (see --rule)', plainNumber)
    .addOption(
      new Option('--rule <rule>', 'how a total is divided: by area, or by area and spread')
        .choices(['proportional', 'neyman'])
        .default('proportional'),
    )
    .option('--pilot <survey>', 'the earlier survey that shows the spread, for --rule neyman')
    .option('--species <name>', 'the species that shows it; repeat it for several', listOption(asWritten), [])
    .option('--minimum <n>', 'fewest stations in a stratum of a total', plainNumber, 3)
    .option('--stratum <name>', 'divide a total over these strata only; repeat it', listOption(asWritten), [])
    .option(
      '--spares <n>',
      'spares of each stratum, or "lagoon: 4" of one; repeat it (default: half the stations)',
      listOption(sparesOf),
      [],
    )
    .addOption(
      new Option('--method <name>', 'how they are spread')
        .choices(['acceptance', 'pivotal'])
        .default('acceptance'),
    )
    .option('--seed <n>', 'repeats the draw', plainNumber, 1)
    .option('--spacing <m>', 'least distance between stations, in metres', plainNumber)
    .option('--redraws <n>', 'draws behind the effect of the spacing; 0 for none', plainNumber, 500)
    .option('--revisit <survey>', 'visit stations of this earlier survey again, as fixed ones')
    .option(
      '--panel <code>',
      'this station of it; repeat it (default: by lot, see --share)',
      listOption(asWritten),
      [],
    )
    .option('--share <share>', 'how many of the stations of a stratum are revisited', plainNumber, 0.5)
    .option(
      '--hand-picked <station>',
      'a station somebody chose, "code: position", or a CSV file of them; repeat it',
      listOption(asWritten),
      [],
    )
    .option('--protocol <name>', 'how a station is worked')
    .option('--decision <text>', 'what has to be decided')
    .option('--by <who>', 'who draws (default: you)')
    .option('--accept <who: why>', 'replace the plan of this name', acceptanceOption)
    .option('--dry-run', 'show the draw and keep nothing');
}

function stratumNumber(text: string): StratumNumber {
  const at = text.lastIndexOf(':');
  const n = Number(text.slice(at + 1));
  if (at > 0 && text.slice(at + 1).trim() !== '' && !Number.isNaN(n))
    return { stratum: text.slice(0, at).trim(), n };
  throw new InvalidArgumentError('write a stratum and a number, as in "lagoon: 6"');
}

function sparesOf(text: string): StratumNumber | number {
  return text.includes(':') ? stratumNumber(text) : plainNumber(text);
}

function requestOf(io: Io, name: string, options: DrawOptions): PlanDrawRequest {
  const { rule, species, minimum, revisit } = options;
  return {
    ...{
      name,
      survey: options.for,
      decision: options.decision?.trim() || null,
      protocol: options.protocol ?? null,
    },
    ...{ stations: options.stations, strata: options.stratum },
    total:
      options.total === undefined
        ? null
        : { stations: options.total, rule, pilot: options.pilot ?? null, species, minimum },
    spares: options.spares.filter((one) => typeof one !== 'number'),
    sparesEach: options.spares.filter((one) => typeof one === 'number').at(-1) ?? null,
    ...{ method: options.method, seed: options.seed, redraws: options.redraws },
    minimumSpacingM: options.spacing ?? null,
    panel:
      revisit === undefined && options.panel.length === 0
        ? null
        : { survey: revisit ?? '', codes: options.panel, share: options.share },
    handPicked: options.handPicked.flatMap((text) => handPickedOf(io, text)),
    acceptance: options.accept ?? null,
    dryRun: options.dryRun === true,
  };
}

/** "H1: 17 45.3 S 177 24.0 E", or the name of a file. */
function handPickedOf(io: Io, text: string): PlanDrawRequest['handPicked'] {
  if (/\.(csv|txt|tsv)$/i.test(text)) {
    const rows = handPickedTable(decodedText(readOneFile(text, io.cwd).bytes));
    // A table without a station is refused like a station without a code: nobody names a file for nothing.
    return rows.length > 0 ? rows : [{ code: '', position: text }];
  }
  const at = text.indexOf(':');
  return [{ code: text.slice(0, Math.max(0, at)).trim(), position: text.slice(at + 1).trim() }];
}

function printRows(io: Io, options: DrawOptions & { readonly name: string }, result: PlanDrawResult): void {
  const { json: _, ...settings } = options;
  printJson(io, {
    ...{ command: 'plan draw', dataVersion: result.dataVersion, settings },
    rows: result.plan?.content.stations ?? [],
    ...{ problems: [], planProblems: result.problems },
  });
}

function printForPeople(io: Io, name: string, options: DrawOptions, result: PlanDrawResult): void {
  for (const line of planProblemLines(result.problems)) io.stderr(`${line}\n`);
  if (result.plan === null) {
    io.stdout('Nothing was drawn.\n');
    return;
  }
  io.stdout(`${planLines(name, result.plan.content).join('\n')}\n\n`);
  io.stdout(result.written ? `Kept in ${options.book}.\n` : 'Dry run: nothing was kept.\n');
}

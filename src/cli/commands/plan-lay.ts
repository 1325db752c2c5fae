import { type Command, InvalidArgumentError } from 'commander';
import { stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { beltLines, layingLines } from '../../report/plan-laying-lines.ts';
import { type Bend, type LayRequest, type LayResult, planLay } from '../../tasks/plan/lay.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { listOption, plainNumber } from '../plan-options.ts';
import { planTools } from '../plan-tools.ts';

interface LayOptions extends CommonOptions {
  readonly date: string;
  readonly protocol?: string;
  readonly belts?: number;
  readonly length?: number;
  readonly gap?: number;
  readonly width?: number;
  readonly bend: readonly Bend[];
  readonly turn?: number;
  readonly along: LayRequest['along'];
  readonly every?: true;
  readonly by?: string;
  readonly dryRun?: true;
}

export const planLayCommand: CliCommand = {
  name: 'lay',
  define: (io, setExitCode) =>
    layOptions(
      commandOf(
        io,
        'lay',
        'where each belt lies: start, end, bearing true and by compass, and whether it stays on its ground',
        'slateline plan lay spring --date 2026-12-21 --belts 6 --length 40 --gap 10 --width 2 --book north-reefs',
      ).argument('<plan>', 'the plan'),
    ).action(async (name: string, options: LayOptions) => {
      await withBook(io, options.book, async (store) => {
        const result = await planLay(requestOf(name, options), planTools(io, store, options.by));
        if (options.json) printRows(io, name, options, result);
        else printForPeople(io, options, result);
        setExitCode(stops(result.problems) ? exitCodes.held : exitCodes.done);
      });
    }),
};

function layOptions(command: Command): Command {
  return command
    .requiredOption('--date <day>', 'the day of the work, for the compass: 2026-12-21', dayOption)
    .option('--protocol <name>', 'how a station is worked (default: the one of the plan)')
    .option('--belts <n>', 'belts at a station, in series', plainNumber)
    .option('--length <m>', 'length of a belt', plainNumber)
    .option('--gap <m>', 'gap between belts', plainNumber)
    .option('--width <m>', 'width of a belt: both edges must lie on the ground', plainNumber)
    .option(
      '--turn <degrees>',
      'let a series turn by up to so much between belts where straight does not fit',
      plainNumber,
    )
    .option(
      '--bend <CODE:belt:degrees>',
      'turn before this belt of this station, to port with a minus; repeat it',
      listOption(bendOf),
      [],
    )
    .option('--along <CODE:degrees>', 'the contour at a station, true; repeat it', listOption(alongOf), [])
    .option('--every', 'print every belt')
    .option('--by <who>', 'who lays (default: you)')
    .option('--dry-run', 'show it and keep nothing');
}

function dayOption(text: string): string {
  const day = new Date(`${text}T00:00:00Z`);
  if (/^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text))
    return text;
  throw new InvalidArgumentError('write a day as in 2026-12-21');
}

function bendOf(text: string): Bend {
  const [, code, belt, turn] = /^(.+):\s*(\d+)\s*:\s*([-+]?\d+(?:\.\d+)?)$/.exec(text) ?? [];
  if (code !== undefined) return { code: code.trim(), belt: Number(belt), turnDeg: Number(turn) };
  throw new InvalidArgumentError(
    'write station, belt and degrees, as in NF-03:4:-20 (20 degrees to port before belt 4)',
  );
}

function alongOf(text: string): LayRequest['along'][number] {
  const [, code, degrees] = /^(.+):\s*(\d+(?:\.\d+)?)$/.exec(text) ?? [];
  if (code !== undefined && Number(degrees) <= 360) return { code: code.trim(), bearingDeg: Number(degrees) };
  throw new InvalidArgumentError('write station and true degrees from 0 to 360, as in NF-03:95');
}

function requestOf(name: string, options: LayOptions): LayRequest {
  return {
    ...{ name, date: options.date, protocol: options.protocol ?? null, bends: options.bend },
    ...{ belts: options.belts ?? null, lengthM: options.length ?? null, gapM: options.gap ?? null },
    ...{ widthM: options.width ?? null, turnDeg: options.turn ?? null, along: options.along },
    dryRun: options.dryRun === true,
  };
}

function printRows(io: Io, name: string, options: LayOptions, result: LayResult): void {
  const { json: _, ...settings } = options;
  const rows = (result.content?.stations ?? []).filter(({ belts }) => belts.length > 0);
  printJson(io, {
    ...{ command: 'plan lay', dataVersion: result.dataVersion, settings: { plan: name, ...settings } },
    ...{ rows, problems: [], planProblems: result.problems },
  });
}

function printForPeople(io: Io, options: LayOptions, { content, written, problems }: LayResult): void {
  for (const line of planProblemLines(problems)) io.stderr(`${line}\n`);
  if (content === null) {
    io.stdout('Nothing was laid.\n');
    return;
  }
  const lines = [...layingLines(content), ...(options.every ? beltLines(content) : [])];
  io.stdout(`${lines.join('\n')}\n\n`);
  io.stdout(written ? `Kept in ${options.book}.\n` : 'Dry run: nothing was kept.\n');
}

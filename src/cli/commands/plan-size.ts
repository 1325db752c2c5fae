import { resolve } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import { parseHTML } from 'linkedom';
import { planProblem, stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { planSizeLines } from '../../report/plan-size-lines.ts';
import type { SizeSettings } from '../../report/plan-size-shapes.ts';
import { precisionCurveFigure } from '../../report/precision-curve-figure.ts';
import { planSize } from '../../tasks/plan-size.ts';
import { mostStationsTried } from '../../tasks/size-need.ts';
import type { SizeGoalKind, SizeRequest, SizeResult } from '../../tasks/size-shapes.ts';
import type { TypedSpecies } from '../../tasks/size-subject.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { listOption, plainNumber } from '../plan-options.ts';
import { writeWhole } from '../write-whole.ts';

interface SizeOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly typed: readonly Omit<TypedSpecies, 'stationAreaM2'>[];
  readonly stationArea: number;
  readonly species: readonly { readonly name: string; readonly target: number | null }[];
  readonly decide?: string;
  readonly cv?: number;
  readonly margin?: number;
  readonly change?: number;
  readonly power: number;
  readonly confidence: number;
  readonly confidenceInPilot: number;
  readonly stationsADay?: number;
  readonly days?: number;
  readonly dayCost?: number;
  readonly maxStations?: number;
  readonly stationCost?: number;
  readonly transectCost?: number;
  readonly simulations: number;
  readonly seed: number;
  readonly picture?: string;
}

export const planSizeCommand: CliCommand = {
  name: 'size',
  define: (io, setExitCode) =>
    sizeOptions(
      commandOf(
        io,
        'size',
        'how many stations a decision needs, from an earlier survey or from typed values',
        'slateline plan size --book north-reefs --survey "North 2026" --species sandfish --change 0.5 --stations-a-day 4 --decide "close the flat if sandfish fell by half"',
      ),
    ).action(async (options: SizeOptions) => {
      const request = requestOf(options);
      const result =
        options.survey === undefined
          ? await planSize(null, request)
          : await withBookAsOf(io, options, (store) => planSize(store, request));
      const settled = withGoal(result, options);
      if (options.json) printRows(io, options, settled);
      else printForPeople(io, settled, settingsOf(options, request));
      if (options.picture !== undefined && settled.species.length > 0) {
        writePicture(io, options.picture, settled, request);
      }
      setExitCode(stops(settled.problems) ? exitCodes.held : exitCodes.done);
    }),
};

function sizeOptions(command: Command): Command {
  return command
    .option('--survey <name>', 'the earlier survey that shows density and clumping')
    .option(
      '--species <name>',
      'by any of its names, with a goal of its own as in "sandfish: 0.5"; may be repeated; default: all targets',
      listOption(speciesOf),
      [],
    )
    .option(
      '--typed <values>',
      'values where there is no survey, as in "sandfish: mean 30 per ha, k 0.3"; "scattered" for no clumping; may be repeated',
      listOption(typedOf),
      [],
    )
    .option('--station-area <m2>', 'with --typed: searched at one station', plainNumber, 240)
    .option('--decide <words>', 'what must be decided; stands above the answer')
    .option('--cv <share>', 'goal: standard error over density, as in 0.2', plainNumber)
    .option('--margin <share>', 'goal: half the interval over density, as in 0.3', plainNumber)
    .option('--change <factor>', 'goal: the change worth knowing, 0.5 a halving, 2 a doubling', plainNumber)
    .option('--power <share>', 'how often the change must be told', plainNumber, 0.8)
    .option('--confidence <share>', 'of intervals and of telling a change', plainNumber, 0.95)
    .option('--confidence-in-pilot <share>', 'in how many pilots the plan is large enough', plainNumber, 0.8)
    .option('--stations-a-day <n>', 'that the boat works', plainNumber)
    .option('--days <n>', 'boat days there are', plainNumber)
    .option('--day-cost <amount>', 'of a boat day, in any money', plainNumber)
    .option(
      '--station-cost <amount>',
      'of reaching and leaving a station: how many transects pay there?',
      plainNumber,
    )
    .option('--transect-cost <amount>', 'of one transect, in the same unit (minutes will do)', plainNumber)
    .option('--max-stations <n>', 'more cannot be worked', plainNumber)
    .option('--simulations <n>', 'pairs of surveys drawn for each number of stations', plainNumber, 1000)
    .option('--seed <n>', 'of the simulations', plainNumber, 1)
    .option('--picture <file>', 'write the curve as a picture (SVG)')
    .addOption(asOfOption());
}

/** "sandfish" or "sandfish: 0.5". */
function speciesOf(text: string): { name: string; target: number | null } {
  const parts = /^(.*):\s*([\d.]+)\s*$/.exec(text);
  return parts === null
    ? { name: text.trim(), target: null }
    : { name: parts[1]!.trim(), target: Number(parts[2]) };
}

function typedOf(text: string): SizeOptions['typed'][number] {
  const parts = /^(.+?):\s*mean\s+(-?[\d.]+)\s*(?:per\s*ha)?\s*,\s*(?:k\s+(-?[\d.]+)|scattered)\s*$/i.exec(
    text,
  );
  if (parts === null)
    throw new InvalidArgumentError(
      'write it as "sandfish: mean 30 per ha, k 0.3", or "sandfish: mean 30 per ha, scattered"',
    );
  const [, name, mean, k] = parts;
  return { name: name!.trim(), meanPerHa: Number(mean), clumpingK: k === undefined ? null : Number(k) };
}

const goals: readonly SizeGoalKind[] = ['cv', 'margin', 'change'];

function requestOf(options: SizeOptions): SizeRequest {
  const goal = goals.find((one) => options[one] !== undefined) ?? 'cv';
  return {
    survey: options.survey ?? null,
    typed: options.typed.map((one) => ({ ...one, stationAreaM2: options.stationArea })),
    ...{ species: options.species, goal, target: options[goal] ?? 0.2 },
    ...{ power: options.power, confidence: options.confidence, assurance: options.confidenceInPilot },
    stationsPerDay: options.stationsADay ?? null,
    days: options.days ?? null,
    dayCost: options.dayCost ?? null,
    mostStations: options.maxStations ?? null,
    stationCost: options.stationCost ?? null,
    transectCost: options.transectCost ?? null,
    ...{ simulations: options.simulations, seed: options.seed },
  };
}

/** Two goals, or none, leave the question open: nothing is answered. */
function withGoal(result: SizeResult, options: SizeOptions): SizeResult {
  const given = goals.filter((one) => options[one] !== undefined);
  if (given.length === 1) return result;
  const problem = planProblem('plan-goal-unclear', { given: given.length });
  return { ...result, species: [], need: null, problems: [problem, ...result.problems] };
}

function settingsOf(options: SizeOptions, request: SizeRequest): SizeSettings {
  return { ...request, decision: options.decide ?? null, mostTried: mostStationsTried };
}

function printRows(io: Io, options: SizeOptions, result: SizeResult): void {
  const { json: _, ...settings } = options;
  const rows = result.species.map(({ subject, curve: _curve, ...numbers }) => {
    const { name, strata, bestSplit: _best, ...seen } = subject;
    return { species: name, ...seen, strata, ...numbers };
  });
  printJson(io, {
    ...{ command: 'plan size', dataVersion: result.dataVersion, rows, problems: [] },
    settings: {
      ...settings,
      stations: result.need?.stations ?? null,
      decidedBy: result.need?.species ?? null,
    },
    planProblems: result.problems,
  });
}

function printForPeople(io: Io, result: SizeResult, settings: SizeSettings): void {
  const lines = planProblemLines(result.problems);
  if (stops(result.problems)) {
    io.stderr(`${lines.filter((line) => line.startsWith('stop')).join('\n')}\n`);
    return;
  }
  const version = result.dataVersion === null ? [] : ['', `Data version ${result.dataVersion}`];
  io.stdout(
    `${[...planSizeLines(result, settings), ...(lines.length > 0 ? ['', ...lines] : []), ...version].join('\n')}\n`,
  );
}

function writePicture(io: Io, picture: string, result: SizeResult, request: SizeRequest): void {
  const { document } = parseHTML('<!doctype html><html></html>');
  const path = resolve(io.cwd, picture);
  writeWhole(path, precisionCurveFigure(result, { ...request, document }));
  io.stderr(`picture: ${picture}\n`);
}

import { type Command, InvalidArgumentError, Option } from 'commander';
import { type PlanProblem, planProblem, stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { planAllocateLines } from '../../report/plan-allocate-lines.ts';
import {
  type AllocateRequest,
  type AllocateResult,
  planAllocate,
  type TypedStratum,
} from '../../tasks/plan-allocate.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { asWritten, listOption, plainNumber } from '../plan-options.ts';

interface AllocateOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species: readonly string[];
  readonly stratum: readonly TypedStratum[];
  readonly stations?: number;
  readonly budget?: number;
  readonly rule: 'proportional' | 'neyman' | 'cost';
  readonly minimum: number;
  readonly cost: AllocateRequest['costs'];
  readonly cv: number;
}

export const planAllocateCommand: CliCommand = {
  name: 'allocate',
  define: (io, setExitCode) =>
    allocateOptions(
      commandOf(
        io,
        'allocate',
        'planned stations over the strata, in whole numbers, for a number of stations or a budget',
        'slateline plan allocate --book north-reefs --survey "North 2026" --species sandfish --stations 40 --cost "outer terrace: 90"',
      ),
    ).action(async (options: AllocateOptions) => {
      const goal = goalOf(options);
      const result =
        goal === null
          ? refusedGoal(options)
          : options.survey === undefined
            ? await planAllocate(null, requestOf(options, goal))
            : await withBookAsOf(io, options, (store) => planAllocate(store, requestOf(options, goal)));
      if (options.json) printRows(io, options, result);
      else printForPeople(io, result, options.minimum);
      setExitCode(stops(result.problems) ? exitCodes.held : exitCodes.done);
    }),
};

function allocateOptions(command: Command): Command {
  return command
    .option('--survey <name>', 'the earlier survey that shows the spread in each stratum')
    .option(
      '--species <name>',
      'by any of its names; several share one split; default: all targets',
      listOption(asWritten),
      [],
    )
    .option(
      '--stratum <values>',
      'a typed stratum instead, as in "flat: area 420, spread 60, mean 30, cost 90, most 40"; may be repeated',
      listOption(stratumOf),
      [],
    )
    .option('--stations <n>', 'to be split', plainNumber)
    .option('--budget <amount>', 'to be spent, in the unit of the costs', plainNumber)
    .addOption(
      new Option('--rule <name>', 'area alone; area times spread; the same over the root of the cost')
        .choices(['proportional', 'neyman', 'cost'])
        .default('neyman'),
    )
    .option('--minimum <n>', 'stations in every stratum', plainNumber, 3)
    .option('--cost <stratum: amount>', 'of a station there; may be repeated', listOption(costOf), [])
    .option('--cv <share>', 'with several species: the CV wanted for each', plainNumber, 0.2)
    .addOption(asOfOption());
}

const stratumWords: Readonly<Record<string, keyof TypedStratum>> = {
  area: 'areaHa',
  weight: 'areaHa',
  spread: 'standardDeviation',
  mean: 'meanPerHa',
  cost: 'costPerStation',
  most: 'mostStations',
};

function stratumOf(text: string): TypedStratum {
  const at = text.lastIndexOf(':');
  const values: Record<string, number> = {};
  for (const part of text.slice(at + 1).split(',')) {
    const [, word, value] = /^\s*([a-z]+)\s+(-?[\d.]+)(?:\s*(?:ha|per ha))?\s*$/i.exec(part) ?? [];
    const field = stratumWords[word?.toLowerCase() ?? ''];
    if (at < 1 || field === undefined)
      throw new InvalidArgumentError(
        'write it as "flat: area 420, spread 60"; cost, mean and most (stations it can hold) may follow',
      );
    values[field] = Number(value);
  }
  const unknown = {
    areaHa: null,
    standardDeviation: null,
    costPerStation: null,
    mostStations: null,
    meanPerHa: null,
  };
  return { name: text.slice(0, at).trim(), ...unknown, ...values };
}

function costOf(text: string): AllocateRequest['costs'][number] {
  const at = text.lastIndexOf(':');
  const cost = Number(text.slice(at + 1));
  if (at > 0 && text.slice(at + 1).trim() !== '' && !Number.isNaN(cost))
    return { stratum: text.slice(0, at).trim(), cost };
  throw new InvalidArgumentError('write it as "outer terrace: 90"');
}

function goalOf({ stations, budget }: AllocateOptions): AllocateRequest['goal'] | null {
  if ((stations === undefined) === (budget === undefined)) return null;
  return stations === undefined ? { budget: budget! } : { stations };
}

function requestOf(options: AllocateOptions, goal: AllocateRequest['goal']): AllocateRequest {
  return {
    ...{ survey: options.survey ?? null, typed: options.stratum, species: options.species, goal },
    rule: options.rule === 'cost' ? 'cost-optimal' : options.rule,
    ...{ minimum: options.minimum, costs: options.cost, targetCv: options.cv },
  };
}

function refusedGoal(options: AllocateOptions): AllocateResult {
  const problems: readonly PlanProblem[] = [planProblem('plan-split-unclear')];
  const rule = options.rule === 'cost' ? 'cost-optimal' : options.rule;
  const nothing = { rows: [], stations: 0, cost: null, species: [], bookSpecies: [], dataVersion: null };
  return { ...nothing, survey: options.survey ?? null, rule, problems };
}

function printRows(io: Io, options: AllocateOptions, result: AllocateResult): void {
  const { json: _, ...settings } = options;
  printJson(io, {
    ...{ command: 'plan allocate', dataVersion: result.dataVersion, rows: result.rows, problems: [] },
    settings: { ...settings, stations: result.stations, cost: result.cost, precision: result.species },
    planProblems: result.problems,
  });
}

function printForPeople(io: Io, result: AllocateResult, minimum: number): void {
  const lines = planProblemLines(result.problems);
  if (stops(result.problems)) {
    io.stderr(`${lines.filter((line) => line.startsWith('stop')).join('\n')}\n`);
    return;
  }
  const version = result.dataVersion === null ? [] : ['', `Data version ${result.dataVersion}`];
  const said = lines.length > 0 ? ['', ...lines] : [];
  io.stdout(`${[...planAllocateLines(result, minimum), ...said, ...version].join('\n')}\n`);
}

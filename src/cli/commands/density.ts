import { type Command, InvalidArgumentError, Option } from 'commander';
import type { DensityAnswer } from '../../estimates/answers.ts';
import { type DensitySettings, defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { densityLines } from '../../report/density-lines.ts';
import { estimateDensity } from '../../tasks/estimate-density.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface DensityOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly by: DensitySettings['by'];
  readonly interval: DensitySettings['interval'];
  readonly confidence: number;
  readonly seed: number;
  readonly draws: number;
  readonly estimator: 'auto' | 'station-mean' | 'ratio-of-sums';
  readonly unit: DensitySettings['unit'];
  readonly selection: DensitySettings['selection'];
  readonly merge: readonly (readonly string[])[];
  readonly variance: 'usual' | 'local-mean';
  readonly fpc?: true;
  readonly clumping?: number;
  readonly accept?: { who: string; why: string };
}

export const densityCommand: CliCommand = {
  name: 'density',
  define: (io, setExitCode) =>
    densityOptions(
      commandOf(
        io,
        'density',
        'animals per hectare and in stock, with intervals that keep their promise',
        'slateline density --book north-reefs --survey "North 2026" --by stratum',
      ),
    ).action(async (options: DensityOptions) => {
      const settings = settingsOf(options);
      await withBookAsOf(io, options, async (store) => {
        const request = { survey: options.survey ?? null, species: options.species ?? null, settings };
        const result = await estimateDensity(store, request);
        if (options.json) printAnswers(io, options, result);
        else printForPeople(io, settings, result);
        const isKnown = ({ densityPerHa }: DensityAnswer) => densityPerHa !== null;
        setExitCode(exitCodeOfAnswers(result.answers, { isHeld, isKnown, species: options.species }));
      });
    }),
};

function densityOptions(command: Command): Command {
  const defaults = defaultDensitySettings;
  return command
    .option('--survey <name>', 'one survey only')
    .option('--species <name>', 'one species only, by any of its names')
    .addOption(
      new Option('--by <scope>', 'survey, stratum, site, zone or station')
        .choices(['survey', 'stratum', 'site', 'zone', 'station'])
        .default(defaults.by),
    )
    .addOption(
      new Option('--interval <method>', 'how the interval is made')
        .choices(['clumped', 'lognormal', 't', 'percentile', 'bca'])
        .default(defaults.interval),
    )
    .option(
      '--confidence <share>',
      'of the interval',
      numberOption('the confidence', 0.5, 0.999),
      defaults.confidence,
    )
    .option('--seed <n>', 'of drawn intervals', numberOption('the seed', 0, 2 ** 31, true), defaults.seed)
    .option(
      '--draws <n>',
      'of the bootstrap',
      numberOption('the number of draws', 99, 1_000_000, true),
      defaults.draws,
    )
    .addOption(
      new Option('--estimator <name>', 'how stations are averaged in a stratum')
        .choices(['auto', 'station-mean', 'ratio-of-sums'])
        .default('auto'),
    )
    .addOption(
      new Option('--unit <name>', 'the sampling unit; transects are held')
        .choices(['station', 'transect'])
        .default('station'),
    )
    .addOption(
      new Option('--selection <how>', 'stations chosen in this way only')
        .choices(['all', 'random', 'hand-picked'])
        .default('all'),
    )
    .option(
      '--merge <strata>',
      'strata taken as one, as in "north flat + south flat"; may be repeated',
      addMerge,
      [],
    )
    .addOption(
      new Option('--variance <formula>', 'local-mean for stations of a spread draw (plan draw)')
        .choices(['usual', 'local-mean'])
        .default('usual'),
    )
    .addOption(asOfOption())
    .option('--fpc', 'finite population correction, by stratum area over station area')
    .option('--clumping <k>', 'clumping k for the bound when nothing was seen', numberOption('k', 0.01, 1000))
    .option('--accept <who: why>', 'let a held answer go ahead, by name and reason', acceptanceOption);
}

/** "a + b" names two strata; a name alone merges nothing. */
function addMerge(text: string, before: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const names = text.split('+').map((name) => name.trim());
  if (names.length > 1 && names.every((name) => name !== '')) return [...before, names];
  throw new InvalidArgumentError('name at least two strata, as in "north flat + south flat"');
}

function settingsOf(options: DensityOptions): DensitySettings {
  if (options.variance === 'local-mean' && options.interval !== 'lognormal' && options.interval !== 't') {
    throw new InvalidArgumentError(
      '--variance local-mean shows in two intervals: add --interval lognormal or t',
    );
  }
  return {
    by: options.by,
    interval: options.interval,
    confidence: options.confidence,
    seed: options.seed,
    draws: options.draws,
    estimator:
      options.estimator === 'auto'
        ? 'auto'
        : options.estimator === 'station-mean'
          ? 'station mean'
          : 'ratio of sums',
    unit: options.unit,
    selection: options.selection,
    merges: options.merge,
    finitePopulation: options.fpc === true,
    ...(options.variance === 'local-mean' ? { variance: 'local mean' as const } : {}),
    clumpingK: options.clumping ?? null,
    acceptance: options.accept ?? null,
  };
}

const holds: ReadonlySet<string> = new Set(['unresolved-stations', 'mixed-selection', 'transects-as-unit']);

function isHeld(answer: DensityAnswer): boolean {
  return answer.reason !== null && holds.has(answer.reason.code) && answer.densityPerHa === null;
}

type Result = Awaited<ReturnType<typeof estimateDensity>>;

function printAnswers(io: Io, options: DensityOptions, result: Result): void {
  const { json: _, ...settings } = options;
  const rows = result.answers.map(densityRow);
  printJson(io, {
    command: 'density',
    dataVersion: result.dataVersion,
    settings,
    rows,
    problems: result.problems,
  });
}

/** A row of the contract: reasons as sentences, the belief left to the pictures. */
export function densityRow(answer: DensityAnswer): Readonly<Record<string, unknown>> {
  const { belief: _, reason, cautions, leftOut, ...numbers } = answer;
  return {
    ...numbers,
    reason: reason === null ? null : sentence('en', reason),
    reasonCode: reason?.code ?? null,
    cautions: cautions.map((caution) => sentence('en', caution)),
    leftOut: leftOut.map(({ station, transect, reason: why }) => ({
      station,
      transect,
      reason: sentence('en', why),
    })),
  };
}

function printForPeople(io: Io, settings: DensitySettings, result: Result): void {
  for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
  const lines = densityLines(result.answers, { confidence: settings.confidence, species: result.species });
  if (settings.acceptance !== null) {
    io.stdout(`Accepted by ${settings.acceptance.who}: ${settings.acceptance.why}\n\n`);
  }
  io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
}

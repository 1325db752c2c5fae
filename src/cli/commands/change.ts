import { Option } from 'commander';
import type { ChangeAnswer } from '../../estimates/change/change-answer.ts';
import type { ChangeSettings } from '../../estimates/change/estimate-change.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { changeLines, falseAlarmLines } from '../../report/change-lines.ts';
import { controlLines } from '../../report/control-lines.ts';
import { Failure } from '../../survey/failure.ts';
import { type CompareResult, compareSurveys } from '../../tasks/compare-surveys.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface ChangeOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly from?: string;
  readonly to?: string;
  readonly species?: string;
  readonly by: ChangeSettings['by'];
  readonly revisited: ChangeSettings['pairing'];
  readonly interval: ChangeSettings['interval'];
  readonly confidence: number;
  readonly seed: number;
  readonly draws: number;
  readonly arrangements: number;
  readonly impact?: string;
  readonly control?: string;
  readonly accept?: { who: string; why: string };
}

export const changeCommand: CliCommand = {
  name: 'change',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'change',
      'is it more or less than before? What two surveys have in common, compared, and what they cannot tell',
      'slateline change --book north-reefs --from "North 2024" --to "North 2026"',
    )
      .option('--from <survey>', 'the earlier survey; default: the one before')
      .option('--to <survey>', 'the later survey; default: the latest')
      .option('--species <name>', 'one species only, by any of its names')
      .addOption(
        new Option('--by <scope>', 'survey, stratum or zone')
          .choices(['survey', 'stratum', 'zone'])
          .default('survey'),
      )
      .addOption(
        new Option(
          '--revisited <which>',
          'stations taken as one place in both: auto (marked fixed), yes (every code in both), no',
        )
          .choices(['auto', 'yes', 'no'])
          .default('auto'),
      )
      .addOption(
        new Option('--interval <method>', 'clumped keeps its promise; log-ratio is the usual one')
          .choices(['clumped', 'log-ratio'])
          .default('clumped'),
      )
      .option('--impact <place>', 'zone or stratum that was closed or opened, against --control')
      .option('--control <place>', 'zone or stratum where nothing was done')
      .option('--confidence <share>', 'of the interval', numberOption('the confidence', 0.5, 0.999), 0.95)
      .option('--seed <n>', 'of draws and arrangements', numberOption('the seed', 0, 2 ** 31 - 1, true), 1)
      .option(
        '--draws <n>',
        'from the belief',
        numberOption('the number of draws', 1000, 1_000_000, true),
        20_000,
      )
      .option(
        '--arrangements <n>',
        'at random, where more than 20 000 are possible',
        numberOption('the number of arrangements', 999, 1_000_000, true),
        9999,
      )
      .addOption(asOfOption())
      .option('--accept <who: why>', 'compare what is held, by name and reason', acceptanceOption)
      .action(async (options: ChangeOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const result = await compareSurveys(store, requestOf(options));
          if (options.json) printRows(io, options, result);
          else printForPeople(io, options, result);
          const isKnown = ({ told, densityPerHa }: ChangeAnswer) => told !== null || densityPerHa !== null;
          setExitCode(exitCodeOfAnswers(result.answers, { isHeld, isKnown, species: options.species }));
        });
      }),
};

function requestOf(options: ChangeOptions) {
  const { by, revisited, interval, confidence, seed, draws, arrangements, impact, control } = options;
  if ((impact === undefined) !== (control === undefined)) throw new Failure('impact-needs-control', {});
  return {
    from: options.from ?? null,
    to: options.to ?? null,
    species: options.species ?? null,
    settings: { by, pairing: revisited, interval, confidence, seed, draws, permutations: arrangements },
    control: impact === undefined || control === undefined ? null : { impact, control },
    acceptance: options.accept ?? null,
  };
}

function isHeld({ reason, told }: ChangeAnswer): boolean {
  const holds = ['unresolved-stations', 'change-other-method', 'change-no-common-stratum'];
  return told === null && reason !== null && holds.includes(reason.code);
}

function printRows(io: Io, options: ChangeOptions, result: CompareResult): void {
  const { json: _, ...settings } = options;
  const comparability = result.comparability.aspects.map(({ aspect, verdict, reason }) => ({
    aspect,
    verdict,
    reason: reason === null ? null : sentence('en', reason),
  }));
  const rows = result.answers.map(({ reason, cautions, ...numbers }) => ({
    ...numbers,
    comparability: { verdict: result.comparability.verdict, aspects: comparability },
    control: result.controls.find((one) => one.species === numbers.species) ?? null,
    reason: reason === null ? null : sentence('en', reason),
    reasonCode: reason?.code ?? null,
    cautions: cautions.map((caution) => sentence('en', caution)),
  }));
  printJson(io, {
    command: 'change',
    dataVersion: result.dataVersion,
    settings: { ...settings, from: result.from, to: result.to },
    rows,
    problems: result.problems,
  });
}

function printForPeople(io: Io, options: ChangeOptions, result: CompareResult): void {
  for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
  if (options.accept !== undefined) io.stdout(`Accepted by ${options.accept.who}: ${options.accept.why}\n\n`);
  const words = { confidence: options.confidence, species: result.species };
  const lines = [
    ...changeLines(result, words),
    ...falseAlarmLines(result, words),
    ...controlLines(result.controls, words),
  ];
  io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
}

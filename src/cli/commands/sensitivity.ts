import type { SensitivityAnswer } from '../../estimates/sensitivity/sensitivity-answer.ts';
import type { ReferenceUsed } from '../../estimates/status/status-answer.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { sensitivityLines, sensitivitySentences } from '../../report/sensitivity-lines.ts';
import type { Reason } from '../../survey/message.ts';
import { tellSensitivity } from '../../tasks/sensitivity.ts';
import { asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';
import { referenceOption } from '../sourced-options.ts';
import { today } from '../today.ts';

interface SensitivityOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly reference?: ReferenceUsed;
  readonly confidence: number;
  readonly seed: number;
  readonly draws: number;
}

export const sensitivityCommand: CliCommand = {
  name: 'sensitivity',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'sensitivity',
      'does the answer stand: one station left out, doubtful data left out, other intervals and priors',
      'slateline sensitivity --book north-reefs --species sandfish --reference "50: Author 2014: belts"',
    )
      .option('--survey <name>', 'one survey; default: the latest')
      .option('--species <name>', 'one species only, by any of its names; then every way is shown')
      .option(
        '--reference <density>',
        'does what is said of this density turn, as in "50: Author 2014: belts"',
        referenceOption,
      )
      .option('--confidence <share>', 'of the intervals', numberOption('the confidence', 0.5, 0.999), 0.95)
      .option('--seed <n>', 'of the bootstrap', numberOption('the seed', 0, 2 ** 31, true), 1)
      .option(
        '--draws <n>',
        'of the bootstrap',
        numberOption('the number of draws', 99, 1_000_000, true),
        999,
      )
      .addOption(asOfOption())
      .action(async (options: SensitivityOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const { confidence, seed, draws } = options;
          const result = await tellSensitivity(store, {
            survey: options.survey ?? null,
            species: options.species ?? null,
            reference: options.reference ?? null,
            today: today(options.asOf === null ? io : { now: () => new Date(options.asOf!) }),
            settings: { confidence, seed, draws },
          });
          if (options.json) {
            const { json: _, ...settings } = options;
            const { dataVersion, problems } = result;
            const rows = result.answers.map(sensitivityRow);
            printJson(io, { command: 'sensitivity', dataVersion, settings, rows, problems });
          } else {
            for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
            const lines = sensitivityLines(result.answers, { ...result, confidence });
            io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
          }
          setExitCode(
            exitCodeOfAnswers(result.answers, {
              isHeld: () => false,
              isKnown: ({ verdict }) => verdict !== null,
              species: options.species,
            }),
          );
        });
      }),
};

function sensitivityRow(answer: SensitivityAnswer): Readonly<Record<string, unknown>> {
  const { density, reference, referenceHeld, variants, reason, ...rest } = answer;
  return {
    survey: density.survey,
    species: density.species,
    stationsInAll: density.stations,
    stationsWithSpecies: density.stationsWithSpecies,
    animals: density.animals,
    densityPerHa: density.densityPerHa,
    intervalPerHa: density.intervalPerHa,
    intervalMethod: density.intervalMethod,
    reference:
      reference === null
        ? null
        : { ...reference.content, source: reference.source, status: reference.status },
    referenceHeld: inWords(referenceHeld),
    ...rest,
    variants: variants.map((one) => ({ ...one, reason: inWords(one.reason) })),
    sentences: sensitivitySentences(answer),
    reason: inWords(reason),
    reasonCode: reason?.code ?? null,
  };
}

function inWords(reason: Reason | null): string | null {
  return reason === null ? null : sentence('en', reason);
}

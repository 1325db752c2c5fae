import { Option } from 'commander';
import type { SizesAnswer } from '../../estimates/answers.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { sizesLines } from '../../report/sizes-lines.ts';
import { estimateSizes } from '../../tasks/estimate-sizes.ts';
import { asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';

interface SizesOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly by: SizesAnswer['scope']['by'];
  readonly limit?: number;
  readonly class: number;
  readonly confidence: number;
}

export const sizesCommand: CliCommand = {
  name: 'sizes',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'sizes',
      'lengths raised to the counts: mean, share at or above a limit, quantiles, classes',
      'slateline sizes --book north-reefs --species sandfish --limit 160',
    )
      .option('--survey <name>', 'one survey only')
      .option('--species <name>', 'one species only, by any of its names')
      .addOption(
        new Option('--by <scope>', 'survey, stratum, site, zone or station')
          .choices(['survey', 'stratum', 'site', 'zone', 'station'])
          .default('survey'),
      )
      .option('--limit <mm>', 'size limit; default: the one in the book', numberOption('the limit', 1, 5000))
      .option('--class <mm>', 'width of the length classes', numberOption('the class width', 1, 1000), 20)
      .option('--confidence <share>', 'of the interval', numberOption('the confidence', 0.5, 0.999), 0.95)
      .addOption(asOfOption())
      .action(async (options: SizesOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const result = await estimateSizes(store, {
            survey: options.survey ?? null,
            species: options.species ?? null,
            by: options.by,
            limitMm: options.limit ?? null,
            classMm: options.class,
            confidence: options.confidence,
          });
          if (options.json) {
            const { json: _, ...settings } = options;
            const rows = result.answers.map(sizesRow);
            printJson(io, {
              command: 'sizes',
              dataVersion: result.dataVersion,
              settings,
              rows,
              problems: [],
            });
          } else {
            io.stdout(
              `${sizesLines(result.answers, result.species).join('\n')}\n\nData version ${result.dataVersion}\n`,
            );
          }
          setExitCode(
            exitCodeOfAnswers(result.answers, {
              isHeld: () => false,
              isKnown: ({ meanLengthMm }) => meanLengthMm !== null,
              species: options.species,
            }),
          );
        });
      }),
};

function sizesRow(answer: SizesAnswer): Readonly<Record<string, unknown>> {
  return {
    ...answer,
    reason: answer.reason === null ? null : sentence('en', answer.reason),
    reasonCode: answer.reason?.code ?? null,
  };
}

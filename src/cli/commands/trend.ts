import { Option } from 'commander';
import { sentence } from '../../report/catalogue/sentence.ts';
import { trendLines } from '../../report/trend-lines.ts';
import { followTrend } from '../../tasks/follow-trend.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';

interface TrendOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly species?: string;
  readonly survey: readonly string[];
  readonly confidence: number;
  readonly accept?: { who: string; why: string };
}

export const trendCommand: CliCommand = {
  name: 'trend',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'trend',
      'percent per year over three or more surveys, over the strata that all of them worked',
      'slateline trend --book north-reefs --species sandfish',
    )
      .option('--species <name>', 'one species only, by any of its names')
      .addOption(
        new Option('--survey <name>', 'a survey of the row, at least three times')
          .argParser(addName)
          .default([], 'all of them'),
      )
      .option('--confidence <share>', 'of the interval', numberOption('the confidence', 0.5, 0.999), 0.95)
      .addOption(asOfOption())
      .option('--accept <who: why>', 'use what is held, by name and reason', acceptanceOption)
      .action(async (options: TrendOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const { confidence } = options;
          const result = await followTrend(store, {
            species: options.species ?? null,
            surveys: options.survey,
            confidence,
            acceptance: options.accept ?? null,
          });
          if (options.json) {
            const { json: _, ...settings } = options;
            const rows = result.answers.map(({ reason, cautions, ...numbers }) => ({
              ...numbers,
              reason: reason === null ? null : sentence('en', reason),
              reasonCode: reason?.code ?? null,
              cautions: cautions.map((caution) => sentence('en', caution)),
            }));
            printJson(io, {
              command: 'trend',
              dataVersion: result.dataVersion,
              settings,
              rows,
              problems: [],
            });
          } else {
            if (options.accept !== undefined)
              io.stdout(`Accepted by ${options.accept.who}: ${options.accept.why}\n\n`);
            const lines = trendLines(result.answers, result.comparability, {
              confidence,
              species: result.species,
            });
            io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
          }
          const holds = ['unresolved-stations', 'change-other-method'];
          setExitCode(
            exitCodeOfAnswers(result.answers, {
              isHeld: ({ reason }) => reason !== null && holds.includes(reason.code),
              isKnown: ({ trend }) => trend !== null,
              species: options.species,
            }),
          );
        });
      }),
};

function addName(name: string, before: readonly string[]): readonly string[] {
  return [...before, name];
}

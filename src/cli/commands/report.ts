import { Option } from 'commander';
import { defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import type { ChosenRate } from '../../estimates/harvest/harvest-answer.ts';
import type { Language } from '../../report/catalogue/language.ts';
import { type PositionDetail, positionDetails } from '../../report/position-detail.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { addRate } from '../harvest-options.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { type SourcedNumber, sourcedOption } from '../sourced-options.ts';
import { writeReport } from '../write-report.ts';

interface ReportOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly to?: string;
  readonly decision?: string;
  readonly positions: PositionDetail;
  readonly language: Language;
  readonly class: number;
  readonly rate: readonly ChosenRate[];
  readonly limitReference?: SourcedNumber;
  readonly risk: number;
  readonly accept?: { who: string; why: string };
}

export const reportCommand: CliCommand = {
  name: 'report',
  define: (io) =>
    commandOf(
      io,
      'report',
      'one HTML page with figures, a map and every number with its n; opens without a network',
      'slateline report --book north-reefs --to north-2026.html',
    )
      .option('--survey <name>', 'the survey it is about; default: the latest')
      .option('--to <file>', 'where to write it; default: report.html in the book')
      .option('--decision <text>', 'what has to be decided, for the head of the page')
      .addOption(
        new Option('--positions <detail>', 'how exactly stations are shown')
          .choices(positionDetails)
          .default('rounded'),
      )
      .addOption(new Option('--language <code>', 'of the page').choices(['en', 'fr']).default('en'))
      .option('--class <mm>', 'width of the length classes', numberOption('the class width', 1, 1000), 20)
      .addOption(
        new Option(
          '--rate <share: source>',
          'what share of the legal stock a year, at least three times, as in "0.05: plan 2026"',
        )
          .argParser(addRate)
          .default([], 'none'),
      )
      .option(
        '--limit-reference <density: source>',
        'density below which nothing should be taken, as in "50 per ha: plan 2026"',
        sourcedOption('the limit reference', 0, 1e6, '50 per ha: plan 2026'),
      )
      .option(
        '--risk <share>',
        'chosen, of being below the limit reference',
        numberOption('the risk', 0.001, 0.999),
        0.1,
      )
      .option('--accept <who: why>', 'let held answers go ahead, by name and reason', acceptanceOption)
      .addOption(asOfOption())
      .action(async (options: ReportOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const written = await writeReport(io, store, {
            book: options.book,
            to: options.to ?? null,
            survey: options.survey ?? null,
            decision: options.decision ?? null,
            positionDetail: options.positions,
            language: options.language,
            asOf: options.asOf,
            classMm: options.class,
            advice: {
              rates: options.rate,
              limitReference:
                options.limitReference === undefined
                  ? null
                  : { densityPerHa: options.limitReference.value, source: options.limitReference.source },
              risk: options.risk,
            },
            settings: { ...defaultDensitySettings, acceptance: options.accept ?? null },
          });
          if (options.json) {
            const { json: _, ...settings } = options;
            const rows = [{ file: written.path, bytes: written.bytes, survey: written.survey }];
            printJson(io, {
              command: 'report',
              dataVersion: written.dataVersion,
              settings,
              rows,
              problems: [],
            });
          } else {
            io.stdout(`Report on ${written.survey}: ${written.path}\n`);
          }
        });
      }),
};

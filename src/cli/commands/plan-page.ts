import { resolve } from 'node:path';
import { Option } from 'commander';
import { parseHTML } from 'linkedom';
import type { Language } from '../../report/catalogue/language.ts';
import { renderPlanPage } from '../../report/plan-page/plan-page.ts';
import { type PositionDetail, positionDetails } from '../../report/position-detail.ts';
import { planPageInput } from '../../tasks/plan/page.ts';
import { asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { programVersion } from '../program-version.ts';
import { today } from '../today.ts';
import { reportFonts } from '../write-report.ts';
import { writeWhole } from '../write-whole.ts';

interface PageOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly to: string;
  readonly pilot?: string;
  readonly stationsADay?: number;
  readonly dayCost?: number;
  readonly positions: PositionDetail;
  readonly language: Language;
}

export const planPageCommand: CliCommand = {
  name: 'page',
  define: (io) =>
    commandOf(
      io,
      'page',
      'a plan as one HTML page for the crew: map, stations, belts, bearings, precision, cost',
      'slateline plan page spring --to spring.html --stations-a-day 4 --book north-reefs',
    )
      .argument('<plan>', 'the plan')
      .requiredOption('--to <file>', 'where to write it')
      .option('--pilot <survey>', 'the earlier survey behind the expected precision (default: the latest)')
      .option(
        '--stations-a-day <n>',
        'stations a boat works in a day',
        numberOption('the stations of a day', 0.1, 100),
      )
      .option('--day-cost <amount>', 'what a boat day costs', numberOption('the cost', 0, 1e9))
      .addOption(
        new Option('--positions <detail>', 'how exactly stations are shown')
          .choices(positionDetails)
          .default('exact'),
      )
      .addOption(new Option('--language <code>', 'of the page').choices(['en', 'fr']).default('en'))
      .addOption(asOfOption())
      .action(async (name: string, options: PageOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const input = await planPageInput(store, {
            ...{ plan: name, pilot: options.pilot ?? null, positionDetail: options.positions },
            ...{ stationsPerDay: options.stationsADay ?? null, dayCost: options.dayCost ?? null },
            ...{ programVersion: programVersion(), generatedOn: today(io) },
          });
          const { document } = parseHTML('<!doctype html><html></html>');
          const page = renderPlanPage(input, {
            ...{ language: options.language, fonts: reportFonts(), document },
          });
          writeWhole(resolve(io.cwd, options.to), page);
          if (options.json) {
            const { json: _, ...settings } = options;
            const rows = [{ file: options.to, bytes: Buffer.byteLength(page), plan: name }];
            printJson(io, {
              ...{
                command: 'plan page',
                dataVersion: input.dataVersion,
                settings: { plan: name, ...settings },
              },
              ...{ rows, problems: [] },
            });
          } else io.stdout(`Plan ${name}: ${options.to}\n`);
        });
      }),
};

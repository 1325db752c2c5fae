import { planAgainstLines } from '../../report/plan-against-lines.ts';
import { planLines, stratumRows } from '../../report/plan-lines.ts';
import { planShown } from '../../tasks/plan/show.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';

interface ShowOptions extends CommonOptions {
  readonly asOf: string | null;
}

export const planShowCommand: CliCommand = {
  name: 'show',
  define: (io) =>
    commandOf(
      io,
      'show',
      'a plan of the book: its strata, its stations, what was replaced, and what became of it',
      'slateline plan show spring --book north-reefs',
    )
      .argument('<plan>', 'the plan')
      .addOption(asOfOption())
      .action(async (name: string, options: ShowOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const { plan, against, dataVersion } = await planShown(store, name);
          if (options.json) {
            const { json: _, ...settings } = options;
            printJson(io, {
              ...{ command: 'plan show', dataVersion, settings: { plan: name, ...settings } },
              ...{
                rows: [{ name, ...plan.content, strata: stratumRows(plan.content), against }],
                problems: [],
              },
            });
            return;
          }
          const lines = [...planLines(name, plan.content), ...planAgainstLines(plan.content.survey, against)];
          io.stdout(`${lines.join('\n')}\n\nData version ${dataVersion}\n`);
        });
      }),
};

import { join, resolve } from 'node:path';
import { writeTables, writeWorkbook } from '../../exchange/write-tables.ts';
import { formatCount } from '../../report/numbers.ts';
import { textTable } from '../../report/text-table.ts';
import { bookRows } from '../../tasks/book-rows.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { writeWhole } from '../write-whole.ts';

interface ExportOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly to: string;
  readonly survey?: string;
}

export const exportCommand: CliCommand = {
  name: 'export',
  define: (io) =>
    commandOf(
      io,
      'export',
      'write the import tables back out: a folder of CSV files, or one XLSX',
      'slateline export --book north-reefs --to north-2026-data',
    )
      .requiredOption('--to <path>', 'a folder, or a file that ends in .xlsx')
      .option('--survey <name>', 'one survey only')
      .addOption(asOfOption())
      .action(async (options: ExportOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const tables = await bookRows(store, options.survey ?? null);
          const target = resolve(io.cwd, options.to);
          if (/\.xlsx$/i.test(options.to)) writeWhole(target, await writeWorkbook(tables));
          else for (const file of writeTables(tables)) writeWhole(join(target, file.name), file.text);
          const { tallies, ...others } = tables;
          const lengths = tallies.reduce((total, { row }) => total + row.lengths.length, 0);
          const counts = Object.entries({ ...others, counts: tallies }).map(([table, rows]) => ({
            table,
            rows: rows.length,
          }));
          const rows = [...counts, { table: 'lengths', rows: lengths }];
          if (options.json) {
            const { json: _, ...settings } = options;
            printJson(io, {
              command: 'export',
              dataVersion: await store.dataVersion(),
              settings,
              rows,
              problems: [],
            });
            return;
          }
          const columns = [
            { head: 'table', cell: (row: { table: string }) => row.table },
            { head: 'rows', cell: (row: { rows: number }) => formatCount(row.rows), number: true },
          ];
          io.stdout(
            `${textTable<{ table: string; rows: number }>(columns, rows)}\nWritten to ${options.to}\n`,
          );
        });
      }),
};

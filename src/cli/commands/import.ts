import { readMapping } from '../../exchange/mapping.ts';
import { readTables } from '../../exchange/read-tables.ts';
import { formatCount } from '../../report/numbers.ts';
import { textTable } from '../../report/text-table.ts';
import { counted } from '../../survey/counted.ts';
import type { Problem } from '../../survey/message.ts';
import { type TableName, type TableTotals, tableNames } from '../../survey/table-rows.ts';
import { importRows } from '../../tasks/import/import-rows.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { collectFiles, readOneFile } from '../files.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { problemLines } from '../print-problems.ts';
import { progressOn } from '../progress.ts';

interface ImportOptions extends CommonOptions {
  readonly map?: string;
  readonly dryRun?: true;
  readonly who?: string;
  readonly why?: string;
}

export const importCommand: CliCommand = {
  name: 'import',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'import',
      'bring tables into the book: CSV files, a folder of them, or one XLSX; all of it or nothing',
      'slateline import evening-files/ --book north-reefs --dry-run',
    )
      .argument('<path...>', 'files or folders')
      .option('--map <file>', "mapping file for somebody else's layout (JSON)")
      .option('--dry-run', 'read and check, write nothing')
      .option('--who <name>', 'who stands for this import in the history', io.user)
      .option('--why <text>', 'why, in the history', 'import')
      .action(async (paths: string[], options: ImportOptions) => {
        setExitCode(await importPaths(paths, options, io));
      }),
};

async function importPaths(paths: readonly string[], options: ImportOptions, io: Io): Promise<number> {
  return withBook(io, options.book, async (store) => {
    const progress = progressOn(io);
    const collected = collectFiles(paths, io.cwd);
    const mapping = options.map === undefined ? null : mappingFile(options.map, io);
    const parsed = mapping === null ? null : readMapping(mapping.content, mapping.name);
    const usable = collected.problems.length === 0 && parsed?.value !== null;
    const read = await readTables(usable ? collected.files : [], parsed?.value ?? null, ({ file, rows }) =>
      progress.step(`${file}: ${counted(rows, 'row')}`),
    );
    progress.step('comparing with the book');
    const result = await importRows(
      {
        rows: read.value.rows,
        readTotals: totalsOf(read.value.totals),
        readProblems: [...collected.problems, ...(parsed?.problems ?? []), ...(usable ? read.problems : [])],
        mapping,
        dryRun: options.dryRun === true,
      },
      {
        store,
        signature: {
          who: options.who ?? io.user,
          at: io.now().toISOString(),
          device: io.device,
          why: options.why ?? 'import',
        },
        newId: io.newId,
      },
    );
    progress.done();
    const stopped = result.problems.some((problem) => problem.severity === 'stop');
    if (options.json) {
      const settings = {
        book: options.book,
        paths,
        map: options.map ?? null,
        dryRun: options.dryRun === true,
      };
      const dataVersion = await store.dataVersion();
      printJson(io, {
        command: 'import',
        dataVersion,
        settings,
        rows: result.totals,
        problems: result.problems,
      });
    } else {
      printForPeople(io, result, options, stopped);
    }
    return stopped ? exitCodes.held : exitCodes.done;
  });
}

function mappingFile(path: string, io: Io): { readonly name: string; readonly content: string } {
  const { name, bytes } = readOneFile(path, io.cwd);
  return { name, content: new TextDecoder().decode(bytes) };
}

/** Only the tables that were there. */
function totalsOf(totals: Readonly<Record<TableName, { readonly read: number; readonly refused: number }>>) {
  return tableNames.map((table) => ({ table, ...totals[table] })).filter(({ read }) => read > 0);
}

function printForPeople(
  io: Io,
  result: { readonly totals: readonly TableTotals[]; readonly problems: readonly Problem[] },
  options: ImportOptions,
  stopped: boolean,
): void {
  for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
  if (result.totals.length > 0) io.stdout(`${totalsTable(result.totals)}\n`);
  if (stopped) io.stdout('Nothing was written: answer the stops above and import again.\n');
  else if (options.dryRun) io.stdout('Dry run: nothing was written.\n');
  else io.stdout(`Written to ${options.book}.\n`);
}

export function totalsTable(totals: readonly TableTotals[]): string {
  const number = (head: 'read' | 'added' | 'changed' | 'unchanged' | 'refused') => ({
    head,
    number: true,
    cell: (row: TableTotals) => formatCount(row[head]),
  });
  return textTable(
    [
      { head: 'table', cell: (row: TableTotals) => row.table },
      number('read'),
      number('added'),
      number('changed'),
      number('unchanged'),
      number('refused'),
    ],
    totals,
  );
}

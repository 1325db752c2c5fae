import { type CellChange, type HistoryRow, history } from '../../tasks/history.ts';
import type { Cell } from '../../tasks/record-in-words.ts';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';

interface HistoryOptions extends CommonOptions {
  readonly survey?: string;
  readonly station?: string;
  readonly transect?: string;
  readonly swim?: number;
  readonly species?: string;
  readonly record?: string;
  readonly limit: number;
}

export const historyCommand: CliCommand = {
  name: 'history',
  define: (io) =>
    commandOf(
      io,
      'history',
      'what changed, by whom, when, why and on which device; newest last',
      'slateline history --book north-reefs --station S7 --species sandfish',
    )
      .option('--survey <name>', 'of one survey')
      .option('--station <code>', 'of one station, its transects and counts')
      .option('--transect <code>', 'of one transect and its counts')
      .option('--swim <n>', 'of one swim', numberOption('the swim', 1, 1000, true))
      .option('--species <name>', 'of one species, by any of its names')
      .option('--record <id>', 'of one record, by its identity in the book')
      .option('--limit <n>', 'the newest so many', numberOption('the limit', 1, 1_000_000, true), 200)
      .action(async (options: HistoryOptions) => {
        await withBook(io, options.book, async (store) => {
          const request = {
            survey: options.survey ?? null,
            station: options.station ?? null,
            transect: options.transect ?? null,
            swim: options.swim ?? null,
            species: options.species ?? null,
            recordId: options.record ?? null,
            limit: options.limit,
          };
          const { rows, leftOut, dataVersion } = await history(store, request);
          if (options.json) {
            const settings = { book: options.book, ...request, leftOut };
            printJson(io, { command: 'history', dataVersion, settings, rows, problems: [] });
          } else {
            printForPeople(io, rows, leftOut);
          }
        });
      }),
};

function printForPeople(io: Io, rows: readonly HistoryRow[], leftOut: number): void {
  if (leftOut > 0) io.stdout(`${leftOut} earlier changes are not shown; --limit shows more\n`);
  let lastHead = '';
  for (const row of rows) {
    const head = headOf(row);
    if (head !== lastHead) io.stdout(`\n${head}\n`);
    lastHead = head;
    io.stdout(`  ${recordInWords(row)}\n`);
    for (const change of row.changes) io.stdout(`    ${changeInWords(change, row.what)}\n`);
  }
}

/** One for each signature: an import of a thousand rows says once who brought it. */
function headOf({ at, who, device, why, clockBehind }: HistoryRow): string {
  const note = clockBehind ? ' (by a clock that was behind; the order is that of the writing)' : '';
  return `${localMoment(at)}, ${who}, on ${device}: ${why}${note}`;
}

function recordInWords({ what, table, record }: HistoryRow): string {
  const names = Object.entries(record).map(([name, value]) => `${name} ${value}`);
  return `${what} in ${table}: ${names.join(', ')}`;
}

function changeInWords({ column, before, after }: CellChange, what: HistoryRow['what']): string {
  if (what === 'entered') return `${column}: ${cellInWords(after)}`;
  if (what === 'withdrawn') return `${column}: was ${cellInWords(before)}`;
  return `${column}: ${cellInWords(before)} → ${cellInWords(after)}`;
}

function cellInWords(cell: Cell): string {
  if (cell === null) return '(empty)';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  const text = String(cell);
  return text.length <= longestCell ? text : `${text.slice(0, longestCell)} … (${text.length} letters)`;
}

/** A mapping file is a page of text; --json has all of it. */
const longestCell = 120;

/** By the clock on the officer's wall. */
function localMoment(at: string): string {
  const then = new Date(at);
  const two = (n: number) => String(n).padStart(2, '0');
  const day = `${then.getFullYear()}-${two(then.getMonth() + 1)}-${two(then.getDate())}`;
  return `${day} ${two(then.getHours())}:${two(then.getMinutes())}`;
}

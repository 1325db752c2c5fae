/** One damaged input, read, explained and, for a share of the cases, imported into a book in memory. */

import { readTables } from '../../src/exchange/read-tables.ts';
import { seededRandom } from '../../src/maths/random.ts';
import { sentence } from '../../src/report/catalogue/sentence.ts';
import { openMemoryBook } from '../../src/store/book-folder.ts';
import { tableNames } from '../../src/survey/table-rows.ts';
import { importRows } from '../../src/tasks/import/import-rows.ts';
import { type BaseInput, baseInputs } from './base-inputs.ts';
import { mutated } from './mutate.ts';

export interface CaseResult {
  readonly stopped: boolean;
  readonly imported: boolean;
  readonly written: boolean;
  readonly ms: number;
}

export interface FuzzBench {
  /** Throws, naming what was broken, when the case shows a fault of ours. */
  run(caseNumber: number): Promise<CaseResult>;
  close(): Promise<void>;
}

/** Of so many cases one is imported: an import costs twenty times the reading of such a small input. */
const importsOneOf = 4;
/** A fresh book after so many imports: books that grow make every comparison slower. */
const importsPerBook = 25;
const signature = { who: 'fuzz', at: '2026-01-01T00:00:00Z', device: 'fuzz', why: 'fuzz' };

export async function fuzzBench(seed: number): Promise<FuzzBench> {
  const inputs = await baseInputs();
  let identities = 0;
  const newId = () => `00000000-0000-7000-8000-${(++identities).toString(16).padStart(12, '0')}`;
  const newBook = () => openMemoryBook({ name: 'fuzz', invented: true, at: signature.at, bookId: newId() });
  let book = await newBook();
  let imports = 0;

  return {
    async run(caseNumber) {
      const start = performance.now();
      // Each case has a generator of its own, so that any of them can be replayed alone.
      const random = seededRandom(seed * 1_000_003 + caseNumber);
      const input = damaged(inputs[random.below(inputs.length)]!, random);
      const read = await readTables(input.files, input.mapping);
      const stopped = read.problems.some((problem) => problem.severity === 'stop');
      for (const problem of read.problems) {
        const text = sentence('en', problem);
        if (
          /undefined|NaN|\[object/.test(text.replace(String(problem.value), '')) &&
          !/NaN/.test(JSON.stringify(problem))
        )
          throw new Error(`a sentence with a hole: ${text}`);
      }
      const imported = caseNumber % importsOneOf === 0;
      if (!imported) return { stopped, imported, written: false, ms: performance.now() - start };
      if (++imports % importsPerBook === 0) {
        await book.close();
        book = await newBook();
      }
      const written = await importAllOrNothing(read, stopped);
      return { stopped, imported, written, ms: performance.now() - start };
    },
    close: () => book.close(),
  };

  async function importAllOrNothing(
    read: Awaited<ReturnType<typeof readTables>>,
    stopped: boolean,
  ): Promise<boolean> {
    const request = {
      rows: read.value.rows,
      readTotals: tableNames.map((table) => ({ table, ...read.value.totals[table] })),
      readProblems: read.problems,
      mapping: null,
      dryRun: false,
    };
    const before = await book.dump();
    const first = await importRows(request, { store: book, signature, newId });
    const after = await book.dump();
    if (stopped && first.written) throw new Error('written in spite of a stop');
    if (!first.written && after !== before) throw new Error('stopped, and yet the book changed');
    for (const row of first.totals) {
      if (row.read !== row.added + row.changed + row.unchanged + row.refused)
        throw new Error(`rows of ${row.table} are not accounted for: ${JSON.stringify(row)}`);
    }
    if (!first.written) return false;
    // The whole import is in the book: the same rows again find nothing to add or change.
    const again = await importRows(request, { store: book, signature, newId });
    if (again.totals.some(({ added, changed }) => added + changed > 0) || (await book.dump()) !== after)
      throw new Error(`the import left something out: ${JSON.stringify(again.totals)}`);
    return true;
  }
}

function damaged(input: BaseInput, random: ReturnType<typeof seededRandom>): BaseInput {
  const victim = random.below(input.files.length);
  return { ...input, files: input.files.map((file, i) => (i === victim ? mutated(file, random) : file)) };
}

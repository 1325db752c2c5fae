import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Placed, type TableName, type TableRows, tableNames } from '../survey/table-rows.ts';
import { readTables } from './read-tables.ts';
import type { CellContent, ColumnDefinition } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';
import { type NamedText, writeTables, writeWorkbook } from './write-tables.ts';

// Authority of this whole file: invariance. What is written and read again is the same.

const oddTexts = [
  '=1+1',
  "'=x",
  '-',
  '@home',
  '"quoted"',
  'a;b\\;c',
  'two\nlines',
  'carriage\r\nreturn',
  'Tāmaki',
  'ʻōpihi',
  '🐚 shell',
  '007',
  'yes',
  '1e5',
  '2024-03-05',
  '_x000D_',
  'comma, tab\tend',
  ':',
  'null',
];
const anyText = fc
  .oneof(fc.constantFrom(...oddTexts), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }))
  .map((text) => text.trim())
  .filter((text) => text !== '');

function numberWithin(kind: { atLeast?: number; above?: number; atMost?: number }): fc.Arbitrary<number> {
  const min = kind.atLeast ?? (kind.above === undefined ? -1e6 : 1e-6);
  const digits = fc.integer({ min: 1, max: 15 });
  return fc
    .tuple(fc.double({ min, max: kind.atMost ?? 1e6, noNaN: true }), digits)
    .map(([value, precision]) => Number(value.toPrecision(precision)) + 0)
    .filter((value) => value >= min && value <= (kind.atMost ?? 1e6));
}

function contentOf({ kind }: ColumnDefinition): fc.Arbitrary<CellContent> {
  switch (kind.is) {
    case 'text':
      return anyText;
    case 'number':
      return numberWithin(kind);
    case 'whole number':
      return fc.integer({ min: kind.atLeast ?? 0, max: 2 ** 40 });
    case 'position':
      throw new Error('a position is read and never written');
    case 'date':
      return fc
        .date({ min: new Date('1950-01-01'), max: new Date('2099-12-31'), noInvalidDate: true })
        .map((day) => day.toISOString().slice(0, 10));
    case 'time':
      return fc.integer({ min: 0, max: 1439 }).map((m) => new Date(m * 60_000).toISOString().slice(11, 16));
    case 'yes':
      return fc.boolean();
    case 'one of':
      return fc.constantFrom(...kind.options);
    case 'list':
      return fc.array(anyText, { maxLength: 3 });
    case 'cover':
      return fc.array(fc.record({ name: anyText, percent: numberWithin({ atLeast: 0, atMost: 100 }) }), {
        maxLength: 3,
      });
  }
}

function cellOf(column: ColumnDefinition): fc.Arbitrary<CellContent> {
  const value = contentOf(column);
  return column.filled || column.whenEmpty !== null ? value : fc.option(value, { nil: null });
}

function rowOf(table: TableName): fc.Arbitrary<Record<string, CellContent>> {
  return fc.record(Object.fromEntries(tableDefinitions[table].columns.map((c) => [c.field, cellOf(c)])));
}

function rowsOf(table: TableName): fc.Arbitrary<Placed<never>[]> {
  const { key, columns } = tableDefinitions[table];
  const keyFields = columns.filter((c) => key?.includes(c.column)).map((c) => c.field);
  const name = (row: Record<string, CellContent>) => keyFields.map((field) => row[field]).join('\u0000');
  const rows =
    key === null
      ? fc.array(rowOf(table), { maxLength: 4 })
      : fc.uniqueArray(rowOf(table), { maxLength: 4, selector: name });
  return rows.map((all) => all.map((row) => ({ row: row as never, place: {} })));
}

/** Tallies with a count first: lengths without a count are met later, in the second table. */
const someTallies = fc
  .uniqueArray(
    fc.record({
      survey: anyText,
      station: anyText,
      transect: anyText,
      swim: fc.integer({ min: 1, max: 2 }),
      species: anyText,
      count: fc.option(fc.nat(), { nil: null }),
      lengths: fc.array(
        fc.record(
          Object.fromEntries(
            tableDefinitions.lengths.columns.slice(5).map((c) => [c.field, cellOf(c)]),
          ) as Record<'lengthMm', fc.Arbitrary<never>>,
        ),
        { maxLength: 3 },
      ),
    }),
    { maxLength: 4, selector: (t) => [t.survey, t.station, t.transect, t.swim, t.species].join('\u0000') },
  )
  .map((all) => all.filter((tally) => tally.count !== null || tally.lengths.length > 0))
  .map((all) => all.toSorted((a, b) => Number(a.count === null) - Number(b.count === null)))
  .map((all) => all.map((row) => ({ row, place: {} })));

const anyTables: fc.Arbitrary<TableRows> = fc.record({
  ...(Object.fromEntries(
    tableNames.filter((t) => t !== 'counts' && t !== 'lengths').map((table) => [table, rowsOf(table)]),
  ) as unknown as { [T in Exclude<keyof TableRows, 'tallies'>]: fc.Arbitrary<Placed<never>[]> }),
  tallies: someTallies as unknown as fc.Arbitrary<TableRows['tallies']>,
});

function withoutPlaces(rows: TableRows): unknown {
  return Object.fromEntries(
    Object.entries(rows).map(([table, placed]) => [table, placed.map((p: { row: unknown }) => p.row)]),
  );
}

async function readTexts(texts: readonly NamedText[]) {
  const encoder = new TextEncoder();
  return readTables(texts.map(({ name, text }) => ({ name, bytes: encoder.encode(text) })));
}

test('any rows survive CSV, and the CSV written from them again is the same to the byte', async () => {
  await fc.assert(
    fc.asyncProperty(anyTables, async (rows) => {
      const texts = writeTables(rows);
      const { value, problems } = await readTexts(texts);
      // Random numbers may be 999 or nearly nothing: the reader asks, and keeps them.
      expect(problems.filter((p) => p.code !== 'looks-like-missing')).toEqual([]);
      expect(withoutPlaces(value.rows)).toEqual(withoutPlaces(rows));
      expect(writeTables(value.rows)).toEqual(texts);
    }),
    { numRuns: 150 },
  );
});

test('any rows survive a workbook', async () => {
  await fc.assert(
    fc.asyncProperty(anyTables, async (rows) => {
      const { value, problems } = await readTables([{ name: 'book.xlsx', bytes: await writeWorkbook(rows) }]);
      // Random numbers may be 999 or nearly nothing: the reader asks, and keeps them.
      expect(problems.filter((p) => p.code !== 'looks-like-missing')).toEqual([]);
      expect(withoutPlaces(value.rows)).toEqual(withoutPlaces(rows));
    }),
    { numRuns: 60 },
  );
});

test('no cell of an exported CSV would be run as a formula', async () => {
  const station = {
    survey: '=cmd',
    station: '+1',
    transect: '@x',
    swim: 1,
    species: '-y',
    count: 1,
    lengths: [],
  };
  const empty = (await readTables([])).value.rows;
  const text = writeTables({ ...empty, tallies: [{ row: station, place: {} }] }).find(
    (t) => t.name === 'counts.csv',
  )!;
  expect(text.text).toBe("survey,station,transect,swim,species,count\n'=cmd,'+1,'@x,1,'-y,1\n");
});

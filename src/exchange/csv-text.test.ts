import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { delimiterOf, eachCsvRow, withGuard, withoutGuard, writeCsv } from './csv-text.ts';

function rowsOf(text: string): string[][] {
  const rows: string[][] = [];
  eachCsvRow(text, (cells) => rows.push([...cells]));
  return rows;
}

test.each([
  ['LF', '\n'],
  ['CRLF', '\r\n'],
  ['CR alone', '\r'],
])('rows end with %s', (_name, end) => {
  expect(rowsOf(`a,b${end}1,2${end}3,4`)).toEqual([
    ['a', 'b'],
    ['1', '2'],
    ['3', '4'],
  ]);
});

test('a quoted line break does not begin a row', () => {
  expect(rowsOf('a,b\r\n"one\r\ntwo","say ""x"""\r\n3,4').slice(1)).toEqual([
    ['one\r\ntwo', 'say "x"'],
    ['3', '4'],
  ]);
});

test('semicolon and tab are told from the header row, not from what stands in quotes', () => {
  expect(delimiterOf('a;b;c\n1,5;2;3')).toBe(';');
  expect(delimiterOf('a\tb\n')).toBe('\t');
  expect(delimiterOf('"a;b;c",d\n')).toBe(',');
  expect(delimiterOf('survey')).toBe(',');
});

test('a quote that is never closed is reported with its row', () => {
  expect(eachCsvRow('a,b\n1,2\n"3,4\n5,6\n', () => {})).toEqual([3]);
});

// Authority: invariance. Whatever is written comes back.
test('any table of texts survives writing and reading', () => {
  const table = fc.array(fc.array(fc.string({ unit: 'binary' }), { minLength: 2, maxLength: 2 }), {
    minLength: 1,
  });
  fc.assert(
    fc.property(table, (rows) => {
      const wellFormed = rows.map((cells) => cells.map((cell) => cell.toWellFormed()));
      expect(rowsOf(writeCsv([['a', 'b'], ...wellFormed])).slice(1, rows.length + 1)).toEqual(wellFormed);
    }),
    { numRuns: 200 },
  );
});

// A second algorithm: the library, which is asked as soon as a quote stands in the text.
test('a text without quotes gives the cells that the library finds when every cell is quoted', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', '7', ' ', '.', ';', 'é', '\u2028') });
  const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 });
  fc.assert(
    fc.property(table, fc.constantFrom('\n', '\r\n'), fc.boolean(), (rows, end, closed) => {
      const textOf = (write: (cell: string) => string) =>
        [['a', 'b', 'c'], ...rows].map((cells) => cells.map(write).join(',')).join(end) + (closed ? end : '');
      expect(rowsOf(textOf((one) => one))).toEqual(rowsOf(textOf((one) => `"${one}"`)));
    }),
    { numRuns: 300 },
  );
});

test('a long row leaves nothing behind in the short one after it', () => {
  expect(rowsOf('a,b\n1,2,3,4\n5,6')).toEqual([
    ['a', 'b'],
    ['1', '2', '3', '4'],
    ['5', '6'],
  ]);
});

test('a guard makes formulas harmless and comes off again', () => {
  expect(withGuard('=1+1')).toBe("'=1+1");
  expect(withGuard('plain')).toBe('plain');
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom("'", '=', '+', '-', '@', 'a') }), (text) => {
      expect(withoutGuard(withGuard(text))).toBe(text);
      expect(withGuard(text)).not.toMatch(/^[=+\-@]/);
    }),
  );
});

test('line ends of all kinds may stand in one text, and one within quotes makes no row', () => {
  expect(rowsOf('a,b\r1,2\n3,4\r\n"5\r6",7')).toEqual([
    ['a', 'b'],
    ['1', '2'],
    ['3', '4'],
    ['5\r6', '7'],
  ]);
});

test('a text in pieces has the rows of the whole', () => {
  const rows: unknown[] = [];
  eachCsvRow(['a;b\n1;2', '3;4', '5;6\n'], (cells, row) => rows.push([row, ...cells]));
  expect(rows).toEqual([
    [1, 'a', 'b'],
    [2, '1', '2'],
    [3, '3', '4'],
    [4, '5', '6'],
    [5, ''],
  ]);
});

test('reading may stop after some rows, with and without quotes', () => {
  for (const text of ['a\n1\n2\n3', '"a"\n1\n2\n3']) {
    const rows: number[] = [];
    eachCsvRow(text, (_, row) => rows.push(row), 2);
    expect(rows).toEqual([1, 2]);
  }
});

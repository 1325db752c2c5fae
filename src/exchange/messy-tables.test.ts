import { describe, expect, test } from 'vitest';
import { sentence } from '../report/catalogue/sentence.ts';
import { maxCellLetters, maxColumns } from './limits.ts';
import { readTables } from './read-tables.ts';

function read(files: Readonly<Record<string, string>>) {
  return readTables(
    Object.entries(files).map(([name, text]) => ({ name, bytes: new TextEncoder().encode(text) })),
  );
}

const counts = 'survey,station,transect,species,count\n';
const lengths = 'survey,station,transect,species,length_mm\n';
const stations = 'survey,station,stratum,date\n';
const codes = ({ problems }: Awaited<ReturnType<typeof read>>) => problems.map((p) => p.code);
const lengthsOf = ({ value }: Awaited<ReturnType<typeof read>>) =>
  value.rows.tallies.flatMap(({ row }) => row.lengths.map(({ lengthMm }) => lengthMm));

describe('rows that are not data', () => {
  test('titles above the header are noted and passed over', async () => {
    const result = await read({ 'counts.csv': `Reef survey\n\nmade by Recorder A,,,\n${counts}A,S,T,x,3\n` });
    expect(result.problems).toMatchObject([
      { code: 'rows-above-header', value: 'Reef survey', parameters: { rows: 2 }, place: { row: 1 } },
    ]);
    expect(result.value.rows.tallies[0]).toMatchObject({ row: { count: 3 }, place: { row: 5 } });
  });

  test('a header that comes again is noted and is no data, though every column is text', async () => {
    const result = await read({ 'targets.csv': 'survey,species\nA,x\nSurvey ,Species\nA,y\n' });
    expect(result.problems.map((p) => [p.code, p.place.row])).toEqual([['repeated-header', 3]]);
    expect(result.value.rows.targets.map(({ row }) => row.species)).toEqual(['x', 'y']);
    expect(result.value.totals.targets.read).toBe(2);
  });

  test('a second table below the first is one stop, not a stop for each of its rows', async () => {
    const result = await read({ 'counts.csv': `${counts}A,S,T,x,3\n\n${lengths}A,S,T,x,180\nA,S,T,x,190\n` });
    expect(result.problems).toMatchObject([
      { code: 'second-table', severity: 'stop', value: 'lengths', place: { row: 4 } },
    ]);
  });

  test('a survey that is called “survey” is data', async () => {
    expect(codes(await read({ 'counts.csv': `${counts}survey,S,T,x,3\n` }))).toEqual([]);
  });

  test.each(['Total,,,,3', 'Sum,,,,', 'seen by a tired person'])(
    'the footer “%s” is one stop',
    async (footer) => {
      expect(codes(await read({ 'counts.csv': `${counts}A,S,T,x,3\n\n${footer}\n` }))).toEqual([
        'footer-row',
      ]);
    },
  );

  test('a row that only lacks a cell is no footer', async () => {
    expect(codes(await read({ 'counts.csv': `${counts}A,S,T,x,\n` }))).toEqual(['missing-value']);
  });

  test('a column without a name is noted once, with what it holds', async () => {
    const text = ',survey,,station,transect,species,count\n1,A,,S,T,x,3\n2,A,,S,U,x,3\n';
    const { problems } = await read({ 'counts.csv': text });
    expect(problems).toMatchObject([
      { code: 'unnamed-column', value: '1', parameters: { column: 'A', number: 1 } },
    ]);
  });
});

describe('numbers with two meanings', () => {
  const semicolons = lengths.replaceAll(',', ';');

  // Authority: by hand. 17,5 cannot be thousands, so 1,234 in the same file is a decimal too.
  test('decimal commas are read where the file proves them, and that is said', async () => {
    const result = await read({ 'lengths.csv': `${semicolons}A;S;T;x;17,5\nA;S;T;x;1,234\nA;S;T;x;180\n` });
    expect(result.problems).toMatchObject([{ code: 'commas-decided', severity: 'note', value: '17,5' }]);
    expect(lengthsOf(result)).toEqual([17.5, 1.234, 180]);
  });

  test('1,234 alone is asked about, with both readings and the word of the mapping', async () => {
    const { problems } = await read({ 'lengths.csv': `${lengths}A,S,T,x,"1,234"\n` });
    expect(problems).toMatchObject([
      { code: 'comma-unclear', severity: 'stop', parameters: { asDecimal: '1.234', asThousands: '1234' } },
    ]);
    expect(sentence('en', problems[0]!)).toContain('decimal: "comma" or decimal: "point"');
  });

  test('a file with decimal points and commas is asked about', async () => {
    const result = await read({ 'lengths.csv': `${semicolons}A;S;T;x;17,5\nA;S;T;x;17.5\n` });
    expect(codes(result)).toEqual(['not-a-number']);
    expect(result.problems[0]?.suggestion).toBe('17.5');
  });

  test.each([
    ['12-14', '13'],
    ['~20', '20'],
    ['<1', '1'],
  ])('%s is a stop that suggests %s', async (written, suggestion) => {
    const { problems } = await read({ 'lengths.csv': `${lengths}A,S,T,x,${written}\n` });
    expect(problems).toMatchObject([{ code: 'number-approximate', severity: 'stop', suggestion }]);
  });

  test('18 cm in a column of millimetres suggests 180', async () => {
    const { problems } = await read({ 'lengths.csv': `${lengths}A,S,T,x,18 cm\n` });
    expect(problems).toMatchObject([{ code: 'not-a-number', suggestion: '180' }]);
  });

  test.each(['9999', '999', '0.01'])('a length of %s is kept and asked about', async (written) => {
    const result = await read({ 'lengths.csv': `${lengths}A,S,T,x,${written}\n` });
    expect(result.problems).toMatchObject([
      { code: 'looks-like-missing', severity: 'explain', value: written },
    ]);
    expect(lengthsOf(result)).toEqual([Number(written)]);
  });

  test('-99999 is no length', async () => {
    expect(codes(await read({ 'lengths.csv': `${lengths}A,S,T,x,-99999\n` }))).toEqual([
      'number-out-of-range',
    ]);
  });
});

describe('days with two meanings', () => {
  const dates = async (...written: string[]) => {
    const result = await read({
      'stations.csv': stations + written.map((day, i) => `A,S${i},reef,${day}\n`).join(''),
    });
    return { result, days: result.value.rows.stations.map(({ row }) => row.date) };
  };

  // Authority: there is no month 25.
  test('a day above 12 in the column decides, and that is said', async () => {
    const { result, days } = await dates('03/04/2026', '25/04/2026');
    expect(days).toEqual(['2026-04-03', '2026-04-25']);
    expect(result.problems).toMatchObject([
      { code: 'day-order-decided', severity: 'note', value: '25/04/2026', parameters: { habit: 'day' } },
    ]);
  });

  test('without such a day each one is a stop with both readings', async () => {
    const { result, days } = await dates('03/04/2026', '05/05/2026');
    expect(days).toEqual(['2026-05-05']);
    expect(result.problems).toMatchObject([
      {
        code: 'day-or-month-first',
        severity: 'stop',
        parameters: { dayFirst: '2026-04-03', monthFirst: '2026-03-04' },
      },
    ]);
    expect(sentence('en', result.problems[0]!)).toContain('dateForms: "D/M/YYYY" or "M/D/YYYY"');
  });

  test('days that contradict each other are all asked about', async () => {
    const { result } = await dates('25/04/2026', '04/25/2026', '03/04/2026');
    expect(codes(result)).toEqual(['day-or-month-first', 'day-or-month-first', 'day-or-month-first']);
  });

  test('a range of days is a stop with both ends; a day number outside a workbook comes with its day', async () => {
    const { result } = await dates('16-17 Sept 2011', '45356');
    expect(result.problems).toMatchObject([
      { code: 'day-range', parameters: { first: '2011-09-16', last: '2011-09-17' } },
      { code: 'not-a-date', suggestion: '2024-03-05' },
    ]);
  });
});

describe('files that are too much', () => {
  test('a cell longer than a spreadsheet can hold, and a table wider than any survey, are stops', async () => {
    const long = 'x'.repeat(maxCellLetters + 1);
    expect(codes(await read({ 'counts.csv': `${counts}A,S,T,${long},3\n` }))).toEqual(['cell-too-long']);
    const wide = Array.from({ length: maxColumns + 1 }, (_, i) => `c${i}`).join(',');
    expect(codes(await read({ 'counts.csv': `${wide}\n1\n` }))).toEqual(['too-many-columns']);
  });

  test('a text in Windows-1252 is read, and that is said', async () => {
    const bytes = Uint8Array.from(`${counts}A,Récif,T,x,3\n`, (letter) => letter.charCodeAt(0));
    const result = await readTables([{ name: 'counts.csv', bytes }]);
    expect(codes(result)).toEqual(['file-encoding-assumed']);
    expect(result.value.rows.tallies[0]?.row.station).toBe('Récif');
  });

  test('a stop that says why nothing was read is not followed by a second one', async () => {
    expect(codes(await read({ 'count.csv': counts }))).toEqual(['unknown-table']);
  });
});

import { describe, expect, test } from 'vitest';
import type { Problem } from '../survey/message.ts';
import { keptPerCode } from './problem-list.ts';
import { readTables } from './read-tables.ts';
import { writeWorkbookBytes } from './workbook.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

function read(files: Readonly<Record<string, string>>) {
  return readTables(Object.entries(files).map(([name, text]) => ({ name, bytes: bytes(text) })));
}

const codes = (problems: readonly Problem[]) => problems.map((problem) => problem.code);

const counts = 'survey,station,transect,species,count\n';
const lengths = 'survey,station,transect,species,length_mm\n';
const transects = 'survey,station,transect,length_m,width_m,status,none_seen\n';
const stations = 'survey,station,stratum,date,night,time_start\n';

describe('tallies', () => {
  test('counts and lengths of one species on one transect become one tally', async () => {
    const { value, problems } = await read({
      'lengths.csv': `${lengths}A,S1,T1,sandfish,180\nA,S1,T1,sandfish,180\nA,S1,T2,sandfish,90\n`,
      'counts.csv': `${counts}A,S1,T1,sandfish,5\n`,
    });
    expect(problems).toEqual([]);
    const length = { lengthMm: 180, n: 1, measure: null, photo: null };
    expect(value.rows.tallies).toEqual([
      {
        row: {
          survey: 'A',
          station: 'S1',
          transect: 'T1',
          swim: 1,
          species: 'sandfish',
          count: 5,
          lengths: [length, length],
        },
        place: { file: 'counts.csv', row: 2 },
      },
      {
        row: {
          survey: 'A',
          station: 'S1',
          transect: 'T2',
          swim: 1,
          species: 'sandfish',
          count: null,
          lengths: [{ ...length, lengthMm: 90 }],
        },
        place: { file: 'lengths.csv', row: 4 },
      },
    ]);
    expect(value.totals.lengths).toEqual({ read: 3, refused: 0 });
  });

  test('centimetres become exact millimetres', async () => {
    const { value } = await read({
      'lengths.csv': `${lengths.replace('_mm', '_cm')}A,S1,T1,sandfish,18.3\nA,S1,T1,sandfish,0.07\n`,
    });
    expect(value.rows.tallies[0]?.row.lengths.map((length) => length.lengthMm)).toEqual([183, 0.7]);
  });

  test('with both length columns the one that is filled counts', async () => {
    const { value, problems } = await read({
      'lengths.csv':
        'survey,station,transect,species,length_cm,length_mm\nA,S,T,x,,120\nA,S,T,x,9,\nA,S,T,x,,\n',
    });
    expect(value.rows.tallies[0]?.row.lengths.map((length) => length.lengthMm)).toEqual([120, 90]);
    expect(codes(problems)).toEqual(['missing-value']);
  });

  test('the same count twice is a stop that names both rows', async () => {
    const { problems } = await read({ 'counts.csv': `${counts}A,S1,T1,x,5\n\nA,S1,T1,x,6\n` });
    expect(problems).toMatchObject([
      {
        code: 'repeated-row',
        severity: 'stop',
        place: { file: 'counts.csv', row: 4 },
        parameters: { row: 4, firstRow: 2, firstFile: 'counts.csv' },
      },
    ]);
  });

  test.each([
    ['2.5', 'not-a-whole-number'],
    ['-3', 'number-out-of-range'],
    ['', 'missing-value'],
    ['many', 'not-a-number'],
  ])('a count of "%s" is a stop: %s', async (written, code) => {
    const { value, problems } = await read({ 'counts.csv': `${counts}A,S1,T1,x,${written}\n` });
    expect(codes(problems)).toEqual([code]);
    expect(problems[0]?.place).toEqual({
      file: 'counts.csv',
      row: 2,
      column: 'count',
      survey: 'A',
      station: 'S1',
      transect: 'T1',
      swim: 1,
      species: 'x',
    });
    expect(value.rows.tallies).toEqual([]);
  });
});

describe('cells', () => {
  test('an empty stratum and an empty belt length are left to whoever joins the rows', async () => {
    const { value, problems } = await read({
      'stations.csv': `${stations}A,S1,,2024-03-05,,\n`,
      'transects.csv': `${transects}A,S1,T1,,,done,\n`,
    });
    expect(problems).toEqual([]);
    expect(value.rows.stations[0]?.row.stratum).toBeNull();
    expect(value.rows.transects[0]?.row).toMatchObject({ lengthM: null, widthM: null, swim: 1, scope: [] });
  });

  test.each([
    ['yes', true, true],
    ['X', true, true],
    ['1', true, true],
    ['no', false, false],
    ['', false, null],
  ])('"%s" in a yes column', async (written, noneSeen, night) => {
    const { value } = await read({
      'stations.csv': `${stations}A,S1,reef,2024-03-05,${written},\n`,
      'transects.csv': `${transects}A,S1,T1,40,2,done,${written}\n`,
    });
    expect(value.rows.transects[0]?.row.noneSeen).toBe(noneSeen);
    expect(value.rows.stations[0]?.row.night).toBe(night);
  });

  test('a refused optional cell leaves the station to be referred to', async () => {
    const { value, problems } = await read({ 'stations.csv': `${stations}A,S1,reef,2024-03-05,,25:00\n` });
    expect(codes(problems)).toEqual(['not-a-time']);
    expect(value.rows.stations).toHaveLength(1);
  });

  test('a wrong option and a wrong day come with what was probably meant', async () => {
    const { problems } = await read({
      'transects.csv': `${transects}A,S1,T1,40,2,dome,\n`,
      'stations.csv': `${stations}A,S1,reef,2024-25-12,,\n`,
    });
    expect(problems.map((p) => [p.code, p.value, p.suggestion])).toEqual([
      ['not-a-date', '2024-25-12', null],
      ['not-one-of', 'dome', 'done'],
    ]);
  });

  test('names and bottom cover in one cell are parted by semicolons', async () => {
    const { value, problems } = await read({
      'transects.csv':
        'survey,station,transect,length_m,width_m,status,scope,cover\n' +
        'A,S1,T1,40,2,done,sandfish; trochus ;,"sand:40; rubble, dead: 12.5%"\n' +
        'A,S1,T2,40,2,done,,sand\n',
    });
    expect(value.rows.transects[0]?.row.scope).toEqual(['sandfish', 'trochus']);
    expect(value.rows.transects[0]?.row.cover).toEqual([
      { name: 'sand', percent: 40 },
      { name: 'rubble, dead', percent: 12.5 },
    ]);
    expect(problems.map((p) => [p.code, p.parameters])).toEqual([
      ['cover-not-understood', { column: 'cover', part: 'sand' }],
    ]);
  });
});

describe('files', () => {
  test('nothing to read is said', async () => {
    expect(codes((await readTables([])).problems)).toEqual(['nothing-to-read']);
    expect(codes((await read({ 'counts.csv': '' })).problems)).toEqual(['nothing-to-read']);
  });

  test('a file with an unknown name is a stop with the nearest table', async () => {
    const { problems } = await read({ 'in/count.csv': counts });
    expect(problems[0]).toMatchObject({ code: 'unknown-table', value: 'count', suggestion: 'counts' });
  });

  test('an unknown column is noted, a missing one is a stop', async () => {
    const { problems } = await read({
      'counts.csv': 'survey,station,transect,specie,count,observer\nA,S,T,x,1,B\n',
    });
    expect(problems.map((p) => [p.code, p.parameters['column'], p.suggestion])).toEqual([
      ['unknown-column', 'specie', 'species'],
      ['unknown-column', 'observer', null],
      ['missing-column', 'species', 'specie'],
    ]);
  });

  test('a byte order mark, semicolons and old line ends are understood', async () => {
    const { value, problems } = await read({
      'counts.csv': '\uFEFFSurvey;Station;Transect;Species;Count\rA;S1;T1;ʻōpihi;3\r',
    });
    expect(problems).toEqual([]);
    expect(value.rows.tallies[0]?.row).toMatchObject({ species: 'ʻōpihi', count: 3 });
  });

  test('a row with more cells than columns is a stop, empty ones do not matter', async () => {
    const { problems } = await read({ 'counts.csv': `${counts}A,S,T,x,1,,\nA,S,T,y,1,2\n` });
    expect(problems.map((p) => [p.code, p.place.row, p.value])).toEqual([['row-too-long', 3, '2']]);
  });

  test('bytes that are no text or no workbook are stops, not exceptions', async () => {
    const files = [
      { name: 'counts.csv', bytes: new Uint8Array([0x73, 0xe9, 0, 0x0a, 0x73]) },
      { name: 'book.xlsx', bytes: bytes('no zip') },
      { name: 'old.xls', bytes: bytes('old') },
    ];
    expect(codes((await readTables(files)).problems)).toEqual([
      'file-unreadable',
      'file-unreadable',
      'file-unreadable',
    ]);
  });

  test('a hopeless file gives a thousand problems of a kind and a count of the rest', async () => {
    const rows = Array.from({ length: keptPerCode + 7 }, (_, i) => `A,S${i},T,x,-1\n`).join('');
    const { problems } = await read({ 'counts.csv': counts + rows });
    expect(problems).toHaveLength(keptPerCode + 1);
    expect(problems.at(-1)).toMatchObject({
      code: 'more-of-the-same',
      parameters: { code: 'number-out-of-range', count: 7 },
    });
  });

  test('reading says how far it is', async () => {
    const rows = Array.from({ length: 45_000 }, (_, i) => `A,S${i},T,x,1\n`).join('');
    const seen: number[] = [];
    await readTables([{ name: 'counts.csv', bytes: bytes(counts + rows) }], null, (done) =>
      seen.push(done.rows),
    );
    expect(seen).toEqual([20_000, 40_000, 45_000]);
  });
});

describe('workbooks', () => {
  test('sheets are tables; other sheets are noted, near misses are stops', async () => {
    const header = ['survey', 'species'];
    const workbook = await writeWorkbookBytes([
      { name: 'Targets', header, rows: [['A', 'sandfish']] },
      { name: 'About', header: ['text'], rows: [] },
      { name: 'station', header: ['text'], rows: [] },
    ]);
    const { value, problems } = await readTables([{ name: 'survey.xlsx', bytes: workbook }]);
    expect(value.rows.targets).toEqual([
      { row: { survey: 'A', species: 'sandfish' }, place: { file: 'survey.xlsx', sheet: 'Targets', row: 2 } },
    ]);
    expect(problems.map((p) => [p.code, p.value])).toEqual([
      ['not-a-table', 'About'],
      ['unknown-table', 'station'],
    ]);
  });

  // Authority: day 45356 is 5 March 2024 (36526 is 1 January 2000; 8830 days later, by hand: 24 years with
  // 6 leap days 2000..2020 are 8766 days, then 31 + 29 + 4 = 64); 0.34375 of a day is 8 h 15 min.
  test('day and time numbers of a spreadsheet are understood', async () => {
    const workbook = await writeWorkbookBytes([
      {
        name: 'stations',
        header: ['survey', 'station', 'stratum', 'date', 'time_start'],
        rows: [['A', 7, 'reef', 45356, 0.34375]],
      },
    ]);
    const { value, problems } = await readTables([{ name: 'survey.xlsx', bytes: workbook }]);
    expect(problems).toEqual([]);
    expect(value.rows.stations[0]?.row).toMatchObject({ code: '7', date: '2024-03-05', timeStart: '08:15' });
  });
});

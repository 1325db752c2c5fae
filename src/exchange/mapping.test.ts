import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { type Mapping, readMapping } from './mapping.ts';
import { mappingFileSchema } from './mapping-schema.ts';
import { readTables } from './read-tables.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

function mapping(content: object): Mapping {
  const { value, problems } = readMapping(JSON.stringify({ name: 'test', ...content }), 'map.json');
  expect(problems).toEqual([]);
  return value!;
}

function read(content: object, files: Readonly<Record<string, string>>) {
  return readTables(
    Object.entries(files).map(([name, text]) => ({ name, bytes: bytes(text) })),
    mapping(content),
  );
}

const tallyColumns = { survey: { constant: 'A' }, station: 'site', transect: 'pass', species: 'taxon' };
const lengthFill = {
  table: 'lengths',
  columns: { ...tallyColumns, length_mm: { from: 'size', unit: 'cm' } },
};

describe('a mapping file that cannot be used says where and why', () => {
  const source = { file: 'a.csv', fill: [lengthFill] };
  test.each([
    ['{', '', null],
    [JSON.stringify({ name: 'x', sources: [] }), 'sources', null],
    [JSON.stringify({ name: 'x', sources: [source], target: [] }), 'target', null],
    [
      JSON.stringify({
        name: 'x',
        sources: [
          { file: 'a', fill: [{ table: 'counts', columns: { count: { from: 'n', unit: 'inch' } } }] },
        ],
      }),
      'sources.0.fill.0.columns.count.unit',
      null,
    ],
    [
      JSON.stringify({
        name: 'x',
        sources: [{ file: 'a', fill: [{ table: 'counts', columns: { cuont: 'n' } }] }],
      }),
      'sources.0.fill.0.columns.cuont',
      'count',
    ],
    [
      JSON.stringify({
        name: 'x',
        sources: [{ ...source, leaveOut: [{ rule: 'r', column: 'c', matches: '(' }] }],
      }),
      'sources.0.leaveOut.0.matches',
      null,
    ],
  ])('%s', (text, path, suggestion) => {
    const { value, problems } = readMapping(text, 'map.json');
    expect(value).toBeNull();
    expect(problems[0]).toMatchObject({
      code: 'mapping-invalid',
      severity: 'stop',
      place: { file: 'map.json' },
      parameters: { path },
      suggestion,
    });
    expect(problems[0]?.parameters['expected']).not.toBe('');
    expect(problems[0]?.parameters['why'] !== undefined).toBe(text === '{');
  });
});

describe('columns', () => {
  // Authority: by hand. 18.3 cm are 183 mm; "Sea slug" is their word for "sandfish".
  test('unit, synonyms, missing values, joined columns, parts of a text and day forms', async () => {
    const { value, problems } = await read(
      {
        sources: [
          {
            file: '*.csv',
            missing: ['NA'],
            fill: [
              {
                table: 'lengths',
                columns: {
                  survey: { from: 'date', dateForms: ['D/M/YYYY'], pick: '\\d{4}$' },
                  station: { join: ['site', 'habitat'], separator: ' / ' },
                  transect: { constant: 'T1' },
                  swim: { from: 'pass', pick: 'pass(\\d)' },
                  species: { from: 'taxon', values: { 'Sea slug': 'sandfish' } },
                  length_mm: { from: 'size', unit: 'cm' },
                  n: { from: 'quantity', missing: ['9999'] },
                },
              },
            ],
          },
        ],
      },
      {
        'raw.csv': 'date,site,habitat,pass,taxon,size,quantity\n5/3/2017,North,NA,pass2,Sea slug,18.3,9999\n',
      },
    );
    expect(problems).toEqual([]);
    expect(value.rows.tallies.map((tally) => tally.row)).toEqual([
      {
        survey: '2017',
        station: 'North',
        transect: 'T1',
        swim: 2,
        species: 'sandfish',
        count: null,
        lengths: [{ lengthMm: 183, n: 1, measure: null, photo: null }],
      },
    ]);
  });

  test('a day in none of the forms is a stop that shows the day as written, in their column', async () => {
    const { problems } = await read(
      {
        sources: [
          {
            file: 'a.csv',
            fill: [
              {
                table: 'surveys',
                columns: { survey: { constant: 'A' }, starts: { from: 'when', dateForms: ['D MMM YYYY'] } },
              },
            ],
          },
        ],
      },
      { 'a.csv': 'when\n16-17 Sept 2011\n' },
    );
    expect(problems).toMatchObject([
      { code: 'day-range', value: '16-17 Sept 2011', place: { file: 'a.csv', row: 2, column: 'when' } },
    ]);
  });

  test('a column of theirs that is not there is a stop with the nearest one', async () => {
    const { problems } = await read(
      { sources: [{ file: 'a.csv', fill: [lengthFill] }] },
      { 'a.csv': 'site,pass,taxa,size\nN,1,x,2\n' },
    );
    expect(problems).toMatchObject([
      { code: 'missing-column', parameters: { column: 'taxon', file: 'a.csv' }, suggestion: 'taxa' },
    ]);
  });

  test('a unit that does not fit the column is a stop', async () => {
    const { problems } = await read(
      {
        sources: [
          {
            file: 'a.csv',
            fill: [
              { ...lengthFill, columns: { ...lengthFill.columns, length_mm: { from: 'size', unit: 'ha' } } },
            ],
          },
        ],
      },
      { 'a.csv': 'site,pass,taxon,size\nN,1,x,2\n' },
    );
    expect(problems.map((p) => p.code)).toEqual(['mapping-invalid']);
  });

  test('a file the mapping wants and nobody gave is a stop; one it does not know is noted', async () => {
    const { problems } = await read(
      { sources: [{ file: 'sizes.csv', fill: [lengthFill] }] },
      { 'other.csv': 'a\n' },
    );
    expect(problems.map((p) => p.code)).toEqual(['mapping-file-missing', 'not-a-table']);
  });
});

describe('rows', () => {
  const raw =
    'site,pass,taxon,size,kind\nN,1,x,2,animal\nN,1,x,9999,animal\nN,1,,,empty\nN,1,x,3,animal\nN,1,y,999,animal\n';

  test('rows are left out by a named rule and counted, and read is kept plus refused', async () => {
    const leaveOut = [{ rule: 'seen, not measured', column: 'size', equals: [9999, '999'] }];
    const { value, problems } = await read(
      {
        sources: [
          {
            file: 'a.csv',
            fill: [{ ...lengthFill, leaveOut, where: [{ column: 'kind', equals: 'animal' }] }],
          },
        ],
      },
      { 'a.csv': raw },
    );
    expect(value.totals.lengths).toEqual({ read: 4, refused: 2 });
    expect(value.leftOut).toEqual([{ rule: 'seen, not measured', file: 'a.csv', table: 'lengths', rows: 2 }]);
    expect(value.rows.tallies.map((tally) => tally.row.lengths.length)).toEqual([2]);
    expect(problems.map((p) => [p.code, p.severity])).toEqual([['left-out-by-rule', 'note']]);
  });

  // Authority: by hand. Three rows of x and one of y, one animal each.
  test('one row per animal is added up to counts', async () => {
    const { value } = await read(
      {
        sources: [
          {
            file: 'a.csv',
            fill: [
              {
                table: 'counts',
                add: true,
                where: [{ column: 'taxon', blank: false }],
                columns: { ...tallyColumns, count: { constant: 1 } },
              },
            ],
          },
        ],
      },
      { 'a.csv': raw },
    );
    expect(value.rows.tallies.map((tally) => [tally.row.species, tally.row.count])).toEqual([
      ['x', 3],
      ['y', 1],
    ]);
  });

  const visits =
    'site,day,habitat\nN,2024-01-02,reef\nN,2024-01-03,reef\nM,2024-01-02,reef\nM,2024-01-02,sand\n';
  const stations = {
    table: 'stations',
    distinct: true,
    firstOf: ['date'],
    columns: { survey: { constant: 'A' }, station: 'site', date: 'day', stratum: 'habitat' },
  };

  test('equal rows are one station; a second date is noted, a second stratum is a stop', async () => {
    const { value, problems } = await read(
      { sources: [{ file: 'a.csv', fill: [stations] }] },
      { 'a.csv': visits },
    );
    expect(value.rows.stations.map(({ row }) => [row.code, row.date])).toEqual([
      ['N', '2024-01-02'],
      ['M', '2024-01-02'],
    ]);
    expect(value.totals.stations).toEqual({ read: 2, refused: 0 });
    expect(problems.map((p) => [p.code, p.place.row])).toEqual([
      ['first-of-several', 3],
      ['repeated-row', 5],
    ]);
  });

  test('given rows, targets and blank transects', async () => {
    const { value, problems } = await read(
      {
        given: { protocols: [{ protocol: 'quadrats', layout: 'quadrats', length_m: 1 }] },
        sources: [
          {
            file: 'a.csv',
            fill: [
              { table: 'surveys', distinct: true, columns: { survey: 'year' } },
              {
                table: 'transects',
                distinct: true,
                columns: {
                  survey: 'year',
                  station: 'site',
                  transect: 'q',
                  length_m: { constant: 1 },
                  width_m: { constant: 1 },
                  status: 'status',
                },
              },
              {
                table: 'counts',
                where: [{ column: 'taxon', blank: false }],
                columns: { survey: 'year', station: 'site', transect: 'q', species: 'taxon', count: 'n' },
              },
            ],
          },
        ],
        targets: 'every counted species in every survey',
        blankTransects: 'none seen',
      },
      {
        'a.csv':
          'year,site,q,status,taxon,n\n2019,N,1,done,x,2\n2019,N,2,done,,\n2019,N,3,lost,,\n2020,N,1,done,y,0\n',
      },
    );
    expect(problems).toEqual([]);
    expect(value.rows.protocols[0]?.row).toMatchObject({ name: 'quadrats', layout: 'quadrats', lengthM: 1 });
    expect(value.rows.transects.map(({ row }) => row.noneSeen)).toEqual([false, true, false, false]);
    expect(value.rows.targets.map(({ row }) => `${row.survey} ${row.species}`)).toEqual([
      '2019 x',
      '2019 y',
      '2020 x',
      '2020 y',
    ]);
  });
});

test('every mapping in the handbook can be used', () => {
  const handbook = readFileSync(new URL('../../docs/handbook/mapping-files.md', import.meta.url), 'utf8');
  const examplesOf = (kind: string) =>
    [...handbook.matchAll(new RegExp(`\`\`\`json${kind}\\n(.*?)\`\`\``, 'gs'))].map((found) => found[1]!);
  const sources = examplesOf(' source').map((source) => `{"name": "x", "sources": [${source}]}`);
  const examples = [...examplesOf(''), ...sources];
  expect(examples).toHaveLength(2);
  for (const example of examples) expect(readMapping(example, 'handbook').problems).toEqual([]);
});

test('every word of a mapping is in the handbook', () => {
  const handbook = readFileSync(new URL('../../docs/handbook/mapping-files.md', import.meta.url), 'utf8');
  const schema = z.toJSONSchema(mappingFileSchema, { io: 'input', unrepresentable: 'any' });
  const words = new Set<string>();
  const visit = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    for (const [name, inner] of Object.entries(part)) {
      if (name === 'properties') for (const word of Object.keys(inner as object)) words.add(word);
      visit(inner);
    }
  };
  visit(schema);
  expect(words.size).toBeGreaterThan(15);
  for (const word of words) expect(handbook).toMatch(new RegExp(`[\`"]${word}[\`"]`));
});

import { writeXlsx } from 'hucre/xlsx';
import { expect, test } from 'vitest';
import { readMapping } from './mapping.ts';
import { readTables } from './read-tables.ts';

type Row = (string | number | null)[];

async function readSheets(sources: readonly object[], sheets: Parameters<typeof writeXlsx>[0]['sheets']) {
  const { value: mapping, problems } = readMapping(JSON.stringify({ name: 'test', sources }), 'map.json');
  expect(problems).toEqual([]);
  return readTables([{ name: 'evening.xlsx', bytes: await writeXlsx({ sheets }) }], mapping);
}

const targets = { table: 'targets', columns: { survey: 'trip', species: 'animal' } };
const codes = ({ problems }: Awaited<ReturnType<typeof readTables>>) => problems.map((p) => p.code);
const targetsOf = ({ value }: Awaited<ReturnType<typeof readTables>>) =>
  value.rows.targets.map(({ row }) => `${row.survey} ${row.species}`);

const twoTables: Row[] = [
  ['Evening of March', null],
  ['trip', 'animal'],
  ['A', 'sandfish'],
  ['A', 'trochus'],
  [null, null],
  ['trip', 'animal', 'minimum'],
  ['A', 'sandfish', 200],
];

test('two tables on one sheet are a stop until the mapping cuts them apart', async () => {
  const sheets = [{ name: 'Sheet1', rows: twoTables }];
  const whole = await readSheets([{ file: '*.xlsx', fill: [targets] }], sheets);
  expect(codes(whole)).toEqual(['rows-above-header', 'second-table']);
  const limits = {
    table: 'limits',
    columns: { species: 'animal', minimum_mm: 'minimum', source: { constant: 'agreed' } },
  };
  const apart = await readSheets(
    [
      { file: '*.xlsx', headerRow: 2, lastRow: 4, fill: [targets] },
      { file: '*.xlsx', headerRow: 6, fill: [limits] },
    ],
    sheets,
  );
  expect(targetsOf(apart)).toEqual(['A sandfish', 'A trochus']);
  expect(apart.value.rows.limits.map(({ row }) => row)).toEqual([
    { species: 'sandfish', minimumMm: 200, source: 'agreed' },
  ]);
  // The two rows below the first table are counted; the blank one is none.
  expect(apart.value.leftOut).toEqual([{ rule: 'lastRow', file: 'evening.xlsx', table: null, rows: 2 }]);
  expect(codes(apart)).toEqual(['left-out-by-rule']);
});

test('merged cells stand in every row when the mapping says so', async () => {
  const rows: Row[] = [
    ['trip', 'animal'],
    ['A', 'sandfish'],
    [null, 'trochus'],
    ['B', 'clam'],
  ];
  const sheets = [{ name: 'x', rows, merges: [{ startRow: 1, startCol: 0, endRow: 2, endCol: 0 }] }];
  const asked = await readSheets([{ file: '*.xlsx', fill: [targets] }], sheets);
  expect(codes(asked)).toContain('merged-cells');
  const repeated = await readSheets([{ file: '*.xlsx', mergedCells: 'repeat', fill: [targets] }], sheets);
  expect(repeated.problems).toEqual([]);
  expect(targetsOf(repeated)).toEqual(['A sandfish', 'A trochus', 'B clam']);
});

test('a hidden sheet is read only when the mapping names it', async () => {
  const rows: Row[] = [
    ['trip', 'animal'],
    ['A', 'sandfish'],
  ];
  const sheets = [
    { name: 'seen', rows },
    { name: 'old', hidden: true, rows: [rows[0]!, ['B', 'clam']] },
  ];
  const result = await readSheets([{ file: '*.xlsx', fill: [targets] }], sheets);
  expect(targetsOf(result)).toEqual(['A sandfish']);
  expect(codes(result)).toEqual(['hidden-sheet']);
  const named = await readSheets([{ file: '*.xlsx', sheet: 'old', fill: [targets] }], sheets);
  expect(targetsOf(named)).toEqual(['B clam']);
});

test('a column without a name is called by its number', async () => {
  const rows: Row[] = [
    ['trip', null],
    ['A', 'sandfish'],
  ];
  const fill = { table: 'targets', columns: { survey: 'trip', species: '#2' } };
  const result = await readSheets([{ file: '*.xlsx', fill: [fill] }], [{ name: 'x', rows }]);
  expect(targetsOf(result)).toEqual(['A sandfish']);
});

// Authority: by hand, from what the two words say.
test.each([
  ['comma', 1.234],
  ['point', 1234],
])('with decimal: "%s" 1,234 is %d', async (decimal, expected) => {
  const rows: Row[] = [
    ['animal', 'smallest'],
    ['sandfish', '1,234'],
  ];
  const columns = { species: 'animal', minimum_mm: 'smallest', source: { constant: 'agreed' } };
  const source = { file: '*.xlsx', decimal, fill: [{ table: 'limits', columns }] };
  const result = await readSheets([source], [{ name: 'x', rows }]);
  expect(result.problems).toEqual([]);
  expect(result.value.rows.limits[0]?.row.minimumMm).toBe(expected);
});

test('a row to look at is read, and asked about where it stands', async () => {
  const rows: Row[] = [
    ['trip', 'animal', 'note'],
    ['A', 'sandfish', 'only half of the belt'],
    ['A', 'trochus', null],
  ];
  const ask = [{ rule: 'a part', column: 'note', matches: 'half' }];
  const result = await readSheets([{ file: '*.xlsx', ask, fill: [targets] }], [{ name: 'x', rows }]);
  expect(targetsOf(result)).toHaveLength(2);
  expect(result.problems).toMatchObject([
    {
      code: 'asked-by-rule',
      severity: 'explain',
      value: 'only half of the belt',
      place: { row: 2, survey: 'A', species: 'sandfish' },
      parameters: { rule: 'a part' },
    },
  ]);
});

/** Runs the examples of the handbook's page on mapping files: what stands left of them must be read as what stands right. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type TableName, tableNames } from '../survey/table-rows.ts';
import { readMapping } from './mapping.ts';
import { readTables } from './read-tables.ts';
import { tableDefinitions } from './table-definitions.ts';

const handbook = readFileSync(new URL('../../docs/handbook/mapping-files.md', import.meta.url), 'utf8');

interface Example {
  readonly column: string;
  readonly columns: Record<string, unknown>;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const examples = [...handbook.matchAll(/```json column\n(.*?)```\n((?:\n\|[^\n]*)*)/gs)].map(
  (found): Example => {
    const columns = JSON.parse(found[1]!) as Record<string, unknown>;
    const lines = found[2]!
      .trim()
      .split('\n')
      .filter((line) => line !== '' && !/^[|\s-]*$/.test(line));
    const cells = lines.map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
    return { column: Object.keys(columns)[0]!, columns, header: cells[0] ?? [], rows: cells.slice(1) };
  },
);

/** The table a column of ours is at home in: its narrowest, where each row of an example can be a row of its own. */
const homes: Readonly<Record<string, TableName>> = {
  length_mm: 'lengths',
  date: 'stations',
  species: 'counts',
  swim: 'transects',
  scope: 'transects',
  survey: 'stations',
};

/** One of the needed columns takes the number of the row, so that no row repeats another. */
function mappingFor({ column, columns }: Example, table: TableName) {
  const naming = table === 'stations' ? 'station' : 'transect';
  const needed = Object.fromEntries(
    tableDefinitions[table].columns
      .filter((definition) => definition.required)
      .map((definition) => [definition.column, { constant: fillers[definition.column] ?? 'A' }]),
  );
  const fill = { table, columns: { ...needed, [naming]: 'row', [column]: columns[column] } };
  return JSON.stringify({ name: 'handbook', sources: [{ file: 'data.csv', fill: [fill] }] });
}

const fillers: Readonly<Record<string, string>> = {
  count: '1',
  length_mm: '1',
  length_m: '1',
  width_m: '1',
  status: 'done',
  date: '2026-01-01',
};

const lists = {
  'words.csv': 'as written,use\nslug,sandfish\n',
  'passes.csv': 'belt,day,who,looked for\nN1,2026-03-01,B,crabs\nN1,2026-03-01,C,all\n',
};

async function read(example: Example, rows: readonly (readonly string[])[], theirs: readonly string[]) {
  const { value: mapping, problems } = readMapping(mappingFor(example, homes[example.column]!), 'handbook');
  expect(problems).toEqual([]);
  const text = [['row', ...theirs], ...rows.map((row, i) => [`r${i}`, ...row])]
    .map((row) => row.join(';'))
    .join('\n');
  const files = Object.entries({ 'data.csv': text, ...lists }).map(([name, content]) => ({
    name,
    bytes: new TextEncoder().encode(content),
  }));
  return readTables(files, mapping);
}

/** What was read of the example's column, by the number of its row; “a question” where somebody is asked. */
function outcomes(example: Example, result: Awaited<ReturnType<typeof readTables>>, rows: number): string[] {
  const questions = new Set(
    result.problems.filter((p) => p.severity !== 'note').map((p) => p.place.row ?? p.value),
  );
  return Array.from({ length: rows }, (_, i) => {
    if (questions.has(i + 2)) return 'a question';
    const value = valueIn(example.column, result, `r${i}`);
    return questions.has(value ?? '') ? 'a question' : String(value);
  });
}

function valueIn(column: string, { value }: Awaited<ReturnType<typeof readTables>>, name: string) {
  const tally = value.rows.tallies.find(({ row }) => row.transect === name)?.row;
  const station = value.rows.stations.find(({ row }) => row.code === name)?.row;
  const transect = value.rows.transects.find(({ row }) => row.transect === name)?.row;
  if (column === 'length_mm') return tally?.lengths[0]?.lengthMm;
  if (column === 'species') return tally?.species;
  if (column === 'swim') return transect?.swim;
  if (column === 'scope') return transect?.scope.join('; ');
  return column === 'date' ? station?.date : station?.survey;
}

test('the page has an example of every rule', () => {
  expect(examples.length).toBeGreaterThanOrEqual(9);
  expect(examples.filter(({ rows }) => rows.length > 0).length).toBeGreaterThanOrEqual(7);
  for (const { column } of examples) expect(tableNames).toContain(homes[column]);
});

test.each(
  examples.filter(({ rows }) => rows.length > 0).map((one) => [JSON.stringify(one.columns), one] as const),
)('%s', async (_name, example) => {
  const theirs = example.header.slice(0, -1);
  const result = await read(
    example,
    example.rows.map((row) => row.slice(0, -1)),
    theirs,
  );
  expect(outcomes(example, result, example.rows.length)).toEqual(example.rows.map((row) => row.at(-1)));
});

test('a list of synonyms and a list of passes are read from the files beside the data', async () => {
  const [synonyms, passes] = examples.filter(({ rows }) => rows.length === 0);
  const words = await read(synonyms!, [['slug'], ['trochus']], ['animal']);
  expect(outcomes(synonyms!, words, 2)).toEqual(['sandfish', 'trochus']);
  const belts = [
    ['N1', '2026-03-01', 'B'],
    ['N1', '2026-03-01', 'C'],
  ];
  const scopes = await read(passes!, belts, ['belt', 'day', 'diver']);
  expect(outcomes(passes!, scopes, 2)).toEqual(['rock crab; kelp crab', '']);
});

test('a list that is not among the files, or lacks a column, is a stop', async () => {
  const [synonyms] = examples.filter(({ rows }) => rows.length === 0);
  const wrong = {
    ...synonyms!,
    columns: { species: { from: 'animal', synonyms: { file: 'word.csv', from: 'a', to: 'b' } } },
  };
  const missing = await read(wrong, [['slug']], ['animal']);
  expect(missing.problems.map((p) => [p.code, p.suggestion])).toContainEqual([
    'mapping-file-missing',
    'words.csv',
  ]);
  const other = {
    ...synonyms!,
    columns: { species: { from: 'animal', synonyms: { file: 'words.csv', from: 'as writen', to: 'use' } } },
  };
  const column = await read(other, [['slug']], ['animal']);
  expect(column.problems.map((p) => [p.code, p.suggestion])).toContainEqual(['missing-column', 'as written']);
});

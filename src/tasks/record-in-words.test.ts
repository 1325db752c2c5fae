import { expect, test } from 'vitest';
import { smallSurvey } from '../../test/store-records.ts';
import { tableDefinitions } from '../exchange/table-definitions.ts';
import type { TableName } from '../survey/table-rows.ts';
import type { Species, Station, Transect } from '../survey/words.ts';
import { allNamesOf, cellsOfRecord, namesOfRecord, tableOfKind } from './record-in-words.ts';

const survey = smallSurvey();
const byId = <Item extends { readonly id: string }>(items: readonly Item[]) =>
  new Map(items.map((item) => [item.id, item]));
const named = survey.changes.flatMap(({ after }) =>
  after !== null && 'name' in after ? [[after.id, after.name] as const] : [],
);
const known = {
  names: new Map(named),
  stations: byId<Station>(survey.of('station')),
  transects: byId<Transect>(survey.of('transect')),
};

// Authority: the import tables themselves, which are the words people use. Beside them stand only what a table
// keeps elsewhere: the lengths of a count, and the place of an animal among the weights.
test('every column of a change is a column of its import table', () => {
  for (const { kind, after } of survey.changes) {
    const table = tableOfKind[kind];
    if (!(table in tableDefinitions)) continue;
    const columns = new Set([
      ...tableDefinitions[table as TableName].columns.map(({ column }) => column),
      'lengths',
      'animal',
    ]);
    if (kind === 'tally') for (const name of ['survey', 'station', 'transect']) columns.add(name);
    const strange = [...cellsOfRecord(kind, after!, known).keys()].filter((column) => !columns.has(column));
    expect([kind, strange]).toEqual([kind, []]);
  }
});

test('no record shows an identity: everything it names stands there by name', () => {
  for (const { kind, after } of survey.changes) {
    const shown = [
      ...cellsOfRecord(kind, after!, known).values(),
      ...Object.values(namesOfRecord(kind, after!, known)),
    ];
    expect(shown.filter((cell) => /^[0-9a-f]{8}-[0-9a-f]{4}-/.test(String(cell)))).toEqual([]);
  }
});

// By hand, from the records of `smallSurvey`.
test('a count is named by its survey, station, transect, swim and species', () => {
  const tally = survey.of('tally')[0]!;
  expect(namesOfRecord('tally', tally, known)).toEqual({
    survey: 'survey 1',
    station: 'S1',
    transect: 'T1',
    swim: 1,
    species: 'Species A',
  });
});

test('an answer is named by its question and the place it was asked about', () => {
  const problemKey = JSON.stringify(['zero-or-blank', 'survey 1', 'S1', '', 1, 'Species A']);
  const answer = { ...survey.of('answer')[0]!, problemKey };
  expect(namesOfRecord('answer', answer, known)).toEqual({
    question: 'zero-or-blank',
    survey: 'survey 1',
    station: 'S1',
    species: 'Species A',
  });
});

test('a species answers to all its names, in small letters', () => {
  const species: Species = { ...survey.of('species')[0]!, code: 'SPA', commonName: 'Long One' };
  expect(allNamesOf(species)).toEqual(expect.arrayContaining(['species a', 'spa', 'long one', 'a']));
});

// By hand, from the records of `smallSurvey`.
test('a map area shows its parts and corners, not its 20 000 positions, and a day shows each of its entries', () => {
  const area = cellsOfRecord('mapArea', survey.of('mapArea')[0]!, known);
  expect(area.get('area')).toBe('1 part, 8 corners, latitude -20.1 to -20, longitude -179.9 to 179.9');
  expect(area.get('frozen_on')).toBe('2025-02-01');
  const day = cellsOfRecord('day', survey.of('day')[0]!, known);
  expect(day.get('fuel_used_l')).toBe(41);
  expect(day.get('survey')).toBe('survey 1');
});

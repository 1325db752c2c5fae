import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  type ProtocolRow,
  type SizeLimitRow,
  type SpeciesRow,
  type StationRow,
  type StratumRow,
  type SurveyRow,
  type TableName,
  type TargetRow,
  type TransectRow,
  tableNames,
  type WeightRow,
} from '../survey/table-rows.ts';
import type { Length } from '../survey/words.ts';
import type { ColumnKind } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

// Authority: the compiler. `Required` makes it refuse a sample that lacks a field of its row or has one too many.
type Fields<Row> = Readonly<Record<keyof Required<Row>, true>>;
const tallyFields = { survey: true, station: true, transect: true, swim: true, species: true } as const;

const depths = { depthMinM: true, depthMaxM: true } as const;
const strata: Fields<StratumRow> = { name: true, habitat: true, areaHa: true, ...depths };
const protocols: Fields<ProtocolRow> = {
  name: true,
  layout: true,
  transectsPerStation: true,
  lengthM: true,
  widthM: true,
  gapM: true,
  measureFirst: true,
  lengthUnit: true,
};
const surveys: Fields<SurveyRow> = { name: true, protocol: true, starts: true, ends: true, purpose: true };
const stations: Fields<StationRow> = {
  survey: true,
  code: true,
  site: true,
  stratum: true,
  zone: true,
  date: true,
  timeStart: true,
  timeEnd: true,
  latitudeDeg: true,
  longitudeDeg: true,
  endLatitudeDeg: true,
  endLongitudeDeg: true,
  plannedLatitudeDeg: true,
  plannedLongitudeDeg: true,
  positionSource: true,
  waypoint: true,
  bearingDeg: true,
  depthM: true,
  mode: true,
  night: true,
  visibilityM: true,
  tide: true,
  current: true,
  recorder: true,
  navigator: true,
  selection: true,
  note: true,
};
const transects: Fields<TransectRow> = {
  survey: true,
  station: true,
  transect: true,
  swim: true,
  scope: true,
  lengthM: true,
  widthM: true,
  depthStartM: true,
  depthEndM: true,
  cover: true,
  status: true,
  reason: true,
  noneSeen: true,
  note: true,
};
const lengthFields: Fields<Length> = { lengthMm: true, n: true, measure: true, photo: true };
const species: Fields<SpeciesRow> = {
  name: true,
  group: true,
  code: true,
  commonName: true,
  localName: true,
  aliases: true,
  minLengthMm: true,
  maxLengthMm: true,
  ...depths,
  habitats: true,
};
const weights: Fields<WeightRow> = {
  survey: true,
  station: true,
  species: true,
  lengthMm: true,
  weightG: true,
  state: true,
  drainMinutes: true,
};
const targets: Fields<TargetRow> = { survey: true, species: true };
const limits: Fields<SizeLimitRow> = { species: true, minimumMm: true, source: true };

const fields: Readonly<Record<TableName, Readonly<Record<string, true>>>> = {
  strata,
  protocols,
  surveys,
  stations,
  transects,
  counts: { ...tallyFields, count: true },
  lengths: { ...tallyFields, ...lengthFields },
  species,
  weights,
  targets,
  limits,
};

test.each(tableNames)('the columns of %s fill every field of its rows and no other', (table) => {
  const landing = tableDefinitions[table].columns.map((column) => column.field);
  expect(landing).toEqual(Object.keys(fields[table]));
});

const handbook = readFileSync(new URL('../../docs/handbook/tables.md', import.meta.url), 'utf8');

/** The rows of the handbook's table under one heading, cell by cell. */
function handbookRows(table: TableName): string[][] {
  const section = handbook.split(/^## /m).find((part) => part.startsWith(`${table}\n`)) ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) =>
      line
        .split(' | ')
        .map((cell) => cell.replace(/^\| |[` ]|\|$/g, (sign) => (sign === ' ' ? ' ' : '')).trim()),
    );
}

test.each(tableNames)('the handbook describes the columns of %s as they are', (table) => {
  const expected = tableDefinitions[table].columns.map((column) => [
    column.column,
    column.filled ? 'yes' : column.required ? 'column' : 'no',
    contentInWords(column.kind),
  ]);
  expect(handbookRows(table).map((cells) => cells.slice(0, 3))).toEqual(expected);
  for (const cells of handbookRows(table)) expect(cells[3]).toMatch(/\w/);
});

function contentInWords(kind: ColumnKind): string {
  switch (kind.is) {
    case 'number':
    case 'whole number':
      if (kind.atLeast !== undefined && kind.atMost !== undefined) {
        return `${kind.is}, ${kind.atLeast} to ${kind.atMost}`;
      }
      if (kind.above !== undefined) return `${kind.is} above ${kind.above}`;
      return kind.atLeast === undefined ? kind.is : `${kind.is}, ${kind.atLeast} or more`;
    case 'date':
      return 'day, YYYY-MM-DD';
    case 'time':
      return 'time, HH:MM';
    case 'yes':
      return 'yes or no';
    case 'one of':
      return kind.options.join(', ');
    case 'list':
      return 'names with ; between';
    case 'cover':
      return 'name:percent with ; between';
    default:
      return kind.is;
  }
}

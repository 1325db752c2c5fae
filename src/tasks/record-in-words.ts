/** A record of the book in the words people use: its table, its names, its columns as in the import tables. */

import { tableDefinitions } from '../exchange/table-definitions.ts';
import type { MapArea } from '../survey/map-area.ts';
import type { TableName } from '../survey/table-rows.ts';
import type { Length, RecordKind, RecordOf, Species, Station, Transect } from '../survey/words.ts';

/** The names in force, by identity. Nothing is known of an identity that never was in the book. */
export interface NamesInForce {
  readonly names: ReadonlyMap<string, string>;
  readonly stations: ReadonlyMap<string, Station>;
  readonly transects: ReadonlyMap<string, Transect>;
}

export type NamesOfRecord = Readonly<Record<string, string | number>>;
export type Cell = string | number | boolean | null;

type AnyRecord = RecordOf<RecordKind>;

export const tableOfKind: Readonly<
  Record<
    RecordKind,
    TableName | 'mappings' | 'answers' | 'map areas' | 'plans' | 'own values' | 'days' | 'photos'
  >
> = {
  stratum: 'strata',
  protocol: 'protocols',
  species: 'species',
  survey: 'surveys',
  station: 'stations',
  transect: 'transects',
  tally: 'counts',
  weight: 'weights',
  target: 'targets',
  sizeLimit: 'limits',
  mapping: 'mappings',
  answer: 'answers',
  mapArea: 'map areas',
  plan: 'plans',
  ownValue: 'own values',
  day: 'days',
  photo: 'photos',
};

/** The names under which people know a record: survey, station, transect, swim, species. */
export function namesOfRecord(kind: RecordKind, record: AnyRecord, known: NamesInForce): NamesOfRecord {
  const filled = Object.entries(allNames(kind, record, known)).filter(
    ([, name]) => name !== null && name !== undefined && name !== '',
  );
  return Object.fromEntries(filled) as NamesOfRecord;
}

function allNames(kind: RecordKind, record: AnyRecord, known: NamesInForce) {
  const given = record as Given;
  switch (kind) {
    case 'stratum':
    case 'protocol':
    case 'species':
    case 'survey':
    case 'mapping':
    case 'plan':
      return { [kind]: given.name };
    case 'station':
      return { survey: nameOf(given.surveyId, known), station: given.code };
    case 'transect':
      return transectNames(given, known);
    case 'tally':
      return { ...transectOf(given.transectId, known), species: nameOf(given.speciesId, known) };
    case 'weight':
      return {
        survey: nameOf(given.surveyId, known),
        station: given.stationCode,
        species: nameOf(given.speciesId, known),
        animal: given.ordinal,
      };
    case 'target':
      return { survey: nameOf(given.surveyId, known), species: nameOf(given.speciesId, known) };
    case 'sizeLimit':
      return { species: nameOf(given.speciesId, known), source: given.source };
    case 'mapArea':
      return { area: given.name };
    case 'ownValue':
      return { species: nameOf(given.speciesId, known), source: given.source };
    case 'day':
      return { survey: nameOf(given.surveyId, known), day: given.date };
    case 'photo':
      return photoNames(record as RecordOf<'photo'>, known);
    case 'answer':
      return placeOfAnswer(given.problemKey ?? '');
  }
}

type Given = Partial<{
  -readonly [Field in
    | 'name'
    | 'code'
    | 'surveyId'
    | 'stationId'
    | 'transectId'
    | 'speciesId'
    | 'stationCode'
    | 'source'
    | 'date'
    | 'problemKey']: string | null;
}> & { ordinal?: number; swim?: number };

function nameOf(id: string | null | undefined, known: NamesInForce): string | undefined {
  return id === null || id === undefined ? undefined : known.names.get(id);
}

function transectNames({ stationId, code, swim }: Given, known: NamesInForce) {
  const station = known.stations.get(stationId ?? '');
  return { survey: nameOf(station?.surveyId, known), station: station?.code, transect: code, swim };
}

function transectOf(id: string | null | undefined, known: NamesInForce) {
  const transect = known.transects.get(id ?? '');
  return transect === undefined ? {} : transectNames(transect, known);
}

function photoNames({ surveyId, stationId, content }: RecordOf<'photo'>, known: NamesInForce) {
  const station = known.stations.get(stationId ?? '')?.code;
  return { survey: nameOf(surveyId, known), station, photo: content.name };
}

/** A question is kept under its code and its place (`survey/problem-key.ts`). */
function placeOfAnswer(problemKey: string) {
  try {
    const [question, survey, station, transect, swim, species] = JSON.parse(problemKey) as string[];
    return { question, survey, station, transect, swim: transect === '' ? undefined : swim, species };
  } catch {
    return { question: problemKey };
  }
}

/** The columns of a record with what stands in them, identities as names, in the order of the import table. */
export function cellsOfRecord(
  kind: RecordKind,
  record: AnyRecord,
  known: NamesInForce,
): ReadonlyMap<string, Cell> {
  const columns = columnsOf(kind);
  const cells = Object.entries(opened(record))
    // The question and place of an answer are its names; its key is for the program.
    .filter(
      ([field, value]) =>
        field !== 'id' &&
        value !== undefined &&
        !(kind === 'answer' && (field === 'problemKey' || field === 'code')),
    )
    .map(([field, value]) => cellOf(columns, field, value, known));
  const order = [...columns.values()];
  // The lengths of a count stand in a table of their own, so they come last.
  const place = (column: string) => (order.includes(column) ? order.indexOf(column) : order.length);
  return new Map(cells.sort(([a], [b]) => place(a) - place(b)));
}

/** Maps, plans, values, days and photos keep most of themselves inside `content`: its entries are columns of their own. */
function opened(record: AnyRecord): object {
  return 'content' in record && typeof record.content === 'object'
    ? { ...record, content: undefined, ...(record.content as object) }
    : record;
}

function cellOf(
  columns: ReadonlyMap<string, string>,
  field: string,
  value: unknown,
  known: NamesInForce,
): readonly [string, Cell] {
  const reference = references[field];
  if (reference === undefined) return [columns.get(field) ?? snakeCase(field), inOneCell(field, value)];
  const id = value as string | null;
  if (id === null) return [reference, null];
  const name = known.names.get(id) ?? known.stations.get(id)?.code ?? known.transects.get(id)?.code;
  return [reference, name ?? id];
}

const references: Readonly<Partial<Record<string, string>>> = {
  surveyId: 'survey',
  stratumId: 'stratum',
  protocolId: 'protocol',
  stationId: 'station',
  transectId: 'transect',
  speciesId: 'species',
};

/** From the fields of a record to the columns of its import table. */
function columnsOf(kind: RecordKind): ReadonlyMap<string, string> {
  const table = tableOfKind[kind];
  if (!(table in tableDefinitions)) return new Map([['name', kind === 'mapArea' ? 'area' : kind]]);
  const columns = new Map(
    tableDefinitions[table as TableName].columns.map(({ field, column }) => [field, column]),
  );
  // Their codes have the names of the table in the rows, and the name "code" in the record.
  if (kind === 'transect') columns.set('code', 'transect');
  if (kind === 'weight') columns.set('stationCode', 'station').set('ordinal', 'animal');
  return columns;
}

function inOneCell(field: string, value: unknown): Cell {
  if (field === 'area') return areaInWords(value as MapArea);
  if (!Array.isArray(value)) return isPlain(value) ? value : JSON.stringify(value);
  if (value.length === 0) return null;
  if (field === 'lengths') return value.map(lengthInWords).join('; ');
  if (field === 'cover') return value.map(({ name, percent }) => `${name}:${percent}`).join('; ');
  return value.every(isPlain) ? value.join('; ') : JSON.stringify(value);
}

function isPlain(value: unknown): value is Cell {
  return value === null || typeof value !== 'object';
}

/** "2 parts, 41 corners, latitude -18 to -17, …": enough to see that a border moved, without its 20 000 corners. */
function areaInWords({ parts }: MapArea): string {
  const corners = parts.flatMap(({ outer, holes }) => [...outer, ...holes.flat()]);
  const spans = (['latitudeDeg', 'longitudeDeg'] as const).map((axis) => {
    const all = corners.map((corner) => corner[axis]);
    const ends = [all.reduce((a, b) => Math.min(a, b), 180), all.reduce((a, b) => Math.max(a, b), -180)];
    return `${axis === 'latitudeDeg' ? 'latitude' : 'longitude'} ${ends.join(' to ')}`;
  });
  return `${parts.length} part${parts.length === 1 ? '' : 's'}, ${corners.length} corners, ${spans.join(', ')}`;
}

/** "182.5 mm ×2 (body relaxed)". */
function lengthInWords({ lengthMm, n, measure, photo }: Length): string {
  const said = [measure, photo].filter((word) => word !== null).join(', ');
  return `${lengthMm} mm${n === 1 ? '' : ` ×${n}`}${said === '' ? '' : ` (${said})`}`;
}

function snakeCase(field: string): string {
  return field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/** Every name of a species, in small letters. */
export function allNamesOf(species: Species): readonly string[] {
  const names = [species.name, species.code, species.commonName, species.localName, ...species.aliases];
  return names.filter((name) => name !== null).map((name) => name.toLowerCase());
}

/**
 * Where each kind of record lives: its table, the columns that name it among people, the rows it
 * refers to, and the two functions between row and record. The only list of kinds in this room.
 */

import { type RecordKind, type RecordOf, recordKinds } from '../survey/words.ts';
import type { BookTables } from './book-tables.ts';
import * as content from './content-rows.ts';
import * as field from './field-rows.ts';
import * as frame from './frame-rows.ts';

type SqlValue = string | number | null;
/** A row of any current table: its values in the order of the columns. */
export type AnyRow = Readonly<Record<string, SqlValue>>;

const tableOfKind = {
  stratum: 'strata',
  protocol: 'protocols',
  species: 'species',
  survey: 'surveys',
  station: 'stations',
  transect: 'transects',
  tally: 'tallies',
  weight: 'weights',
  target: 'targets',
  sizeLimit: 'size_limits',
  mapping: 'mappings',
  answer: 'answers',
  mapArea: 'map_areas',
  plan: 'plans',
  ownValue: 'own_values',
  day: 'days',
  photo: 'photos',
} as const satisfies Record<RecordKind, keyof BookTables>;

type RowOf<K extends RecordKind> = BookTables[(typeof tableOfKind)[K]];

export interface KindTable {
  readonly table: keyof BookTables & string;
  /** What no two records of this kind share. */
  readonly naturalKey: readonly string[];
  rowOf(record: RecordOf<RecordKind>): AnyRow;
  recordOf(row: AnyRow): RecordOf<RecordKind>;
}

export const kindTables: Readonly<Record<RecordKind, KindTable>> = {
  stratum: kindTable('stratum', ['name'], frame.stratumRow, frame.stratumOf),
  protocol: kindTable('protocol', ['name'], frame.protocolRow, frame.protocolOf),
  species: kindTable('species', ['name'], frame.speciesRow, frame.speciesOf),
  survey: kindTable('survey', ['name'], frame.surveyRow, frame.surveyOf),
  station: kindTable('station', ['survey_id', 'code'], field.stationRow, field.stationOf),
  transect: kindTable('transect', ['station_id', 'code', 'swim'], field.transectRow, field.transectOf),
  tally: kindTable('tally', ['transect_id', 'species_id'], field.tallyRow, field.tallyOf),
  weight: kindTable(
    'weight',
    ['survey_id', 'station_code', 'species_id', 'ordinal'],
    field.weightRow,
    field.weightOf,
  ),
  target: kindTable('target', ['survey_id', 'species_id'], frame.targetRow, frame.targetOf),
  sizeLimit: kindTable('sizeLimit', ['species_id', 'source'], frame.sizeLimitRow, frame.sizeLimitOf),
  mapping: kindTable('mapping', ['name'], frame.mappingRow, frame.mappingOf),
  answer: kindTable('answer', ['problem_key'], frame.answerRow, frame.answerOf),
  mapArea: kindTable('mapArea', ['role', 'name'], content.mapAreaRow, content.mapAreaOf),
  plan: kindTable('plan', ['name'], content.planRow, content.planOf),
  ownValue: kindTable('ownValue', ['species_id', 'what', 'source'], content.ownValueRow, content.ownValueOf),
  day: kindTable('day', ['survey_id', 'date'], content.dayRow, content.dayOf),
  photo: kindTable('photo', ['sha256'], content.photoRow, content.photoOf),
};

/** The one place where the kinds lose their types: the pair of functions belongs to the kind by construction. */
function kindTable<K extends RecordKind>(
  kind: K,
  naturalKey: readonly (keyof RowOf<K> & string)[],
  rowOf: (record: RecordOf<K>) => RowOf<K>,
  recordOf: (row: RowOf<K>) => RecordOf<K>,
): KindTable {
  return {
    table: tableOfKind[kind],
    naturalKey,
    rowOf: rowOf as unknown as KindTable['rowOf'],
    recordOf: recordOf as unknown as KindTable['recordOf'],
  };
}

export function kindOfTable(table: string): RecordKind | undefined {
  return recordKinds.find((kind) => tableOfKind[kind] === table);
}

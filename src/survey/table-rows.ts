/**
 * The rows of the import and export tables as values: records named the way people name them
 * (survey, station and species by name, not by identity). `exchange` turns text into these and back;
 * `tasks` joins them to the book.
 */

import type { Place } from './message.ts';
import type {
  Length,
  Protocol,
  SizeLimit,
  Species,
  Station,
  Stratum,
  Survey,
  Transect,
  Weight,
} from './words.ts';

export type StratumRow = Omit<Stratum, 'id'>;
export type ProtocolRow = Omit<Protocol, 'id'>;
export type SpeciesRow = Omit<Species, 'id'>;
export type SurveyRow = Omit<Survey, 'id' | 'protocolId'> & { readonly protocol: string | null };
export type StationRow = Omit<Station, 'id' | 'surveyId' | 'stratumId'> & {
  readonly survey: string;
  /** Null when the cell was empty: a stop, because a station in no stratum stands for no area. */
  readonly stratum: string | null;
};
export type TransectRow = Omit<Transect, 'id' | 'stationId' | 'code'> & {
  readonly survey: string;
  readonly station: string;
  readonly transect: string;
};
/** One species on one transect: the counts row and all its length rows together. */
export interface TallyRow {
  readonly survey: string;
  readonly station: string;
  readonly transect: string;
  readonly swim: number;
  readonly species: string;
  /** Null when there are lengths but no counts row. */
  readonly count: number | null;
  readonly lengths: readonly Length[];
}
export type WeightRow = Omit<Weight, 'id' | 'surveyId' | 'stationCode' | 'speciesId' | 'ordinal'> & {
  readonly survey: string;
  readonly station: string | null;
  readonly species: string;
};
export interface TargetRow {
  readonly survey: string;
  readonly species: string;
}
export type SizeLimitRow = Omit<SizeLimit, 'id' | 'speciesId'> & { readonly species: string };

/** A row and where it stood, so that a later question can point at it. */
export interface Placed<Row> {
  readonly row: Row;
  readonly place: Place;
}

export interface TableRows {
  readonly strata: readonly Placed<StratumRow>[];
  readonly protocols: readonly Placed<ProtocolRow>[];
  readonly surveys: readonly Placed<SurveyRow>[];
  readonly stations: readonly Placed<StationRow>[];
  readonly transects: readonly Placed<TransectRow>[];
  readonly tallies: readonly Placed<TallyRow>[];
  readonly species: readonly Placed<SpeciesRow>[];
  readonly weights: readonly Placed<WeightRow>[];
  readonly targets: readonly Placed<TargetRow>[];
  readonly limits: readonly Placed<SizeLimitRow>[];
}

/** The names of the import tables, in the order in which people are told about them. */
export const tableNames = [
  'strata',
  'protocols',
  'surveys',
  'stations',
  'transects',
  'counts',
  'lengths',
  'species',
  'weights',
  'targets',
  'limits',
] as const;
export type TableName = (typeof tableNames)[number];

/** What happened to the rows of one table, counted. `read` = added + changed + unchanged + refused. */
export interface TableTotals {
  readonly table: TableName;
  readonly read: number;
  readonly added: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly refused: number;
}

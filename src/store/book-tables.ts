/**
 * The tables of a survey book, as Kysely sees them. Row types never leave this room:
 * `kind-tables.ts` turns rows into records and back. The columns are those of the migrations.
 */

export interface BookTables {
  readonly book: BookRow;
  readonly data_digest: { readonly digest: string };
  readonly strata: StratumRow;
  readonly protocols: ProtocolRow;
  readonly species: SpeciesRow;
  readonly surveys: SurveyRow;
  readonly stations: StationRow;
  readonly transects: TransectRow;
  readonly tallies: TallyRow;
  readonly weights: WeightRow;
  readonly targets: TargetRow;
  readonly size_limits: SizeLimitRow;
  readonly mappings: MappingRow;
  readonly answers: AnswerRow;
  readonly map_areas: MapAreaRow;
  readonly plans: PlanRow;
  readonly own_values: OwnValueRow;
  readonly days: DayRow;
  readonly photos: PhotoRow;
  readonly acts: ActRow;
  readonly revisions: RevisionRow;
}

type Text = string | null;
type Amount = number | null;

interface BookRow {
  readonly book_id: string;
  readonly name: string;
  readonly invented: number;
  readonly created_at: string;
}

export interface StratumRow {
  readonly id: string;
  readonly name: string;
  readonly habitat: Text;
  readonly area_ha: Amount;
  readonly depth_min_m: Amount;
  readonly depth_max_m: Amount;
}

export interface ProtocolRow {
  readonly id: string;
  readonly name: string;
  readonly layout: Text;
  readonly transects_per_station: Amount;
  readonly length_m: Amount;
  readonly width_m: Amount;
  readonly gap_m: Amount;
  readonly measure_first: Amount;
  readonly length_unit: Text;
}

export interface SpeciesRow {
  readonly id: string;
  readonly name: string;
  readonly group_name: Text;
  readonly code: Text;
  readonly common_name: Text;
  readonly local_name: Text;
  /** JSON list. */
  readonly aliases: string;
  readonly min_length_mm: Amount;
  readonly max_length_mm: Amount;
  readonly depth_min_m: Amount;
  readonly depth_max_m: Amount;
  /** JSON list. */
  readonly habitats: string;
}

export interface SurveyRow {
  readonly id: string;
  readonly name: string;
  readonly protocol_id: Text;
  readonly starts: Text;
  readonly ends: Text;
  readonly purpose: Text;
}

export interface StationRow {
  readonly id: string;
  readonly survey_id: string;
  readonly code: string;
  readonly site: Text;
  readonly stratum_id: string;
  readonly zone: Text;
  readonly date: string;
  readonly time_start: Text;
  readonly time_end: Text;
  readonly latitude_deg: Amount;
  readonly longitude_deg: Amount;
  readonly end_latitude_deg: Amount;
  readonly end_longitude_deg: Amount;
  readonly planned_latitude_deg: Amount;
  readonly planned_longitude_deg: Amount;
  readonly position_source: Text;
  readonly waypoint: Text;
  readonly bearing_deg: Amount;
  readonly depth_m: Amount;
  readonly mode: Text;
  readonly night: Amount;
  readonly visibility_m: Amount;
  readonly tide: Text;
  readonly current: Text;
  readonly recorder: Text;
  readonly navigator: Text;
  readonly selection: Text;
  readonly note: Text;
}

export interface TransectRow {
  readonly id: string;
  readonly station_id: string;
  readonly code: string;
  readonly swim: number;
  /** JSON list. */
  readonly scope: string;
  readonly length_m: Amount;
  readonly width_m: Amount;
  readonly depth_start_m: Amount;
  readonly depth_end_m: Amount;
  /** JSON list of {name, percent}. */
  readonly cover: string;
  readonly status: string;
  readonly reason: Text;
  readonly none_seen: number;
  readonly note: Text;
}

export interface TallyRow {
  readonly id: string;
  readonly transect_id: string;
  readonly species_id: string;
  readonly count: number;
  /** JSON, see `lengths-column.ts`. */
  readonly lengths: string;
}

export interface WeightRow {
  readonly id: string;
  readonly survey_id: string;
  readonly station_code: Text;
  readonly species_id: string;
  readonly ordinal: number;
  readonly length_mm: number;
  readonly weight_g: number;
  readonly state: Text;
  readonly drain_minutes: Amount;
}

export interface TargetRow {
  readonly id: string;
  readonly survey_id: string;
  readonly species_id: string;
}

export interface SizeLimitRow {
  readonly id: string;
  readonly species_id: string;
  readonly minimum_mm: number;
  readonly source: string;
}

export interface MappingRow {
  readonly id: string;
  readonly name: string;
  readonly content: string;
}

export interface AnswerRow {
  readonly id: string;
  readonly problem_key: string;
  readonly code: string;
  readonly value: Text;
  readonly answer: string;
  readonly who: string;
  readonly why: string;
  readonly answered_at: string;
}

export interface MapAreaRow {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  /** JSON, see `survey/plan-words.ts`. */
  readonly content: string;
}

export interface PlanRow {
  readonly id: string;
  readonly name: string;
  /** JSON, see `survey/plan-words.ts`. */
  readonly content: string;
}

export interface OwnValueRow {
  readonly id: string;
  readonly species_id: string;
  readonly what: string;
  readonly source: string;
  /** JSON, see `survey/value-words.ts`. */
  readonly content: string;
}

export interface DayRow {
  readonly id: string;
  readonly survey_id: string;
  readonly date: string;
  /** JSON, see `survey/day-words.ts`. */
  readonly content: string;
}

export interface PhotoRow {
  readonly id: string;
  readonly sha256: string;
  readonly survey_id: Text;
  readonly station_id: Text;
  /** JSON, see `survey/photo-words.ts`. */
  readonly content: string;
}

interface ActRow {
  readonly number: number;
  readonly id: string;
  readonly who: string;
  readonly at: string;
  readonly device: string;
  readonly why: string;
}

export interface RevisionRow {
  readonly seq: number;
  readonly act_number: number;
  readonly place_in_act: number;
  readonly kind: string;
  readonly record_id: string;
  readonly before_row: Text;
  readonly after_row: Text;
}

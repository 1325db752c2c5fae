/** What was counted and measured under water: stations, transects, tallies and weights as rows, and back. */

import type { Station, Tally, Transect, Weight } from '../survey/words.ts';
import type { StationRow, TallyRow, TransectRow, WeightRow } from './book-tables.ts';
import { lengthsColumn, lengthsOf } from './lengths-column.ts';

export function stationRow(station: Station): StationRow {
  return {
    id: station.id,
    survey_id: station.surveyId,
    code: station.code,
    site: station.site,
    stratum_id: station.stratumId,
    zone: station.zone,
    date: station.date,
    time_start: station.timeStart,
    time_end: station.timeEnd,
    latitude_deg: station.latitudeDeg,
    longitude_deg: station.longitudeDeg,
    end_latitude_deg: station.endLatitudeDeg,
    end_longitude_deg: station.endLongitudeDeg,
    planned_latitude_deg: station.plannedLatitudeDeg,
    planned_longitude_deg: station.plannedLongitudeDeg,
    position_source: station.positionSource,
    waypoint: station.waypoint,
    bearing_deg: station.bearingDeg,
    depth_m: station.depthM,
    mode: station.mode,
    night: station.night === null ? null : Number(station.night),
    visibility_m: station.visibilityM,
    tide: station.tide,
    current: station.current,
    recorder: station.recorder,
    navigator: station.navigator,
    selection: station.selection,
    note: station.note,
  };
}

export function stationOf(row: StationRow): Station {
  return {
    id: row.id,
    surveyId: row.survey_id,
    code: row.code,
    site: row.site,
    stratumId: row.stratum_id,
    zone: row.zone,
    date: row.date,
    timeStart: row.time_start,
    timeEnd: row.time_end,
    latitudeDeg: row.latitude_deg,
    longitudeDeg: row.longitude_deg,
    endLatitudeDeg: row.end_latitude_deg,
    endLongitudeDeg: row.end_longitude_deg,
    plannedLatitudeDeg: row.planned_latitude_deg,
    plannedLongitudeDeg: row.planned_longitude_deg,
    positionSource: row.position_source as Station['positionSource'],
    waypoint: row.waypoint,
    bearingDeg: row.bearing_deg,
    depthM: row.depth_m,
    mode: row.mode as Station['mode'],
    night: row.night === null ? null : row.night === 1,
    visibilityM: row.visibility_m,
    tide: row.tide,
    current: row.current,
    recorder: row.recorder,
    navigator: row.navigator,
    selection: row.selection as Station['selection'],
    note: row.note,
  };
}

export function transectRow(transect: Transect): TransectRow {
  return {
    id: transect.id,
    station_id: transect.stationId,
    code: transect.code,
    swim: transect.swim,
    scope: JSON.stringify(transect.scope),
    length_m: transect.lengthM,
    width_m: transect.widthM,
    depth_start_m: transect.depthStartM,
    depth_end_m: transect.depthEndM,
    cover: JSON.stringify(transect.cover.map(({ name, percent }) => ({ name, percent }))),
    status: transect.status,
    reason: transect.reason,
    none_seen: Number(transect.noneSeen),
    note: transect.note,
  };
}

export function transectOf(row: TransectRow): Transect {
  return {
    id: row.id,
    stationId: row.station_id,
    code: row.code,
    swim: row.swim,
    scope: listOf(row.scope),
    lengthM: row.length_m,
    widthM: row.width_m,
    depthStartM: row.depth_start_m,
    depthEndM: row.depth_end_m,
    cover: listOf(row.cover),
    status: row.status as Transect['status'],
    reason: row.reason,
    noneSeen: row.none_seen === 1,
    note: row.note,
  };
}

export function tallyRow(tally: Tally): TallyRow {
  return {
    id: tally.id,
    transect_id: tally.transectId,
    species_id: tally.speciesId,
    count: tally.count,
    lengths: lengthsColumn(tally.lengths),
  };
}

export function tallyOf(row: TallyRow): Tally {
  return {
    id: row.id,
    transectId: row.transect_id,
    speciesId: row.species_id,
    count: row.count,
    lengths: lengthsOf(row.lengths),
  };
}

export function weightRow(weight: Weight): WeightRow {
  return {
    id: weight.id,
    survey_id: weight.surveyId,
    station_code: weight.stationCode,
    species_id: weight.speciesId,
    ordinal: weight.ordinal,
    length_mm: weight.lengthMm,
    weight_g: weight.weightG,
    state: weight.state,
    drain_minutes: weight.drainMinutes,
  };
}

export function weightOf(row: WeightRow): Weight {
  return {
    id: row.id,
    surveyId: row.survey_id,
    stationCode: row.station_code,
    speciesId: row.species_id,
    ordinal: row.ordinal,
    lengthMm: row.length_mm,
    weightG: row.weight_g,
    state: row.state as Weight['state'],
    drainMinutes: row.drain_minutes,
  };
}

/** Most lists are empty: a parse less for each transect. */
function listOf<Item>(column: string): Item[] {
  return column === '[]' ? [] : JSON.parse(column);
}

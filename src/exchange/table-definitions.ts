/**
 * The import and export tables as data: their columns, in the order in which they are written.
 * Column names are a contract: they are added to, never renamed.
 */

import type { TableName } from '../survey/table-rows.ts';
import {
  layouts,
  lengthMeasures,
  modes,
  positionSources,
  selections,
  transectStatuses,
  weightStates,
} from '../survey/words.ts';
import {
  countingNumber,
  date,
  degrees,
  list,
  notNegative,
  number,
  oneOf,
  optional,
  positive,
  required,
  type TableDefinition,
  text,
  time,
  yes,
} from './table-columns.ts';

const survey = required('survey', text);
const station = required('station', text);
const transect = required('transect', text);
const swim = optional('swim', countingNumber, 'swim', 1);
const species = required('species', text);
const habitatDepths = [
  optional('depth_min_m', number, 'depthMinM'),
  optional('depth_max_m', number, 'depthMaxM'),
];

export const tableDefinitions: Readonly<Record<TableName, TableDefinition>> = {
  strata: {
    key: ['stratum'],
    columns: [
      required('stratum', text, 'name'),
      optional('habitat', text),
      optional('area_ha', positive, 'areaHa'),
      ...habitatDepths,
    ],
  },
  protocols: {
    key: ['protocol'],
    columns: [
      required('protocol', text, 'name'),
      optional('layout', oneOf(layouts)),
      optional('transects_per_station', countingNumber, 'transectsPerStation'),
      optional('length_m', positive, 'lengthM'),
      optional('width_m', positive, 'widthM'),
      optional('gap_m', notNegative, 'gapM'),
      optional('measure_first', countingNumber, 'measureFirst'),
      optional('length_unit', oneOf(['mm', 'cm']), 'lengthUnit'),
    ],
  },
  surveys: {
    key: ['survey'],
    columns: [
      required('survey', text, 'name'),
      optional('protocol', text),
      optional('starts', date),
      optional('ends', date),
      optional('purpose', text),
    ],
  },
  stations: {
    key: ['survey', 'station'],
    columns: [
      survey,
      required('station', text, 'code'),
      optional('site', text),
      // An empty stratum is a question about the survey, asked where the rows are joined.
      { ...required('stratum', text), filled: false },
      optional('zone', text),
      required('date', date),
      optional('time_start', time, 'timeStart'),
      optional('time_end', time, 'timeEnd'),
      degrees('latitude', 'latitudeDeg', 'latitude', 'position'),
      degrees('longitude', 'longitudeDeg', 'longitude', 'position'),
      degrees('end_latitude', 'endLatitudeDeg', 'latitude', 'end_position'),
      degrees('end_longitude', 'endLongitudeDeg', 'longitude', 'end_position'),
      degrees('planned_latitude', 'plannedLatitudeDeg', 'latitude', 'planned_position'),
      degrees('planned_longitude', 'plannedLongitudeDeg', 'longitude', 'planned_position'),
      optional('position_source', oneOf(positionSources), 'positionSource'),
      optional('waypoint', text),
      optional('bearing_deg', { is: 'number', atLeast: 0, atMost: 360 }, 'bearingDeg'),
      optional('depth_m', number, 'depthM'),
      optional('mode', oneOf(modes)),
      optional('night', yes),
      optional('visibility_m', notNegative, 'visibilityM'),
      optional('tide', text),
      optional('current', text),
      optional('recorder', text),
      optional('navigator', text),
      optional('selection', oneOf(selections)),
      optional('note', text),
    ],
  },
  transects: {
    key: ['survey', 'station', 'transect', 'swim'],
    columns: [
      survey,
      station,
      transect,
      swim,
      optional('scope', list, 'scope', []),
      // A timed search has no belt: whether an empty length is allowed depends on the protocol.
      { ...required('length_m', positive, 'lengthM'), filled: false },
      { ...required('width_m', positive, 'widthM'), filled: false },
      optional('depth_start_m', number, 'depthStartM'),
      optional('depth_end_m', number, 'depthEndM'),
      optional('cover', { is: 'cover' }, 'cover', []),
      required('status', oneOf(transectStatuses)),
      optional('reason', text),
      optional('none_seen', yes, 'noneSeen', false),
      optional('note', text),
    ],
  },
  counts: {
    key: ['survey', 'station', 'transect', 'swim', 'species'],
    columns: [
      survey,
      station,
      transect,
      swim,
      species,
      required('count', { is: 'whole number', atLeast: 0 }),
    ],
  },
  lengths: {
    key: null,
    columns: [
      survey,
      station,
      transect,
      swim,
      species,
      { ...required('length_mm', positive, 'lengthMm'), alternative: { column: 'length_cm', shift: 1 } },
      optional('n', countingNumber, 'n', 1),
      optional('measure', oneOf(lengthMeasures)),
      optional('photo', text),
    ],
  },
  species: {
    key: ['species'],
    columns: [
      required('species', text, 'name'),
      optional('group', text),
      optional('code', text),
      optional('common_name', text, 'commonName'),
      optional('local_name', text, 'localName'),
      optional('aliases', list, 'aliases', []),
      optional('min_length_mm', positive, 'minLengthMm'),
      optional('max_length_mm', positive, 'maxLengthMm'),
      ...habitatDepths,
      optional('habitats', list, 'habitats', []),
    ],
  },
  weights: {
    key: null,
    columns: [
      survey,
      optional('station', text),
      species,
      required('length_mm', positive, 'lengthMm'),
      required('weight_g', positive, 'weightG'),
      // The column must be there, but a book may hold weights whose state nobody wrote down.
      { ...required('state', oneOf(weightStates)), filled: false },
      optional('drain_minutes', notNegative, 'drainMinutes'),
    ],
  },
  targets: { key: ['survey', 'species'], columns: [survey, species] },
  limits: {
    key: ['species'],
    columns: [species, required('minimum_mm', positive, 'minimumMm'), required('source', text)],
  },
};

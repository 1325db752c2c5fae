import type { Station } from './words.ts';

/** Of a station nothing but its place in the book is known yet. A field that is added to stations is missed here by the compiler. */
export const unknownStation: Omit<Station, 'id' | 'surveyId' | 'code' | 'stratumId' | 'date'> = {
  site: null,
  zone: null,
  timeStart: null,
  timeEnd: null,
  latitudeDeg: null,
  longitudeDeg: null,
  endLatitudeDeg: null,
  endLongitudeDeg: null,
  plannedLatitudeDeg: null,
  plannedLongitudeDeg: null,
  positionSource: null,
  waypoint: null,
  bearingDeg: null,
  depthM: null,
  mode: null,
  night: null,
  visibilityM: null,
  tide: null,
  current: null,
  recorder: null,
  navigator: null,
  selection: null,
  note: null,
};

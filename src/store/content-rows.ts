/** Maps, plans, values, days and photos: records of few names and much content, kept as JSON with its keys in one order. */

import type { Day, MapAreaRecord, OwnValue, Photo, Plan } from '../survey/words.ts';
import type { DayRow, MapAreaRow, OwnValueRow, PhotoRow, PlanRow } from './book-tables.ts';

export function mapAreaRow({ id, name, role, content }: MapAreaRecord): MapAreaRow {
  return { id, name, role, content: contentColumn(content) };
}

export function mapAreaOf({ id, name, role, content }: MapAreaRow): MapAreaRecord {
  return { id, name, role: role as MapAreaRecord['role'], content: JSON.parse(content) };
}

export function planRow({ id, name, content }: Plan): PlanRow {
  return { id, name, content: contentColumn(content) };
}

export function planOf({ id, name, content }: PlanRow): Plan {
  return { id, name, content: JSON.parse(content) };
}

export function ownValueRow({ id, speciesId, what, source, content }: OwnValue): OwnValueRow {
  return { id, species_id: speciesId, what, source, content: contentColumn(content) };
}

export function ownValueOf({ id, species_id, what, source, content }: OwnValueRow): OwnValue {
  return { id, speciesId: species_id, what, source, content: JSON.parse(content) };
}

export function dayRow({ id, surveyId, date, content }: Day): DayRow {
  return { id, survey_id: surveyId, date, content: contentColumn(content) };
}

export function dayOf({ id, survey_id, date, content }: DayRow): Day {
  return { id, surveyId: survey_id, date, content: JSON.parse(content) };
}

export function photoRow({ id, sha256, surveyId, stationId, content }: Photo): PhotoRow {
  return { id, sha256, survey_id: surveyId, station_id: stationId, content: contentColumn(content) };
}

export function photoOf({ id, sha256, survey_id, station_id, content }: PhotoRow): Photo {
  return { id, sha256, surveyId: survey_id, stationId: station_id, content: JSON.parse(content) };
}

/** Keys in order of the alphabet: two machines that hold the same content hold the same letters. */
function contentColumn(content: object): string {
  return JSON.stringify(inOrder(content));
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (value === null || typeof value !== 'object') return value;
  const sorted = Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(sorted.map(([key, inner]) => [key, inOrder(inner)]));
}

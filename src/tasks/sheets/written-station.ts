/**
 * Day, times, position, depth and visibility as they stand on the slate, kept as text until they can be read. Nothing here stops
 * a save: what cannot be read goes into the note, so that no word of the slate is lost.
 */

import { positionOfUtm } from '../../planning/ground/utm.ts';
import { type PositionReading, readPosition, writePosition } from '../../survey/position-notation.ts';
import type { Station, Survey } from '../../survey/words.ts';
import { type DaysAround, readWrittenDay } from './written-day.ts';
import { readWrittenTime } from './written-time.ts';

export const writtenFields = ['date', 'timeStart', 'timeEnd', 'position', 'depthM', 'visibilityM'] as const;
export type WrittenField = (typeof writtenFields)[number];
/** Only the cells that were typed in; the others are as the station says. */
export type WrittenStation = Readonly<Partial<Record<WrittenField, string>>>;

/** What the cell shows. */
export function writtenText(field: WrittenField, station: Station, written: WrittenStation): string {
  const typed = written[field];
  if (typed !== undefined) return typed;
  if (field !== 'position') return station[field] === null ? '' : String(station[field]);
  const { latitudeDeg, longitudeDeg } = station;
  return latitudeDeg === null || longitudeDeg === null ? '' : writePosition({ latitudeDeg, longitudeDeg });
}

/** In every notation, UTM included. */
export function readWrittenPosition(text: string): PositionReading {
  return readPosition(text, positionOfUtm);
}

/** A number of metres, never below zero, with point or comma, with or without "m"; null where it is none. */
export function readMetres(text: string): number | null {
  const found = /^(\d+(?:[.,]\d+)?)\s*m?$/i.exec(text.trim());
  return found === null ? null : Number(found[1]!.replace(',', '.'));
}

/** What a day is read beside: the day that stands there and those of the survey. */
export function daysAround(station: Station, survey: Pick<Survey, 'starts' | 'ends'>): DaysAround {
  return { present: station.date, first: survey.starts, last: survey.ends };
}

export interface WrittenPlace {
  readonly survey: Pick<Survey, 'starts' | 'ends'>;
  /** Stand before words that go into the note: "depth: 12 or 13". */
  readonly names: Readonly<Record<WrittenField, string>>;
}

/** The station with what was typed. A day that cannot be read leaves the day that stood there. */
export function stationAsWritten(
  station: Station,
  written: WrittenStation,
  { survey, names }: WrittenPlace,
): Station {
  const around = daysAround(station, survey);
  const unread = writtenFields
    .filter((field) =>
      field === 'date' ? isDayUnread(written.date ?? '', around) : isUnread(field, written[field] ?? ''),
    )
    .map((field) => `${names[field]}: ${written[field]!.trim()}`);
  const note = [station.note, ...unread].filter(Boolean).join('; ') || null;
  return {
    ...station,
    date: readWrittenDay(written.date ?? '', around).day ?? station.date,
    ...timeOf('timeStart', written),
    ...timeOf('timeEnd', written),
    ...placeOf(station, written.position),
    ...metresOf('depthM', written),
    ...metresOf('visibilityM', written),
    note,
  };
}

/** A day that was typed and could be none or two. */
export function isDayUnread(text: string, around: DaysAround): boolean {
  return text.trim() !== '' && readWrittenDay(text, around).day === null;
}

export function isUnread(field: Exclude<WrittenField, 'date'>, text: string): boolean {
  if (text.trim() === '') return false;
  if (field === 'timeStart' || field === 'timeEnd') return readWrittenTime(text) === null;
  return field === 'position' ? readWrittenPosition(text).position === null : readMetres(text) === null;
}

function timeOf(field: 'timeStart' | 'timeEnd', written: WrittenStation): Partial<Station> {
  const text = written[field];
  return text === undefined ? {} : { [field]: readWrittenTime(text) };
}

/** Where the old position came from (receiver, map) says nothing of a new one. */
function placeOf(station: Station, text: string | undefined): Partial<Station> {
  if (text === undefined || text.trim() === writtenText('position', station, {})) return {};
  const { position } = readWrittenPosition(text);
  const none = { latitudeDeg: null, longitudeDeg: null };
  return { ...(position ?? none), positionSource: null };
}

function metresOf(field: 'depthM' | 'visibilityM', written: WrittenStation): Partial<Station> {
  const text = written[field];
  return text === undefined ? {} : { [field]: readMetres(text) };
}

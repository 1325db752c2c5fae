/**
 * Position, depth and visibility as they stand on the slate, kept as text until they can be read. Nothing here stops
 * a save: what cannot be read goes into the note, so that no word of the slate is lost.
 */

import { positionOfUtm } from '../../planning/ground/utm.ts';
import { type PositionReading, readPosition, writePosition } from '../../survey/position-notation.ts';
import type { Station } from '../../survey/words.ts';

export const writtenFields = ['position', 'depthM', 'visibilityM'] as const;
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

/** The station with what was typed. `names` stand before words that go into the note: "depth: 12 or 13". */
export function stationAsWritten(
  station: Station,
  written: WrittenStation,
  names: Readonly<Record<WrittenField, string>>,
): Station {
  const unread = writtenFields
    .filter((field) => isUnread(field, written[field] ?? ''))
    .map((field) => `${names[field]}: ${written[field]!.trim()}`);
  const note = [station.note, ...unread].filter(Boolean).join('; ') || null;
  return {
    ...station,
    ...placeOf(station, written.position),
    ...metresOf('depthM', written),
    ...metresOf('visibilityM', written),
    note,
  };
}

export function isUnread(field: WrittenField, text: string): boolean {
  if (text.trim() === '') return false;
  return field === 'position' ? readWrittenPosition(text).position === null : readMetres(text) === null;
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

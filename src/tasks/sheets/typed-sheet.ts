/**
 * A sheet as it is typed: cells of text. Reading it gives the records of the book and, apart, whatever could not be
 * read, so that nothing that stands on the paper is lost on the way.
 */

import type { Station, Tally, Transect, TransectStatus } from '../../survey/words.ts';
import {
  type LengthUnit,
  measuredIn,
  readLengthStream,
  type TypedLength,
  writeLengthStream,
} from './length-stream.ts';
import { meansNone, readRunningList, type SpeciesGroup } from './running-list.ts';
import type { Sheet } from './sheet-schemas.ts';
import { type SpeciesIndex, speciesMeant } from './species-ranking.ts';
import type { WrittenStation } from './written-station.ts';

export interface TypedLine {
  readonly id: string;
  readonly species: string;
  readonly lengths: string;
  /** The box "counted only". */
  readonly more: string;
}

export interface TypedBelt {
  readonly id: string;
  readonly code: string;
  readonly swim: number;
  readonly status: TransectStatus;
  readonly lengthM: string;
  /** As the protocol or the book says; not typed. */
  readonly widthM: number | null;
  readonly reason: string;
  readonly noneSeen: boolean;
  readonly note: string;
  readonly lines: readonly TypedLine[];
  /** The running list; read together with the lines. */
  readonly list: string;
}

export interface TypedSheet {
  readonly station: Station;
  /** Cells of the head that are read later; absent until one is typed in. */
  readonly written?: WrittenStation;
  readonly belts: readonly TypedBelt[];
}

export interface BeltReading {
  /** One for each species, in the order first seen. */
  readonly groups: readonly SpeciesGroup[];
  readonly noneSeen: boolean;
  /** Numbers before any species. */
  readonly unread: readonly string[];
}

export interface ReadingTools {
  readonly index: SpeciesIndex;
  readonly unit: LengthUnit;
}

/** Lines and list of one belt together; a species written twice is one count. */
export function readBelt(
  belt: TypedBelt,
  { index, unit }: ReadingTools,
  groupOf: (line: TypedLine) => SpeciesGroup = (line) => readLine(line, { index, unit }),
): BeltReading {
  const list = readRunningList(belt.list, index, unit);
  const lines = belt.lines.filter((line) => !isEmptyLine(line));
  const groups = [...lines.filter((line) => !saysNone(line)).map(groupOf), ...list.groups];
  const noneSeen = belt.noneSeen || list.noneSeen || lines.some(saysNone);
  return { groups: together(groups), noneSeen, unread: list.unread };
}

export function isEmptyLine({ species, lengths, more }: TypedLine): boolean {
  return species.trim() === '' && lengths.trim() === '' && more.trim() === '';
}

/** Neither an animal nor the mark "none seen": to be asked about, never a zero. */
export function isBlank(belt: TypedBelt, reading: BeltReading): boolean {
  const wasSearched = belt.status === 'done' || belt.status === 'partial';
  return wasSearched && !reading.noneSeen && reading.groups.length === 0 && reading.unread.length === 0;
}

/** Measured and counted animals. */
export function animalsIn({ lengths, more }: Pick<SpeciesGroup, 'lengths' | 'more'>): number {
  return measuredIn(lengths) + (more ?? 0);
}

/** What the book could not take: unknown species, words that are no length. */
export function cannotBeRead({ groups, unread }: BeltReading): boolean {
  return unread.length > 0 || groups.some((group) => !isWhole(group));
}

/** A species with numbers that can be read. A name without a number is not one animal and not zero: it is asked about. */
export function isWhole(group: SpeciesGroup): boolean {
  return group.speciesId !== null && group.unread.length === 0 && !isWithoutNumber(group);
}

export function isWithoutNumber({ lengths, more, writtenZero, unread }: SpeciesGroup): boolean {
  return lengths.length === 0 && more === null && !writtenZero && unread.length === 0;
}

interface SheetTools {
  readonly tools: ReadingTools;
  readonly newId: () => string;
  /** For those who have read the belts already. */
  readonly readingOf?: (belt: TypedBelt) => BeltReading;
}

/** The records of the typed sheet; identities of counts that stood before are kept. Unread words are not in it. */
export function sheetOfTyped(
  typed: TypedSheet,
  before: Sheet | null,
  { tools, newId, readingOf = (belt) => readBelt(belt, tools) }: SheetTools,
): Sheet {
  const standing = new Map(before?.transects.map((one) => [one.id, one]));
  const tallies = new Map(before?.tallies.map((one) => [`${one.transectId} ${one.speciesId}`, one]));
  const readings = typed.belts.map((belt) => ({ belt, reading: readingOf(belt) }));
  return {
    station: typed.station,
    transects: readings.map(({ belt, reading }) =>
      transectOf(belt, reading, typed.station, standing.get(belt.id)),
    ),
    tallies: readings.flatMap(({ belt, reading }) =>
      reading.groups
        .filter((group) => group.speciesId !== null && !isWithoutNumber(group))
        .map((group) => tallyOf(group, belt.id, tallies.get(`${belt.id} ${group.speciesId}`), newId)),
    ),
  };
}

/** The way back: a sheet of the book as cells to type in. */
export function typedOfSheet(
  sheet: Sheet,
  unit: LengthUnit,
  nameOf: (speciesId: string) => string,
): TypedSheet {
  const belts = sheet.transects.map((belt): TypedBelt => {
    const own = sheet.tallies.filter((tally) => tally.transectId === belt.id);
    return {
      id: belt.id,
      code: belt.code,
      swim: belt.swim,
      status: belt.status,
      lengthM: belt.lengthM === null ? '' : String(belt.lengthM),
      widthM: belt.widthM,
      reason: belt.reason ?? '',
      noneSeen: belt.noneSeen,
      note: belt.note ?? '',
      list: '',
      lines: own.map((tally) => lineOf(tally, unit, nameOf)),
    };
  });
  return { station: sheet.station, belts };
}

function lineOf(tally: Tally, unit: LengthUnit, nameOf: (speciesId: string) => string): TypedLine {
  const more = tally.count - measuredIn(tally.lengths);
  return {
    id: tally.id,
    species: nameOf(tally.speciesId),
    lengths: writeLengthStream(tally.lengths, unit),
    more: more > 0 ? String(more) : tally.count === 0 ? '0' : '',
  };
}

function saysNone({ species, lengths, more }: TypedLine): boolean {
  return meansNone(species) && lengths.trim() === '' && more.trim() === '';
}

/** What one line says, for the echo beside it. */
export function readLine({ species, lengths, more }: TypedLine, { index, unit }: ReadingTools): SpeciesGroup {
  const found = speciesMeant(species, index);
  const stream = readLengthStream(lengths, unit);
  const counted = /^\d{1,6}$/.test(more.trim()) ? Number(more.trim()) : null;
  const isCount = counted !== null || more.trim() === '';
  const both = counted === null ? stream.more : counted + (stream.more ?? 0);
  return {
    speciesId: found?.species.id ?? null,
    written: species,
    match: found?.kind ?? null,
    lengths: stream.lengths,
    more: both,
    writtenZero: stream.writtenZero || (both === 0 && stream.lengths.length === 0),
    unread: isCount ? stream.unread : [...stream.unread, more.trim()],
  };
}

function together(groups: readonly SpeciesGroup[]): readonly SpeciesGroup[] {
  const kept = new Map<string, SpeciesGroup>();
  for (const group of groups) {
    const key = group.speciesId ?? `?${group.written}`;
    const earlier = kept.get(key);
    kept.set(key, earlier === undefined ? group : added(earlier, group));
  }
  return [...kept.values()];
}

function added(one: SpeciesGroup, other: SpeciesGroup): SpeciesGroup {
  const more = one.more === null && other.more === null ? null : (one.more ?? 0) + (other.more ?? 0);
  const lengths = [...one.lengths, ...other.lengths];
  const writtenZero = one.writtenZero && other.writtenZero;
  return { ...one, lengths, more, writtenZero, unread: [...one.unread, ...other.unread] };
}

function transectOf(belt: TypedBelt, reading: BeltReading, station: Station, before?: Transect): Transect {
  const lengthM = Number(belt.lengthM.replace(',', '.'));
  const empty = { scope: [], depthStartM: null, depthEndM: null, cover: [] };
  return {
    ...(before ?? empty),
    id: belt.id,
    stationId: station.id,
    code: belt.code,
    swim: belt.swim,
    lengthM: Number.isFinite(lengthM) && lengthM > 0 ? lengthM : null,
    widthM: belt.widthM,
    status: belt.status,
    reason: belt.reason.trim() || null,
    noneSeen: reading.noneSeen,
    note: belt.note.trim() || null,
  };
}

/** Lengths that stand in the book keep what else is known of them (how measured, which photo). */
function tallyOf(
  group: SpeciesGroup,
  transectId: string,
  before: Tally | undefined,
  newId: () => string,
): Tally {
  const known = [...(before?.lengths ?? [])];
  const lengths = group.lengths.map((typed: TypedLength) => {
    const at = known.findIndex((one) => one.lengthMm === typed.lengthMm && one.n === typed.n);
    const [standing] = at < 0 ? [] : known.splice(at, 1);
    return standing ?? { lengthMm: typed.lengthMm, n: typed.n, measure: null, photo: null };
  });
  return {
    id: before?.id ?? newId(),
    transectId,
    speciesId: group.speciesId!,
    count: animalsIn(group),
    lengths,
  };
}

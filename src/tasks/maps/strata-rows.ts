/** What a person reads about the strata, zones and masks of a book. */

import { joinedSize } from '../../planning/ground/ground-twice.ts';
import type { MappedStratum } from '../../planning/ground/mapped-strata.ts';
import { openRing } from '../../planning/ground/plane.ts';
import type { Store } from '../../survey/store.ts';
import type { MapAreaRecord, Stratum } from '../../survey/words.ts';
import { measuredStrata } from './book-ground.ts';

export interface StrataRow {
  readonly name: string;
  readonly role: MapAreaRecord['role'];
  /** What the stratum stands for, in hectares: without the masks where there is a map, else as typed. */
  readonly areaHa: number | null;
  /** With everything the masks take; null without a map. */
  readonly wholeAreaHa: number | null;
  readonly maskedHa: number | null;
  /** Hectares by mask, in the order in which they were taken off. */
  readonly masked: readonly { readonly name: string; readonly why: string; readonly areaHa: number }[];
  readonly parts: number | null;
  readonly holes: number | null;
  readonly corners: number | null;
  /** At most so much more or less, if borders are followed straight in degrees and not along geodesics. */
  readonly edgeErrorHa: number | null;
  readonly reason: string | null;
  readonly frozenOn: string | null;
  readonly source: string | null;
  /** Stations of all surveys that were worked in this stratum; null for zones and masks. */
  readonly stations: number | null;
}

/** Strata first, then zones, then masks, each by name; strata without a map too. */
export async function strataRows(store: Store): Promise<readonly StrataRow[]> {
  const [areas, strata, stations] = await Promise.all([
    store.all('mapArea'),
    store.all('stratum'),
    store.all('station'),
  ]);
  const counts = new Map<string, number>();
  for (const { stratumId } of stations) counts.set(stratumId, (counts.get(stratumId) ?? 0) + 1);
  return rowsOf({ areas, strata, measured: measuredStrata(areas) }, (id) => counts.get(id) ?? 0);
}

export function rowsOf(
  book: {
    readonly areas: readonly MapAreaRecord[];
    readonly strata: readonly Stratum[];
    readonly measured: readonly MappedStratum[];
  },
  stationsIn: (stratumId: string) => number,
): readonly StrataRow[] {
  const { areas, strata, measured } = book;
  const byName = new Map(areas.filter((one) => one.role === 'stratum').map((one) => [one.name, one]));
  const rows = strata.map((stratum): StrataRow => {
    const record = byName.get(stratum.name);
    const row = { name: stratum.name, role: 'stratum', stations: stationsIn(stratum.id) } as const;
    if (record === undefined) return { ...noMap, ...row, areaHa: stratum.areaHa };
    const { ground } = measured.find(({ name }) => name === stratum.name)!;
    const masked = ground.dropped.filter(({ areaHa }) => areaHa > leastHa);
    return {
      ...row,
      ...shapeOf(record),
      areaHa: ground.leftHa,
      wholeAreaHa: ground.wholeHa,
      maskedHa: ground.wholeHa - ground.leftHa,
      masked,
      edgeErrorHa: ground.errorHa,
    };
  });
  const others = areas.filter((one) => one.role !== 'stratum').map(otherRow);
  return [...rows, ...others].sort(
    (a, b) => order[a.role] - order[b.role] || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0),
  );
}

/** A square metre: below it, it is rounding along a common border. */
const leastHa = 0.0001;
const order = { stratum: 0, zone: 1, mask: 2 } as const;

const noMap = {
  wholeAreaHa: null,
  maskedHa: null,
  masked: [],
  parts: null,
  holes: null,
  corners: null,
  edgeErrorHa: null,
  reason: null,
  frozenOn: null,
  source: null,
} as const;

function otherRow(record: MapAreaRecord): StrataRow {
  const { areaHa, edgeErrorHa } = joinedSize(record.content.area);
  const sizes = { areaHa, wholeAreaHa: areaHa, maskedHa: null, masked: [], edgeErrorHa };
  return { name: record.name, role: record.role, ...sizes, ...shapeOf(record), stations: null };
}

function shapeOf({ content }: MapAreaRecord) {
  const { parts } = content.area;
  const rings = parts.flatMap((part) => [part.outer, ...part.holes]);
  return {
    parts: parts.length,
    holes: rings.length - parts.length,
    corners: rings.reduce((sum, ring) => sum + openRing(ring).length, 0),
    reason: content.reason,
    frozenOn: content.frozenOn,
    source: content.source,
  };
}

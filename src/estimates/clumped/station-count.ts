/** What was counted at one station: whole animals on a searched area in square metres, transects summed. */
export interface StationCount {
  readonly animals: number;
  readonly areaM2: number;
}

export const SQUARE_METRES_PER_HA = 10_000;

/** A count that is not a whole number, or an area that is not positive, is a mistake of ours: throws plainly. */
export function requireStationCounts(counts: readonly StationCount[]): void {
  if (counts.length === 0) throw new Error('clumped interval requires at least one station');
  for (const { animals, areaM2 } of counts) {
    if (!Number.isInteger(animals) || animals < 0) {
      throw new Error(`clumped interval requires whole animals, got ${animals}`);
    }
    if (!(areaM2 > 0 && Number.isFinite(areaM2))) {
      throw new Error(`clumped interval requires a positive searched area, got ${areaM2}`);
    }
  }
}

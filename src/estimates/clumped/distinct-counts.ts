import type { StationCount } from './station-count.ts';

/** Stations with the same count on the same searched area: they speak alike. */
export interface CountOnArea extends StationCount {
  stations: number;
}

/** In the order in which each was first met. */
export function distinctCounts(counts: readonly StationCount[]): readonly CountOnArea[] {
  const distinct = new Map<string, CountOnArea>();
  for (const { animals, areaM2 } of counts) {
    const key = `${animals} ${areaM2}`;
    const count = distinct.get(key) ?? { animals, areaM2, stations: 0 };
    count.stations += 1;
    distinct.set(key, count);
  }
  return [...distinct.values()];
}

/** Borders as the book keeps them, and whether two of them are the same. */

import { shorterWayDeg } from '../../planning/ground/plane.ts';
import type { MapArea, Ring } from '../../survey/map-area.ts';
import type { MapAreaRecord } from '../../survey/words.ts';

/** Longitudes of 0 to 360, as maps of this ocean have them, are written as the book writes them. */
export function recordedArea({ parts }: MapArea): MapAreaRecord['content']['area'] {
  const recorded = (ring: Ring) =>
    ring.map(({ latitudeDeg, longitudeDeg }) => ({
      latitudeDeg,
      longitudeDeg: Math.abs(longitudeDeg) <= 180 ? longitudeDeg : shorterWayDeg(longitudeDeg),
    }));
  return { parts: parts.map(({ outer, holes }) => ({ outer: recorded(outer), holes: holes.map(recorded) })) };
}

export function isSameGround(record: MapAreaRecord, area: MapAreaRecord['content']['area']): boolean {
  return JSON.stringify(ringsOf(record.content.area)) === JSON.stringify(ringsOf(area));
}

/** Keys of records come back from the book in another order. */
function ringsOf({ parts }: MapAreaRecord['content']['area']) {
  return parts.map(({ outer, holes }) =>
    [outer, ...holes].map((ring) => ring.map(({ latitudeDeg, longitudeDeg }) => [latitudeDeg, longitudeDeg])),
  );
}

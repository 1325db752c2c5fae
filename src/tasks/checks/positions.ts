/** Positions of a survey: how finely they are written, where they lie together, and how one is written. */

import { roughDistanceM, type Spot } from '../../maths/distance-on-earth.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Station } from '../../survey/words.ts';

export type { Spot };

export function visitedSpot({ latitudeDeg, longitudeDeg }: Station): Spot | null {
  return latitudeDeg === null || longitudeDeg === null ? null : { latitudeDeg, longitudeDeg };
}

export function plannedSpot({ plannedLatitudeDeg, plannedLongitudeDeg }: Station): Spot | null {
  if (plannedLatitudeDeg === null || plannedLongitudeDeg === null) return null;
  return { latitudeDeg: plannedLatitudeDeg, longitudeDeg: plannedLongitudeDeg };
}

/** The most decimals of any position of the survey: trailing zeros are lost, so one position alone does not tell. */
export function decimalsOf(stations: SurveyInHand['stations']): number {
  let decimals = decimalsKnown.get(stations);
  if (decimals === undefined) {
    decimals = findDecimals(stations);
    decimalsKnown.set(stations, decimals);
  }
  return decimals;
}

/** Worked out once: several checks ask for every station. */
const decimalsKnown = new WeakMap<SurveyInHand['stations'], number>();

function findDecimals(stations: SurveyInHand['stations']): number {
  let most = 0;
  for (const { record } of stations) {
    for (const spot of [visitedSpot(record), plannedSpot(record)]) {
      if (spot === null) continue;
      most = Math.max(most, decimalsIn(spot.latitudeDeg), decimalsIn(spot.longitudeDeg));
    }
  }
  return Math.min(most, mostDecimals);
}

/** A computed 17.758333333333333 is written with six decimals, a tenth of a metre. */
const mostDecimals = 6;

function decimalsIn(degrees: number): number {
  return String(Math.abs(degrees)).split('.')[1]?.length ?? 0;
}

export interface Middle {
  readonly spot: Spot;
  /** Half of the stations lie nearer than this. */
  readonly medianM: number;
  readonly stations: number;
}

/** The middle of the visited positions: medians, which a few wild ones do not move. Null under five positions. */
export function middleOf(stations: SurveyInHand['stations']): Middle | null {
  const spots = stations.map(({ record }) => visitedSpot(record)).filter((spot) => spot !== null);
  if (spots.length < 5) return null;
  const around = spots[0]!.longitudeDeg;
  // Longitudes on one side of the date line, or their median would lie half the world away.
  const unwrapped = spots.map(
    ({ longitudeDeg }) => longitudeDeg - 360 * Math.round((longitudeDeg - around) / 360),
  );
  const spot = {
    latitudeDeg: median(spots.map((one) => one.latitudeDeg)),
    longitudeDeg: median(unwrapped),
  };
  return { spot, medianM: median(spots.map((one) => roughDistanceM(one, spot))), stations: spots.length };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** "-17.750", with the decimals of the survey. */
export function inDegrees(degrees: number, decimals: number): string {
  return degrees.toFixed(decimals);
}

export function spotInWords({ latitudeDeg, longitudeDeg }: Spot, decimals: number): string {
  return `${inDegrees(latitudeDeg, decimals)}, ${inDegrees(longitudeDeg, decimals)}`;
}

/** "369 m", "19.9 km". */
export function distanceInWords(distanceM: number): string {
  if (distanceM < 1000) return `${Math.round(distanceM)} m`;
  return `${distanceM < 100_000 ? (distanceM / 1000).toFixed(1) : Math.round(distanceM / 1000)} km`;
}

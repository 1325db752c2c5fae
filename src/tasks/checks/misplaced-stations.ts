/** Stations that lie where they should not: far from their plan, or without a plan far from all the others. */

import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import type { StationWithTransects, SurveyInHand } from '../../survey/observation.ts';
import { writePosition } from '../../survey/position-notation.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import { type Check, type CheckContext, stationCheck } from './check.ts';
import { isAtHome, outsideInWords } from './outside-areas.ts';
import { type Correction, type CorrectionKind, likelyCorrections } from './position-corrections.ts';
import {
  decimalsOf,
  distanceInWords,
  type Middle,
  middleOf,
  plannedSpot,
  type Spot,
  spotInWords,
  visitedSpot,
} from './positions.ts';

export interface Misplaced {
  readonly from: 'plan' | 'others';
  readonly written: string;
  /** The same in degrees and decimal minutes, to find it on a chart or receiver. */
  readonly chart: string;
  readonly distanceM: number;
  /** Nearest first; empty when no usual slip explains the place. */
  readonly corrections: readonly Correction[];
}

/** A check for stations misplaced by one kind of slip, or by none that is known (null). */
export function misplacedCheck(
  code: ProblemCode,
  kind: CorrectionKind | null,
  from: Misplaced['from'] | null = null,
): Check {
  return stationCheck(code, (station, context) => {
    const misplaced = misplacedStations(context.inHand).get(station);
    if (misplaced === undefined || (from !== null && misplaced.from !== from)) return null;
    const [best, ...others] = homeFirst(misplaced.corrections, station, context);
    if ((best?.kind ?? null) !== kind) return null;
    const parameters = {
      chart: misplaced.chart,
      distance: distanceInWords(misplaced.distanceM),
      reference: misplaced.from === 'plan' ? 'plan' : 'the other stations',
      outside: outsideInWords(station, context),
      others: others
        .slice(0, 2)
        .map(({ typed }) => typed)
        .join(' or '),
    };
    return { value: misplaced.written, parameters, suggestion: best?.typed ?? null };
  });
}

/** Corrections that end in the stratum and zone of the station before those that do not; else nearest first. */
function homeFirst(
  corrections: readonly Correction[],
  station: StationWithTransects,
  context: CheckContext,
): readonly Correction[] {
  const isHome = (one: Correction) => isAtHome(one.spot, station, context) !== false;
  return [...corrections.filter(isHome), ...corrections.filter((one) => !isHome(one))];
}

/** Worked out once per survey in hand: six checks ask for it. */
export function misplacedStations(inHand: SurveyInHand): ReadonlyMap<StationWithTransects, Misplaced> {
  let found = remembered.get(inHand);
  if (found === undefined) {
    found = findMisplaced(inHand);
    remembered.set(inHand, found);
  }
  return found;
}

const remembered = new WeakMap<SurveyInHand, ReadonlyMap<StationWithTransects, Misplaced>>();

function findMisplaced({ stations }: SurveyInHand): ReadonlyMap<StationWithTransects, Misplaced> {
  const found = new Map<StationWithTransects, Misplaced>();
  const decimals = decimalsOf(stations);
  const middle = middleOf(stations);
  for (const station of stations) {
    const spot = visitedSpot(station.record);
    if (spot === null) continue;
    const plan = plannedSpot(station.record);
    const misplaced =
      plan !== null ? fromPlan(spot, plan, decimals) : fromOthers(spot, middle, { stations, decimals });
    if (misplaced !== null) found.set(station, misplaced);
  }
  return found;
}

/** More than 50 m from plan is a question (JOB 21); where positions are written coarser, more than their rounding. */
function fromPlan(spot: Spot, plan: Spot, decimals: number): Misplaced | null {
  const limitM = Math.max(50, (Math.SQRT2 * 111_200 * 10 ** -decimals) / 2);
  const distanceM = roughDistanceM(spot, plan);
  if (distanceM <= limitM) return null;
  // A correction need not end on the plan: the boat lay some way off it as well.
  const withinM = Math.max(limitM, Math.min(500, 0.02 * distanceM));
  const corrections = likelyCorrections(spot, plan, { withinM, decimals });
  return {
    from: 'plan',
    written: spotInWords(spot, decimals),
    chart: writePosition(spot),
    distanceM,
    corrections,
  };
}

/**
 * Ten times as far from the middle as half of the stations, and over 10 km: no day's work lies so. A second island
 * lies so too, so a station with company within 5 km is asked about only where a slip of hemisphere or of latitude and
 * longitude explains it.
 */
function fromOthers(
  spot: Spot,
  middle: Middle | null,
  { stations, decimals }: { readonly stations: SurveyInHand['stations']; readonly decimals: number },
): Misplaced | null {
  if (middle === null) return null;
  const distanceM = roughDistanceM(spot, middle.spot);
  if (distanceM <= Math.max(10_000, 10 * middle.medianM)) return null;
  const withinM = Math.max(5000, 3 * middle.medianM);
  const likely = likelyCorrections(spot, middle.spot, { withinM, decimals });
  const alone = !hasCompany(spot, stations);
  const corrections = alone ? likely : likely.filter(({ kind }) => wholesale.has(kind));
  if (!alone && corrections.length === 0) return null;
  return {
    from: 'others',
    written: spotInWords(spot, decimals),
    chart: writePosition(spot),
    distanceM,
    corrections,
  };
}

const wholesale: ReadonlySet<CorrectionKind> = new Set([
  'hemisphere-missing',
  'latitude-longitude-exchanged',
]);

function hasCompany(spot: Spot, stations: SurveyInHand['stations']): boolean {
  let within = 0;
  for (const { record } of stations) {
    const other = visitedSpot(record);
    if (other !== null && roughDistanceM(spot, other) < 5000) within++;
  }
  return within > 1;
}

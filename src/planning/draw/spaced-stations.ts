import { type PlanProblem, planProblem } from '../size/plan-problem.ts';
import type { DrawRequest } from './draw-request.ts';
import type { DrawnStation, PassedOver } from './drawn-plan.ts';

/** The stations of a plan while it grows, each no nearer than the spacing to those before it. */
export interface SpacedStations {
  readonly spacingM: number | null;
  /** Whether there was room; a station without room is remembered as passed over. */
  add(station: DrawnStation): boolean;
  passedOver(): readonly PassedOver[];
  /** Fixed and hand-picked stations are where they are: those nearer than the spacing are told, not moved. */
  nearPairs(): readonly PlanProblem[];
}

export function spacedStations(
  given: readonly DrawnStation[],
  { minimumSpacingM, distanceM }: Pick<DrawRequest, 'minimumSpacingM' | 'distanceM'>,
): SpacedStations {
  const stations: DrawnStation[] = [];
  const passed: PassedOver[] = [];
  const near: PlanProblem[] = [];
  // A degree of latitude is nowhere shorter than 110.5 km: what is farther north or south needs no geodesic.
  const reachDeg = minimumSpacingM === null ? 0 : minimumSpacingM / 110_500;
  const tooNear = (station: DrawnStation) => {
    if (minimumSpacingM === null) return null;
    for (const other of stations) {
      if (Math.abs(other.position.latitudeDeg - station.position.latitudeDeg) > reachDeg) continue;
      const apart = distanceM(other.position, station.position);
      if (apart < minimumSpacingM) return { tooNearTo: other.code, distanceM: apart };
    }
    return null;
  };
  for (const station of given) {
    const found = tooNear(station);
    if (found !== null) {
      const { tooNearTo: other, distanceM: apart } = found;
      const parameters = { code: station.code, other, distanceM: apart, spacingM: minimumSpacingM! };
      near.push(planProblem('plan-spacing-ignored-by-fixed', parameters));
    }
    stations.push(station);
  }
  return {
    spacingM: minimumSpacingM,
    add(station) {
      const found = tooNear(station);
      if (found === null) stations.push(station);
      else if (passed.length < mostRemembered) {
        passed.push({ stratum: station.stratum, position: station.position, ...found });
      }
      return found === null;
    },
    passedOver: () => passed,
    nearPairs: () => near,
  };
}

/** A full ground passes over thousands; nobody reads more than this. */
export const mostRemembered = 1000;

import { type Planned, type PlanProblem, planned, planProblem, refused } from '../size/plan-problem.ts';
import type { DrawnPlan, DrawnStation } from './drawn-plan.ts';

export interface ReplaceRequest {
  readonly code: string;
  /** Why the station cannot be worked: on land, too deep, surf. Never empty. */
  readonly reason: string;
  readonly who: string;
  readonly date: string;
}

/**
 * Gives up a station and takes the next spare of the same stratum, in the order of the list, with the reason on record.
 *
 * Anybody's choice of a "similar" place nearby would favour reachable or rich ground; the list keeps the design.
 * A hand-picked station has no place in the list and cannot be replaced by it. Refuses an unknown or already dropped
 * station, a spare, an empty reason, and a stratum whose spares are used up. The plan given in is not changed.
 */
export function replaceStation(plan: DrawnPlan, request: ReplaceRequest): Planned<DrawnPlan> {
  const dropped = plan.stations.find((station) => station.code === request.code);
  const problem = problemOf(dropped, request);
  if (problem !== null) return refused([problem]);
  const { stratum } = dropped!;
  const next = plan.stations.find((station) => station.stratum === stratum && station.role === 'spare');
  if (next === undefined)
    return refused([planProblem('plan-no-replacement-left', { code: request.code, stratum })]);
  const stations = plan.stations.map((station): DrawnStation => {
    if (station.code === request.code) return { ...station, role: 'dropped' };
    return station === next ? { ...station, role: 'planned', replaces: request.code } : station;
  });
  const { reason, who, date } = request;
  const replacement = {
    dropped: request.code,
    replacement: next.code,
    stratum,
    reason: reason.trim(),
    who,
    date,
  };
  return planned({ ...plan, stations, replacements: [...plan.replacements, replacement] });
}

function problemOf(station: DrawnStation | undefined, { code, reason }: ReplaceRequest): PlanProblem | null {
  if (station === undefined) return planProblem('plan-unknown-station', { code });
  if (station.role === 'dropped') return planProblem('plan-station-already-dropped', { code });
  if (station.role === 'spare') return planProblem('plan-not-replaceable', { code, selection: 'spare' });
  if (station.selection === 'hand-picked')
    return planProblem('plan-not-replaceable', { code, selection: station.selection });
  return reason.trim() === '' ? planProblem('plan-reason-missing', { code }) : null;
}

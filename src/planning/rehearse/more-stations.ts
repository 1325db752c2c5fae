import { sum } from '../../maths/variance.ts';
import { type Planned, planned, refused, stops } from '../size/plan-problem.ts';
import { priorityAllocation } from '../size/priority-allocation.ts';
import { numberProblems, wholeProblems } from '../size/typed-numbers.ts';
import type { RehearsalRequest, RehearsalStratum } from './rehearsal-request.ts';
import { type Rehearsal, rehearseSurvey } from './rehearse-survey.ts';

/** More effort: stations, or days of a boat that works so many stations a day (whole stations only). */
export type MoreEffort =
  | { readonly extraStations: number }
  | { readonly boatDays: number; readonly stationsPerBoatDay: number };

export interface RehearsalOption {
  readonly extraStations: number;
  /** Null where the effort was given in stations. */
  readonly boatDays: number | null;
  readonly rehearsal: Rehearsal;
}

/**
 * What more stations, or two more days, would change: the plan as it is and each larger one, rehearsed from one seed.
 *
 * The extra stations go to the strata in the proportions of the plan, whole numbers by priority values, and no stratum
 * loses one. Differences smaller than two simulation errors show nothing. The first option is the plan itself.
 */
export function rehearseOptions(
  request: RehearsalRequest,
  efforts: readonly MoreEffort[],
): Planned<readonly RehearsalOption[]> {
  const problems = efforts.flatMap(effortProblems);
  if (stops(problems)) return refused(problems);
  const base = rehearseSurvey(request);
  if (base.value === null) return refused(base.problems);
  const options: RehearsalOption[] = [{ extraStations: 0, boatDays: null, rehearsal: base.value }];
  for (const effort of efforts) {
    const extra = extraOf(effort);
    const larger = rehearseSurvey({ ...request, strata: withMoreStations(request.strata, extra) });
    if (larger.value === null) return refused(larger.problems);
    const boatDays = 'boatDays' in effort ? effort.boatDays : null;
    options.push({ extraStations: extra, boatDays, rehearsal: larger.value });
  }
  return planned(options, base.problems);
}

/** The strata with so many stations more, in the proportions of the plan. */
export function withMoreStations(
  strata: readonly RehearsalStratum[],
  extra: number,
): readonly RehearsalStratum[] {
  const claims = strata.map(({ stations }) => ({ weight: stations, minimum: stations, maximum: null }));
  const given = priorityAllocation(claims, sum(strata.map((stratum) => stratum.stations)) + extra);
  return strata.map((stratum, h) => ({ ...stratum, stations: given[h]! }));
}

function extraOf(effort: MoreEffort): number {
  if ('extraStations' in effort) return effort.extraStations;
  return Math.floor(effort.boatDays * effort.stationsPerBoatDay * (1 + 1e-12));
}

function effortProblems(effort: MoreEffort) {
  if ('extraStations' in effort)
    return wholeProblems('extraStations', effort.extraStations, { atLeast: 1, atMost: 10_000 });
  return [
    ...numberProblems('boatDays', effort.boatDays, { above: 0, atMost: 366 }),
    ...numberProblems('stationsPerBoatDay', effort.stationsPerBoatDay, { above: 0, atMost: 100 }),
  ];
}

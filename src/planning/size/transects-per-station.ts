import { type Planned, type PlanProblem, planned, planProblem, refused, stops } from './plan-problem.ts';
import { numberProblems } from './typed-numbers.ts';

export interface StationCosts {
  /** Variance of station values that would remain with endless transects. */
  readonly varianceBetween: number;
  /** Variance of transects around their station. */
  readonly varianceWithin: number;
  /** Cost of reaching and leaving a station, in any unit: hours, litres, money. */
  readonly costPerStation: number;
  /** Cost of one transect, in the same unit. */
  readonly costPerTransect: number;
  readonly budget: number;
  /** Table rows to give; the whole numbers around the optimum are added. */
  readonly transects?: readonly number[];
  /** More than this many belts do not fit one dive: the choice stays at or below it. */
  readonly mostTransects?: number;
}

export interface TransectRow {
  readonly transects: number;
  /** Stations that the budget pays, not rounded. */
  readonly stations: number;
  /** Variance of the mean over those stations. */
  readonly varianceOfMean: number;
}

export interface TransectsPerStation {
  /** sqrt(cost ratio times variance ratio), not rounded; null where stations are alike and nothing limits it. */
  readonly optimum: number | null;
  /** The whole number with the smallest variance for the budget. */
  readonly transects: number;
  /** Share of the variance of single transects that lies between stations. */
  readonly likenessWithinStations: number;
  readonly rows: readonly TransectRow[];
}

/**
 * Number of transects at each station that gives the smallest variance of the mean for the money.
 *
 * sqrt(c1 / c2 * within / between): more belts where the way is long, fewer where stations differ. The table shows
 * how flat the choice is. Assumes equal numbers of transects, and variance components of the pilot that are right.
 * Where transects of a station are all alike the answer is one. Refuses when there is no variance at all.
 * Source: Cochran 1977, equation 10.26 (from memory); computed with R.
 */
export function transectsPerStation(costs: StationCosts): Planned<TransectsPerStation> {
  const problems = problemsOf(costs);
  if (stops(problems)) return refused(problems);
  const { varianceBetween, varianceWithin, costPerStation, costPerTransect } = costs;
  const optimum =
    varianceBetween === 0
      ? null
      : Math.sqrt((costPerStation / costPerTransect) * (varianceWithin / varianceBetween));
  const most = costs.mostTransects ?? mostTransectsTried;
  const around = optimum === null ? [most] : [Math.floor(optimum), Math.ceil(optimum)];
  const choices = around.map((m) => Math.min(most, Math.max(1, m)));
  const rows = [...new Set([...(costs.transects ?? []), ...choices])]
    .sort((a, b) => a - b)
    .map((transects) => rowFor(costs, transects));
  // The variance has one valley: the best whole number is one of the two beside it.
  const best = choices
    .map((m) => rowFor(costs, m))
    .reduce((a, b) => (b.varianceOfMean < a.varianceOfMean ? b : a));
  return planned(
    {
      optimum,
      transects: best.transects,
      likenessWithinStations: varianceBetween / (varianceBetween + varianceWithin),
      rows,
    },
    problems,
  );
}

const mostTransectsTried = 30;

function rowFor(costs: StationCosts, transects: number): TransectRow {
  const stations = costs.budget / (costs.costPerStation + transects * costs.costPerTransect);
  const perStation = costs.varianceBetween + costs.varianceWithin / transects;
  return { transects, stations, varianceOfMean: perStation / stations };
}

function problemsOf(costs: StationCosts): readonly PlanProblem[] {
  const problems = [
    ...numberProblems('varianceBetween', costs.varianceBetween, { atLeast: 0 }),
    ...numberProblems('varianceWithin', costs.varianceWithin, { atLeast: 0 }),
    ...numberProblems('costPerStation', costs.costPerStation, { above: 0 }),
    ...numberProblems('costPerTransect', costs.costPerTransect, { above: 0 }),
    ...numberProblems('budget', costs.budget, { above: 0 }),
    ...numberProblems('mostTransects', costs.mostTransects ?? mostTransectsTried, { atLeast: 1 }),
    ...(costs.transects ?? []).flatMap((m) => numberProblems('transects', m, { atLeast: 1 })),
  ];
  if (stops(problems)) return problems;
  if (costs.varianceBetween + costs.varianceWithin === 0) return [planProblem('plan-no-spread-anywhere')];
  return costs.varianceBetween === 0 ? [planProblem('plan-no-variance-between')] : [];
}

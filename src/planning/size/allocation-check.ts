/** What must be known before stations can be split, and what an officer should hear about it. */

import { sum } from '../../maths/variance.ts';
import type { AllocationRule, StratumSpread } from './allocation-shares.ts';
import { type PlanProblem, planProblem, stops } from './plan-problem.ts';
import { numberProblems, repeatedNames, wholeProblems } from './typed-numbers.ts';

/** A stratum as the officer plans it; null where a thing is not known. */
export interface PlannedStratum {
  readonly name: string;
  readonly areaHa: number | null;
  /** Between stations, in the unit of the values (animals per hectare). */
  readonly standardDeviation: number | null;
  /** In any unit, the same for all strata: hours, litres, money. */
  readonly costPerStation: number | null;
  /** As many stations as the stratum can hold; null without limit. */
  readonly mostStations: number | null;
}

/** What is given: a number of stations, a budget in the unit of the costs, or a variance of the mean to reach. */
export type AllocationGoal =
  | { readonly stations: number }
  | { readonly budget: number }
  | { readonly varianceOfMean: number };

interface Asked {
  readonly rule: AllocationRule;
  readonly goal: AllocationGoal;
  readonly minimum: number;
}

export function checkAllocation(strata: readonly PlannedStratum[], asked: Asked): readonly PlanProblem[] {
  if (strata.length === 0) return [planProblem('plan-no-strata')];
  const problems = [
    ...repeatedNames(strata.map((stratum) => stratum.name)),
    ...wholeProblems('minimum', asked.minimum, { atLeast: 1 }),
    ...goalProblems(asked.goal),
    ...strata.flatMap(strataNumbers),
    ...missing(strata, asked),
  ];
  if (stops(problems)) return problems;
  return [...problems, ...spreadProblems(strata, asked), ...sizeProblems(strata, asked)];
}

/** Strata for the formulas; what is not known is not needed there, and is checked before. */
export function spreadsOf(strata: readonly PlannedStratum[]): readonly StratumSpread[] {
  const whole = sum(strata.map((stratum) => stratum.areaHa ?? 0));
  return strata.map((stratum) => ({
    weight: (stratum.areaHa ?? 0) / whole,
    standardDeviation: stratum.standardDeviation ?? 0,
    costPerStation: stratum.costPerStation ?? 1,
  }));
}

function goalProblems(goal: AllocationGoal): readonly PlanProblem[] {
  if ('stations' in goal) return wholeProblems('stations', goal.stations, { atLeast: 1, atMost: 100_000 });
  if ('budget' in goal) return numberProblems('budget', goal.budget, { above: 0 });
  return numberProblems('varianceOfMean', goal.varianceOfMean, { above: 0 });
}

function strataNumbers(stratum: PlannedStratum): readonly PlanProblem[] {
  const { areaHa, standardDeviation, costPerStation, mostStations } = stratum;
  return [
    ...(areaHa === null ? [] : numberProblems('areaHa', areaHa, { above: 0 })),
    ...(standardDeviation === null
      ? []
      : numberProblems('standardDeviation', standardDeviation, { atLeast: 0 })),
    ...(costPerStation === null ? [] : numberProblems('costPerStation', costPerStation, { above: 0 })),
    ...(mostStations === null ? [] : wholeProblems('mostStations', mostStations, { atLeast: 1 })),
  ];
}

function missing(strata: readonly PlannedStratum[], { rule, goal }: Asked): readonly PlanProblem[] {
  const named = (lacks: (stratum: PlannedStratum) => boolean) =>
    strata
      .filter(lacks)
      .map((stratum) => stratum.name)
      .join(', ');
  const areas = named((stratum) => stratum.areaHa === null);
  const spreads = named((stratum) => stratum.standardDeviation === null);
  const costs = named((stratum) => stratum.costPerStation === null);
  const needsSpread = rule !== 'proportional' || 'varianceOfMean' in goal;
  const needsCost = rule === 'cost-optimal' || 'budget' in goal;
  return [
    ...(areas === '' ? [] : [planProblem('plan-area-missing', { strata: areas })]),
    ...(needsSpread && spreads !== '' ? [planProblem('plan-spread-missing', { strata: spreads })] : []),
    ...(needsCost && costs !== '' ? [planProblem('plan-cost-missing', { strata: costs })] : []),
  ];
}

function spreadProblems(strata: readonly PlannedStratum[], { rule, minimum }: Asked): readonly PlanProblem[] {
  if (rule === 'proportional') return [];
  const flat = strata.filter((stratum) => stratum.standardDeviation === 0);
  if (flat.length === strata.length) return [planProblem('plan-no-spread-anywhere')];
  return flat.map(({ name }) =>
    planProblem('plan-stratum-without-spread', { stratum: name, stations: minimum }),
  );
}

function sizeProblems(strata: readonly PlannedStratum[], { goal, minimum }: Asked): readonly PlanProblem[] {
  const least = strata.map((stratum) => Math.min(minimum, stratum.mostStations ?? minimum));
  if ('budget' in goal) {
    const needed = sum(strata.map((stratum, h) => stratum.costPerStation! * least[h]!));
    if (needed <= goal.budget) return [];
    return [planProblem('plan-budget-too-small', { budget: goal.budget, minimum, needed })];
  }
  if (!('stations' in goal)) return [];
  const { stations } = goal;
  const needed = sum(least);
  if (stations < needed) {
    return [planProblem('plan-minimum-needs-more', { stations, minimum, strata: strata.length, needed })];
  }
  const room = sum(strata.map((stratum) => stratum.mostStations ?? Infinity));
  return stations > room ? [planProblem('plan-ground-too-small', { stations, room })] : [];
}

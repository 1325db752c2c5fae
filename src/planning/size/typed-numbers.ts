/** Numbers as an officer types them, questioned before any formula sees them. */

import { type PlanProblem, planProblem } from './plan-problem.ts';

export interface Bounds {
  /** The number must be greater than this. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

/** Problems of a number outside its bounds (not a number, or infinite, is outside too); empty when it is good. */
export function numberProblems(what: string, value: number, bounds: Bounds): readonly PlanProblem[] {
  const { above = -Infinity, atLeast = -Infinity, below = Infinity, atMost = Infinity } = bounds;
  const isGood =
    Number.isFinite(value) && value > above && value >= atLeast && value < below && value <= atMost;
  return isGood ? [] : [planProblem('plan-number-impossible', { what, value: shown(value), ...bounds })];
}

/** The same for something counted: stations, transects, draws. */
export function wholeProblems(what: string, value: number, bounds: Bounds): readonly PlanProblem[] {
  const problems = numberProblems(what, value, bounds);
  if (problems.length > 0 || Number.isInteger(value)) return problems;
  return [planProblem('plan-not-whole', { what, value })];
}

/** Problems of names that stand twice, where a name must point to one thing. */
export function repeatedNames(names: readonly string[]): readonly PlanProblem[] {
  const repeated = names.filter((name, i) => names.indexOf(name) !== i);
  return [...new Set(repeated)].map((name) => planProblem('plan-name-repeated', { name }));
}

function shown(value: number): number | string {
  return Number.isFinite(value) ? value : String(value);
}

/**
 * What can be wrong with a plan that an officer typed, as values. The sentence comes from the catalogue in `report`.
 *
 * This room (`size`, `draw`, `rehearse`) holds how many stations, which ones, and what the survey will be able to say.
 * Never here: files, SQL, the clock, luck (chance comes in as a seed), sentences, and any library of shapes on the
 * earth: the ground is a question "is this position inside?" and a distance in metres, both given as functions.
 */

import type { Parameters, Severity } from '../../survey/message.ts';

/** Every finding about a plan, with its usual severity; the parameters are in the comments. stop: no plan is given. */
export const planProblemSeverities = {
  // numbers that were typed
  'plan-number-impossible': 'stop', // {what, value, above | atLeast, below | atMost}
  'plan-not-whole': 'stop', // {what, value}
  'plan-no-strata': 'stop', // {}
  'plan-no-species': 'stop', // {}
  'plan-name-repeated': 'stop', // {name}
  // allocation
  'plan-area-missing': 'stop', // {strata}
  'plan-spread-missing': 'stop', // {strata}: no pilot, no earlier survey
  'plan-cost-missing': 'stop', // {strata}
  'plan-no-spread-anywhere': 'stop', // {}: every pilot station or transect showed the same
  'plan-stratum-without-spread': 'explain', // {stratum, stations}: it gets the minimum alone
  'plan-minimum-needs-more': 'stop', // {stations, minimum, strata, needed}
  'plan-budget-too-small': 'stop', // {budget, minimum, needed}
  'plan-ground-too-small': 'stop', // {stations, room}: more than the strata can hold
  'plan-stratum-full': 'note', // {stratum, stations}: as many as it can hold
  // precision and change
  'plan-pilot-too-small': 'stop', // {stations, atLeast}
  'plan-no-variance-between': 'explain', // {}: stations alike; the optimum number of transects has no limit
  'plan-change-not-tellable': 'stop', // {stations}: with two in all no degree of freedom is left
  // draw
  'plan-ground-not-found': 'stop', // {stratum, tries, found, wanted}
  'plan-spacing-leaves-too-few': 'stop', // {stratum, wanted, found, spacingM, tried}
  'plan-spares-short': 'explain', // {stratum, wanted, found}
  'plan-too-many-candidates': 'stop', // {stratum, candidates, most, spacingM}
  'plan-too-few-candidates': 'stop', // {stratum, candidates, wanted}
  'plan-fixed-exceed-stations': 'stop', // {stratum, fixed, stations}
  'plan-fixed-outside': 'explain', // {code, stratum}
  'plan-hand-picked-outside': 'explain', // {code, stratum}
  'plan-hand-picked': 'note', // {stratum, count}: no part in the estimate of the stratum
  'plan-spacing-ignored-by-fixed': 'note', // {code, other, distanceM, spacingM}
  // replacing
  'plan-unknown-station': 'stop', // {code}
  'plan-station-already-dropped': 'stop', // {code}
  'plan-not-replaceable': 'stop', // {code, selection}
  'plan-no-replacement-left': 'stop', // {code, stratum}
  'plan-reason-missing': 'stop', // {code}
  // rehearsal
  'plan-lone-station': 'explain', // {stratum}: no standard error will be known
  'plan-density-missing': 'stop', // {species, strata}
} as const satisfies Record<string, Severity>;

export type PlanProblemCode = keyof typeof planProblemSeverities;

export interface PlanProblem {
  readonly code: PlanProblemCode;
  readonly severity: Severity;
  readonly parameters: Parameters;
}

/** A planned value, or null with at least one problem that stops. */
export interface Planned<Value> {
  readonly value: Value | null;
  readonly problems: readonly PlanProblem[];
}

export function planProblem(code: PlanProblemCode, parameters: Parameters = {}): PlanProblem {
  return { code, severity: planProblemSeverities[code], parameters };
}

export function planned<Value>(value: Value, problems: readonly PlanProblem[] = []): Planned<Value> {
  return { value, problems };
}

export function refused<Value>(problems: readonly PlanProblem[]): Planned<Value> {
  if (!stops(problems)) throw new Error('refused requires a problem that stops');
  return { value: null, problems };
}

export function stops(problems: readonly PlanProblem[]): boolean {
  return problems.some((problem) => problem.severity === 'stop');
}

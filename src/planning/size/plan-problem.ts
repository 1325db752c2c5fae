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
  'plan-pilot-lone-station': 'stop', // {survey, species, strata}: one counted station shows no spread
  'plan-pilot-no-counts': 'stop', // {survey}: not one station that was searched
  'plan-pilot-stratum-empty': 'explain', // {survey, strata}: in the survey, no station searched; left out of the plan
  'plan-pilot-none-seen': 'explain', // {survey, species, stations, areaM2, belowPerHa, moreStations, moreBelowPerHa}: no CV
  'plan-pilot-stratum-none-seen': 'explain', // {survey, species, strata}: taken as none, too good
  'plan-pilot-stations-unused': 'note', // {survey, species, stations}: hand-picked, lost or unresolved
  'plan-pilot-fewer-strata': 'explain', // {survey, species, strata}: looked for in these only, no part in this plan
  'plan-goal-unclear': 'stop', // {given}: one of CV, margin, change; given is how many were
  'plan-source-unclear': 'stop', // {}: an earlier survey or typed values, one of the two
  'plan-split-unclear': 'stop', // {}: a number of stations or a budget, one of the two
  'plan-first-species-decides': 'explain', // {species}: a budget is split for one species
  'plan-shared-ignores-costs': 'note', // {}: several species share by precision alone
  'plan-two-costs': 'stop', // {}: of a station and of a transect, both or neither
  'plan-days-need-rate': 'stop', // {what}: days and costs of days need the stations a boat works in a day
  'plan-change-is-none': 'stop', // {}: a change by the factor 1
  'plan-few-in-stratum': 'explain', // {stratum, stations, other}: fewer than three; merge with the other
  'plan-stratum-unknown': 'stop', // {name, nearest, known}
  'plan-leaves-strata': 'stop', // {survey, strata}: the earlier survey speaks for ground that the plan has no station in
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
  'plan-unknown-station': 'stop', // {code, nearest}
  'plan-station-already-dropped': 'stop', // {code}
  'plan-not-replaceable': 'stop', // {code, selection}
  'plan-no-replacement-left': 'stop', // {code, stratum}
  'plan-reason-missing': 'stop', // {code}
  // the draw in a book
  'plan-exists': 'stop', // {name, drawnOn, drawnBy}
  'plan-no-map': 'stop', // {strata, mapped}
  'plan-stations-unclear': 'stop', // {}
  'plan-option-needs': 'stop', // {option, needs}: asked for, and nothing would have come of it
  'plan-nothing-drawn': 'stop', // {}
  'plan-stratum-crowded': 'stop', // {stratum, stations, areaHa, eachM2, searchedM2}
  'plan-position-unclear': 'stop', // {code, detail}
  'plan-position-doubt': 'explain', // {code, position, detail}: read, with something taken for granted
  'plan-hand-picked-nowhere': 'stop', // {code, stratum, distanceM}
  'plan-hand-picked-on-mask': 'stop', // {code, stratum}
  'plan-hand-picked-unnamed': 'stop', // {position}
  'plan-name-missing': 'stop', // {what}
  'plan-belts-dropped': 'explain', // {plan, stations, belts}: of the draw that is replaced
  'plan-survey-has-plan': 'explain', // {survey, plans}: codes may be the same, and the report takes the last draw
  'plan-fixed-none': 'stop', // {survey}
  'plan-fixed-unknown': 'stop', // {codes, survey}
  'plan-fixed-left-out': 'explain', // {survey, codes, reason}
  'plan-fixed-more-than-planned': 'note', // {stratum, fixed, stations}
  'plan-balance-poor': 'note', // {stratum, share}
  'plan-masks-dropped': 'note', // {stratum, areaHa, share, masks}
  'plan-borders-movable': 'note', // {strata}
  // laying
  'plan-protocol-unknown': 'stop', // {name, nearest, known}
  'plan-layout-not-laid': 'stop', // {layout}
  'plan-belts-unknown': 'stop', // {missing}
  'plan-bend-unclear': 'stop', // {code, belt, belts}
  'plan-belts-do-not-fit': 'explain', // {code, stratum, insideM, laidM, bearingDeg}
  'plan-start-off-ground': 'explain', // {code, stratum}
  'plan-belts-narrow-way': 'note', // {code, slackDeg}
  'plan-bearing-free': 'note', // {stations}
  'plan-model-outdated': 'explain', // {model, validFromYear, validToYear, date}
  'plan-weak-field': 'explain', // {code}
  'plan-not-laid': 'note', // {}
  // waypoints
  'waypoint-far': 'explain', // {code, waypoint, distanceM, nearM}
  'waypoint-as-sent': 'explain', // {codes}: on the planned place to the metre, under its name
  'waypoint-without-station': 'explain', // {waypoint, position, nearest, distanceM}
  'waypoint-station-has-position': 'explain', // {code, distanceM}
  'waypoint-station-not-entered': 'explain', // {codes, survey}
  'waypoint-none': 'stop', // {}
  // rehearsal
  'plan-lone-station': 'explain', // {stratum}: no standard error will be known
  'plan-rehearsal-too-few': 'stop', // {stations, strata, needed}: fewer than two in each stratum
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

/** One plan for several species: who needs most, and what each gets from less. */

import { sum } from '../../maths/variance.ts';
import { pilotFactor } from './pilot-factor.ts';
import { type Planned, type PlanProblem, planned, planProblem, refused, stops } from './plan-problem.ts';
import { stationsForCv } from './stations-for-precision.ts';
import { numberProblems, repeatedNames } from './typed-numbers.ts';

export interface SpeciesGoal {
  readonly species: string;
  /** CV between stations of one survey, as the pilot showed it. */
  readonly stationCv: number;
  /** Stations of the pilot, whose own uncertainty raises the CV; null when the CV is to be taken as it stands. */
  readonly pilotStations: number | null;
  readonly targetCv: number;
  /** Whether this species may decide the size of the survey. */
  readonly isPriority: boolean;
}

export interface SpeciesNeed {
  readonly species: string;
  /** The CV between stations after the pilot's factor. */
  readonly plannedCv: number;
  readonly targetCv: number;
  readonly isPriority: boolean;
  readonly stations: number;
}

/** One choice of size: the CV each species would have, and which reach their target. */
export interface SizeChoice {
  readonly stations: number;
  readonly cvBySpecies: readonly { readonly species: string; readonly cv: number; readonly isMet: boolean }[];
  readonly met: number;
}

export interface SeveralSpeciesNeed {
  /** The largest need among the priority species. */
  readonly stations: number;
  readonly decidedBy: string;
  readonly needs: readonly SpeciesNeed[];
  /** Every distinct need as a choice of size, rising. */
  readonly choices: readonly SizeChoice[];
}

/**
 * Number of stations that several species ask for, and what is given up by taking fewer.
 *
 * Each species needs (CV / target)^2 stations; the survey takes the largest need of the priority species. Every need
 * is also a choice of size: the table shows which species reach their target there and with what CV the others stay.
 * Refuses an empty list and a list without a priority species.
 */
export function severalSpeciesNeed(
  goals: readonly SpeciesGoal[],
  assurance = 0.8,
): Planned<SeveralSpeciesNeed> {
  if (!goals.some((goal) => goal.isPriority)) return refused([planProblem('plan-no-species')]);
  const answers = goals.map((goal) => needOf(goal, assurance));
  const problems: PlanProblem[] = [
    ...repeatedNames(goals.map((goal) => goal.species)),
    ...answers.flatMap((answer) => answer.problems),
  ];
  if (stops(problems)) return refused(problems);
  const needs = answers.map((answer) => answer.value!);
  const greatest = needs
    .filter((need) => need.isPriority)
    .reduce((a, b) => (b.stations > a.stations ? b : a));
  const sizes = [...new Set(needs.map((need) => need.stations))].sort((a, b) => a - b);
  return planned({
    stations: greatest.stations,
    decidedBy: greatest.species,
    needs,
    choices: sizes.map((stations) => choiceOf(needs, stations)),
  });
}

function needOf(goal: SpeciesGoal, assurance: number): Planned<SpeciesNeed> {
  const factor =
    goal.pilotStations === null ? planned(1) : pilotFactor({ stations: goal.pilotStations, assurance });
  const problems = [...factor.problems, ...numberProblems('stationCv', goal.stationCv, { above: 0 })];
  if (stops(problems)) return refused(problems);
  const plannedCv = goal.stationCv * factor.value!;
  const need = stationsForCv({ stationCv: plannedCv, targetCv: goal.targetCv });
  if (need.value === null) return refused(need.problems);
  const { species, targetCv, isPriority } = goal;
  return planned({ species, plannedCv, targetCv, isPriority, stations: need.value.stations });
}

function choiceOf(needs: readonly SpeciesNeed[], stations: number): SizeChoice {
  const cvBySpecies = needs.map((need) => ({
    species: need.species,
    cv: need.plannedCv / Math.sqrt(stations),
    isMet: need.stations <= stations,
  }));
  return { stations, cvBySpecies, met: sum(cvBySpecies.map((one) => Number(one.isMet))) };
}

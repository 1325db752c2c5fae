import { createClumpedIntervals } from '../../estimates/clumped/clumped-intervals.ts';
import { lognormalInterval } from '../../estimates/lognormal-interval.ts';
import { seededRandom } from '../../maths/random.ts';
import { sum } from '../../maths/variance.ts';
import { type Planned, planned, refused, stops } from '../size/plan-problem.ts';
import { beliefOf } from './change-told.ts';
import { type Expectations, expectations } from './expectations.ts';
import {
  checkRehearsal,
  type RehearsalRequest,
  type RehearsalSpecies,
  type RehearsalStratum,
} from './rehearsal-request.ts';
import { type RehearsalSettings, type RehearsedChange, rehearsedChange } from './rehearsed-change.ts';
import { type SimulatedSurvey, surveySimulator } from './simulated-survey.ts';

export interface RehearsedSpecies extends Expectations {
  readonly species: string;
  /** Median over the simulated surveys of the CV they would print; null where none could. */
  readonly medianPrintedCv: number | null;
  /** Median of upper over lower end of the interval they would print; null where none could. */
  readonly medianIntervalFactor: number | null;
  /** Share of the simulated surveys whose printed interval held the truth; null where none was printed. */
  readonly coverage: number | null;
  /** Share of the simulated surveys without a standard error or without an animal. */
  readonly withoutInterval: number;
  /** Empty where there is no earlier estimate. */
  readonly changes: readonly RehearsedChange[];
}

export interface Rehearsal {
  readonly stations: number;
  readonly strata: readonly RehearsalStratum[];
  readonly interval: 'clumped' | 'lognormal';
  readonly changeTest: 'log-ratio' | 'belief';
  readonly surveys: number;
  readonly confidence: number;
  readonly seed: number;
  readonly species: readonly RehearsedSpecies[];
}

/**
 * The report rehearsed: what the planned survey will be able to say, before any fuel is spent.
 *
 * Each planned survey is carried out many times with counts as clumped as expected and estimated as the report would:
 * mean over strata and the chosen interval. A change is told when the interval of the ratio to the earlier estimate
 * leaves out 1. The earlier estimate is itself uncertain: its truth is drawn around it, 25 equal parts of a log-normal,
 * and the change starts from that truth. Ask for the change 1 as well: it shows how often the report would tell a change
 * that is none, which at 95 % should be one in twenty and is more for strongly clumped animals.
 * Assumes random stations, every animal in the belt seen, and the same pattern over strata before and after.
 * A stratum with one planned station leaves every survey without a standard error: that is said.
 * Cost: with the clumped interval some milliseconds for each stratum, species, change and simulated survey.
 */
export function rehearseSurvey(request: RehearsalRequest): Planned<Rehearsal> {
  const problems = checkRehearsal(request);
  if (stops(problems)) return refused(problems);
  const { strata, interval = 'clumped', changeTest = 'log-ratio', confidence = 0.95, seed } = request;
  const surveys = request.surveys ?? 200;
  const settings = { interval, changeTest, surveys, confidence, intervals: createClumpedIntervals() };
  const species = request.species.map((one, i) =>
    // Each species by its own chance, so that adding one does not move the others.
    rehearsedSpecies(strata, one, { ...settings, random: seededRandom((seed + 7919 * i) | 0) }),
  );
  const stations = sum(strata.map((stratum) => stratum.stations));
  return planned({ stations, strata, interval, changeTest, surveys, confidence, seed, species }, problems);
}

function rehearsedSpecies(
  strata: readonly RehearsalStratum[],
  species: RehearsalSpecies,
  settings: RehearsalSettings,
): RehearsedSpecies {
  const expected = expectations(strata, species);
  const simulate = surveySimulator(strata, species, 1);
  const printed = Array.from({ length: settings.surveys }, () =>
    printedBy(simulate(settings.random), strata, settings),
  );
  const held = printed.flatMap((one) => (one === null ? [] : [one]));
  const { densityPerHa } = expected;
  const covers = held.filter(({ low, high }) => low <= densityPerHa && densityPerHa <= high).length;
  const { earlier } = species;
  return {
    species: species.species,
    ...expected,
    medianPrintedCv: median(held.map((one) => one.cv)),
    medianIntervalFactor: median(held.map((one) => one.high / one.low)),
    coverage: held.length === 0 ? null : covers / held.length,
    withoutInterval: 1 - held.length / printed.length,
    changes:
      earlier === null
        ? []
        : species.changes.map((factor) => rehearsedChange(strata, { ...species, earlier }, factor, settings)),
  };
}

function printedBy(
  survey: SimulatedSurvey,
  strata: readonly RehearsalStratum[],
  settings: RehearsalSettings,
) {
  const { value, standardError } = survey.estimate;
  if (value === null || standardError === null || survey.animals === 0) return null;
  const interval =
    settings.interval === 'lognormal'
      ? lognormalInterval(survey.estimate, settings.confidence)
      : beliefOf(survey, strata, settings)!.intervalPerHa;
  return interval === null ? null : { cv: standardError / value, low: interval[0], high: interval[1] };
}

function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** The report of a planned survey, rehearsed: what it will be able to say, and what two more days would change. */

import { seededRandom } from '../maths/random.ts';
import { type RehearsalOption, rehearseOptions } from '../planning/rehearse/more-stations.ts';
import type { RehearsalStratum } from '../planning/rehearse/rehearsal-request.ts';
import { splitLike, toldBetween } from '../planning/rehearse/two-surveys.ts';
import { type PlanProblem, planProblem, stops } from '../planning/size/plan-problem.ts';
import { numberProblems, wholeProblems } from '../planning/size/typed-numbers.ts';
import { Failure } from '../survey/failure.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { Store } from '../survey/store.ts';
import type { Plan, Species } from '../survey/words.ts';
import { type Pilot, readPilot, type UnseenSpecies, unseenProblems } from './pilot.ts';

export interface RehearseRequest {
  readonly survey: string;
  /** A plan of the book; null to split `stations` as the earlier survey was. */
  readonly plan: string | null;
  /** Null for as many as the earlier survey had. */
  readonly stations: number | null;
  readonly species: readonly string[];
  readonly changes: readonly number[];
  readonly stationsPerDay: number | null;
  readonly moreDays: number;
  readonly interval: 'clumped' | 'lognormal';
  readonly surveys: number;
  readonly confidence: number;
  readonly seed: number;
}

export interface RehearseResult {
  readonly survey: string;
  readonly plan: string | null;
  readonly strata: readonly RehearsalStratum[];
  /** The plan first; then with the further days, where the stations of a day are given. */
  readonly options: readonly RehearsalOption[];
  /** For each species, by name: how often two surveys alike would tell a change where there is none, both simulated. */
  readonly falseAlarms: readonly {
    readonly species: string;
    readonly share: number;
    readonly pairs: number;
    /** Of the earlier survey. */
    readonly earlierCv: number;
  }[];
  readonly unseen: readonly UnseenSpecies[];
  readonly problems: readonly PlanProblem[];
  readonly bookSpecies: readonly Species[];
  readonly dataVersion: string;
}

export async function planRehearse(store: Store, request: RehearseRequest): Promise<RehearseResult> {
  const plan = request.plan === null ? null : await planNamed(store, request.plan);
  const pilot = await readPilot(store, request);
  const laid =
    plan === null ? { strata: splitAsked(pilot, request), problems: [] } : strataOfPlan(plan, pilot);
  const problems = [
    ...requestProblems(request),
    ...(plan === null ? tooFew(pilot, request) : []),
    ...pilot.problems,
    ...unseenProblems(pilot),
    ...laid.problems,
  ];
  const base = {
    ...{ survey: pilot.survey, plan: plan?.name ?? null, strata: laid.strata, unseen: pilot.unseen },
    ...{ bookSpecies: pilot.words.species, dataVersion: await store.dataVersion() },
  };
  const nothing = { ...base, options: [], falseAlarms: [] };
  if (stops(problems)) return { ...nothing, problems };
  if (pilot.seen.length === 0) return { ...nothing, problems: [...problems, planProblem('plan-no-species')] };
  const { stationsPerDay, moreDays, interval, surveys, confidence, seed } = request;
  const species = pilot.seen.map(({ species: one, spread }) => ({
    species: one.name,
    ...{ densitiesPerHa: spread.densitiesPerHa, clumpingK: spread.clumpingK },
    earlier: { densityPerHa: spread.densityPerHa, cv: spread.cv, degreesOfFreedom: spread.degreesOfFreedom },
    changes: request.changes,
  }));
  const efforts = stationsPerDay === null ? [] : [{ boatDays: moreDays, stationsPerBoatDay: stationsPerDay }];
  const strata = laid.strata;
  const rehearsed = rehearseOptions({ strata, species, interval, surveys, confidence, seed }, efforts);
  if (rehearsed.value === null) return { ...nothing, problems: [...problems, ...rehearsed.problems] };
  const falseAlarms = species.map((one) => {
    const pairs = { before: pilot.strata, after: strata, species: one, factor: 1, confidence, simulations };
    const { told } = toldBetween(pairs, seededRandom(seed));
    return { species: one.species, share: told, pairs: simulations, earlierCv: one.earlier.cv };
  });
  return { ...base, options: rehearsed.value, falseAlarms, problems: [...problems, ...rehearsed.problems] };
}

/** Pairs of surveys behind a rate of false alarms: good to about 1 in 100. */
const simulations = 1000;

function requestProblems(request: RehearseRequest): readonly PlanProblem[] {
  const { stations, stationsPerDay, moreDays, changes } = request;
  return [
    ...(stations === null ? [] : wholeProblems('stations', stations, { atLeast: 1, atMost: 10_000 })),
    ...(stationsPerDay === null
      ? []
      : numberProblems('stationsPerBoatDay', stationsPerDay, { above: 0, atMost: 100 })),
    ...numberProblems('boatDays', moreDays, { above: 0, atMost: 366 }),
    ...changes.flatMap((change) => numberProblems('change', change, { above: 0, atMost: 100 })),
    ...(changes.includes(1) ? [planProblem('plan-change-is-none')] : []),
    ...wholeProblems('surveys', request.surveys, { atLeast: 10, atMost: 100_000 }),
    ...numberProblems('confidence', request.confidence, { atLeast: 0.5, below: 1 }),
    ...wholeProblems('seed', request.seed, { atLeast: 0, atMost: 2 ** 31 - 1 }),
  ];
}

/** Fewer than two in each stratum would be raised to two, and another survey rehearsed than the one asked for. */
function tooFew({ strata }: Pilot, { stations }: RehearseRequest): readonly PlanProblem[] {
  const needed = 2 * strata.length;
  if (stations === null || stations < 1 || stations >= needed) return [];
  return [planProblem('plan-rehearsal-too-few', { stations, strata: strata.length, needed })];
}

function splitAsked({ strata }: Pilot, { stations }: RehearseRequest): readonly RehearsalStratum[] {
  if (stations === null || strata.length === 0 || !Number.isInteger(stations) || stations < 1) return strata;
  return splitLike(strata, stations);
}

async function planNamed(store: Store, name: string): Promise<Plan> {
  const plans = await store.all('plan');
  const plan = plans.find((one) => one.name === name);
  if (plan !== undefined) return plan;
  const known = plans.map((one) => one.name);
  const nearest = nearestName(name, known) ?? '';
  throw new Failure('unknown-plan-name', { name, nearest, known: known.slice(0, 12).join(', ') });
}

/**
 * Drawn and fixed stations of the plan, replaced ones not counted twice; hand-picked ones have no say in an estimate.
 * Densities come from the earlier survey, so its strata and those of the plan must carry the same names.
 */
function strataOfPlan({ content }: Plan, pilot: Pilot) {
  const known = pilot.strata.map((stratum) => stratum.name);
  const inPlan = content.strata.map((stratum) => stratum.name);
  const counted = content.stations.filter((one) => one.role === 'planned' && one.selection !== 'hand-picked');
  const unknown = inPlan.filter((name) => !known.includes(name));
  const missing = known.filter((name) => !inPlan.includes(name));
  const strata = pilot.strata.map((stratum) => {
    const own = content.strata.find((one) => one.name === stratum.name);
    const stations = counted.filter((one) => one.stratum === stratum.name).length;
    const searchedAreaM2 =
      content.laid === null || content.laid.beltWidthM === null
        ? stratum.searchedAreaM2
        : content.laid.belts * content.laid.beltLengthM * content.laid.beltWidthM;
    return { ...stratum, areaHa: own?.areaHa ?? stratum.areaHa, stations, searchedAreaM2 };
  });
  const problems = [
    ...unknown.map((name) =>
      planProblem('plan-stratum-unknown', {
        ...{ name, nearest: nearestName(name, known) ?? '', known: known.join(', ') },
      }),
    ),
    ...(missing.length === 0
      ? []
      : [planProblem('plan-leaves-strata', { strata: missing.join(', '), survey: pilot.survey })]),
  ];
  return { strata, problems };
}

/** Planned stations over the strata, from an earlier survey of the book or from typed strata. */

import { sampleVariance } from '../maths/variance.ts';
import { type Allocation, allocate } from '../planning/size/allocate.ts';
import type { AllocationGoal, PlannedStratum } from '../planning/size/allocation-check.ts';
import type { AllocationRule } from '../planning/size/allocation-shares.ts';
import { pilotFactor } from '../planning/size/pilot-factor.ts';
import { type PlanProblem, planProblem, stops } from '../planning/size/plan-problem.ts';
import { type SharedAllocation, sharedAllocation } from '../planning/size/shared-allocation.ts';
import { numberProblems } from '../planning/size/typed-numbers.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { labelOf, type Pilot, type PilotSpecies, readPilot } from './pilot.ts';

export interface TypedStratum extends PlannedStratum {
  /** Mean density, where it was typed. */
  readonly meanPerHa: number | null;
}

export interface AllocateRequest {
  readonly survey: string | null;
  readonly typed: readonly TypedStratum[];
  readonly species: readonly string[];
  readonly goal: AllocationGoal;
  readonly rule: AllocationRule;
  readonly minimum: number;
  readonly costs: readonly { readonly stratum: string; readonly cost: number }[];
  /** With several species: the CV wanted for each, which they share the shortfall from. */
  readonly targetCv: number;
}

export interface AllocatedRow {
  readonly name: string;
  readonly areaHa: number | null;
  /** Of the earlier survey; null for typed strata. */
  readonly pilotStations: number | null;
  readonly meanPerHa: number | null;
  readonly standardDeviation: number | null;
  /** What the rule alone gives; null where several species share one split. */
  readonly exact: number | null;
  readonly stations: number;
  readonly isRaisedToMinimum: boolean;
  readonly cost: number | null;
}

export interface AllocateResult {
  readonly survey: string | null;
  readonly rows: readonly AllocatedRow[];
  readonly stations: number;
  readonly cost: number | null;
  readonly rule: AllocationRule | 'shared';
  /** Of each species under this split: the CV with the spread as seen, and with the pilot's factor. */
  readonly species: readonly {
    readonly species: string;
    readonly cv: number;
    readonly cvAssured: number;
    readonly cvByArea: number | null;
  }[];
  readonly problems: readonly PlanProblem[];
  readonly bookSpecies: readonly Species[];
  readonly dataVersion: string | null;
}

export async function planAllocate(store: Store | null, request: AllocateRequest): Promise<AllocateResult> {
  const { survey, typed } = request;
  const isOpen = (survey === null) === (typed.length === 0);
  const pilot =
    store === null || survey === null ? null : await readPilot(store, { survey, species: request.species });
  const base = {
    ...{ survey: pilot?.survey ?? null, bookSpecies: pilot?.words.species ?? [], rule: request.rule },
    dataVersion: store === null ? null : await store.dataVersion(),
  };
  const nothing = { ...base, rows: [], stations: 0, cost: null, species: [] };
  const strata = pilot === null ? typed : strataOf(pilot);
  const problems = [
    ...(isOpen ? [planProblem('plan-source-unclear')] : []),
    ...(pilot?.problems ?? []),
    ...request.costs.flatMap(({ cost }) => numberProblems('costPerStation', cost, { above: 0 })),
    ...unknownStrata(request, strata),
  ];
  if (stops(problems)) return { ...nothing, problems };
  if (pilot !== null && pilot.seen.length === 0 && request.rule !== 'proportional')
    return { ...nothing, problems: [...problems, planProblem('plan-no-species')] };
  const isSeveral = pilot !== null && pilot.seen.length > 1 && request.rule !== 'proportional';
  const said = isSeveral ? [...problems, ...saidOfSeveral(pilot, request)] : problems;
  return isSeveral && 'stations' in request.goal
    ? sharedBetween(request, pilot, { nothing, problems: said, stations: request.goal.stations })
    : forOne(request, pilot, { nothing, problems: said, strata });
}

/** What a split of several species cannot do. */
function saidOfSeveral({ seen }: Pilot, { goal, rule }: AllocateRequest): readonly PlanProblem[] {
  if ('budget' in goal)
    return [planProblem('plan-first-species-decides', { species: labelOf(seen[0]!.species) })];
  return rule === 'cost-optimal' ? [planProblem('plan-shared-ignores-costs')] : [];
}

type Started = {
  readonly nothing: Omit<AllocateResult, 'problems'>;
  readonly problems: readonly PlanProblem[];
};

/** Strata as the first species sees them; with several and a budget the first decides. */
function strataOf(pilot: Pilot): readonly TypedStratum[] {
  const first = pilot.seen[0];
  return pilot.strata.map((stratum, h) => ({
    ...{ name: stratum.name, areaHa: stratum.areaHa, costPerStation: null },
    ...spreadIn(first, h),
    mostStations: Math.max(1, Math.floor((stratum.areaHa * 10_000) / stratum.searchedAreaM2)),
  }));
}

function spreadIn(species: PilotSpecies | undefined, h: number) {
  const values = species?.strata[h]?.valuesPerHa;
  if (species === undefined || values === undefined) return { standardDeviation: null, meanPerHa: null };
  const variance = sampleVariance(values);
  return {
    standardDeviation: variance === null ? null : Math.sqrt(variance),
    meanPerHa: species.spread.densitiesPerHa[h] ?? null,
  };
}

function unknownStrata({ costs }: AllocateRequest, strata: readonly TypedStratum[]): readonly PlanProblem[] {
  const known = strata.map((stratum) => stratum.name);
  return costs
    .filter((cost) => !known.some((name) => isSame(name, cost.stratum)))
    .map(({ stratum }) =>
      planProblem('plan-stratum-unknown', {
        ...{ name: stratum, nearest: nearestName(stratum, known) ?? '', known: known.join(', ') },
      }),
    );
}

function isSame(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

function withCosts(strata: readonly TypedStratum[], { costs }: AllocateRequest): readonly TypedStratum[] {
  return strata.map((stratum) => ({
    ...stratum,
    costPerStation: costs.find((cost) => isSame(cost.stratum, stratum.name))?.cost ?? stratum.costPerStation,
  }));
}

function forOne(
  request: AllocateRequest,
  pilot: Pilot | null,
  { nothing, problems, strata: bare }: Started & { readonly strata: readonly TypedStratum[] },
): AllocateResult {
  const strata = withCosts(bare, request);
  const { rule, goal, minimum } = request;
  const split = allocate({ strata, rule, goal, minimum });
  if (split.value === null) return { ...nothing, problems: [...problems, ...split.problems] };
  const allocation = split.value;
  const rows = allocation.strata.map((row, h): AllocatedRow => ({ ...rowOf(strata[h]!, pilot, h), ...row }));
  return {
    ...nothing,
    ...{ rows, stations: allocation.stations, cost: allocation.cost },
    species: (pilot?.seen ?? []).map((one) => precisionOf(one, rows)),
    problems: [...problems, ...split.problems, ...thinStrata(rows)],
    ...(pilot === null ? { species: typedPrecision(strata, allocation) } : {}),
  };
}

function rowOf(stratum: TypedStratum, pilot: Pilot | null, h: number) {
  const { areaHa, meanPerHa, standardDeviation } = stratum;
  return { areaHa, meanPerHa, standardDeviation, pilotStations: pilot?.strata[h]?.stations ?? null };
}

function sharedBetween(
  request: AllocateRequest,
  pilot: Pilot,
  { nothing, problems, stations }: Started & { readonly stations: number },
): AllocateResult {
  const { targetCv, minimum } = request;
  const split = sharedAllocation({
    ...{ strata: pilot.strata, stations, minimum },
    species: pilot.seen.map((one) => ({
      ...{ species: labelOf(one.species), meanPerHa: one.spread.densityPerHa, targetCv },
      standardDeviations: one.strata.map(({ valuesPerHa }) => Math.sqrt(sampleVariance(valuesPerHa) ?? 0)),
    })),
  });
  if (split.value === null) return { ...nothing, problems: [...problems, ...split.problems] };
  const shared: SharedAllocation = split.value;
  const strata = withCosts(strataOf(pilot), request);
  const rows = shared.stations.map((row, h): AllocatedRow => {
    const cost = strata[h]!.costPerStation;
    return {
      ...{ ...rowOf(strata[h]!, pilot, h), meanPerHa: null, standardDeviation: null, exact: null },
      ...{ name: row.name, stations: row.stations, isRaisedToMinimum: false },
      cost: cost === null ? null : cost * row.stations,
    };
  });
  const costs = rows.flatMap((row) => row.cost ?? []);
  return {
    ...nothing,
    ...{ rule: 'shared', rows, stations },
    cost: costs.length === rows.length ? costs.reduce((a, b) => a + b, 0) : null,
    species: pilot.seen.map((one) => precisionOf(one, rows)),
    problems: [...problems, ...split.problems, ...thinStrata(rows)],
  };
}

function precisionOf(one: PilotSpecies, rows: readonly AllocatedRow[]) {
  const spreads = one.strata.map(
    ({ areaHa, valuesPerHa }) => areaHa * Math.sqrt(sampleVariance(valuesPerHa) ?? 0),
  );
  const whole = one.strata.reduce((total, stratum) => total + stratum.areaHa, 0);
  const all = rows.reduce((total, row) => total + row.stations, 0);
  const cvWith = (stationsIn: (h: number) => number) =>
    Math.sqrt(spreads.reduce((total, spread, h) => total + spread ** 2 / stationsIn(h), 0)) /
    whole /
    one.spread.densityPerHa;
  const cv = cvWith((h) => rows[h]!.stations);
  const factor = pilotFactor({ stations: one.spread.degreesOfFreedom + 1 }).value ?? 1;
  const cvByArea = cvWith((h) => (all * one.strata[h]!.areaHa) / whole);
  return { species: one.species.name, cv, cvAssured: cv * factor, cvByArea };
}

/** Where every mean was typed, the CV they give together; typed values are taken as they stand. */
function typedPrecision(strata: readonly TypedStratum[], { varianceOfMean }: Allocation) {
  const whole = strata.reduce((total, stratum) => total + (stratum.areaHa ?? 0), 0);
  const means = strata.map((stratum) => stratum.meanPerHa);
  if (varianceOfMean === null || means.some((mean) => mean === null)) return [];
  const mean = strata.reduce(
    (total, { areaHa, meanPerHa }) => total + ((areaHa ?? 0) * meanPerHa!) / whole,
    0,
  );
  if (!(mean > 0)) return [];
  const cv = Math.sqrt(varianceOfMean) / mean;
  return [{ species: 'typed values', cv, cvAssured: cv, cvByArea: null }];
}

/** Below three stations a spread is hardly known: name the stratum and the one most alike, to be merged before the draw. */
function thinStrata(rows: readonly AllocatedRow[]): readonly PlanProblem[] {
  return rows
    .filter((row) => row.stations < 3)
    .map((row) => {
      const others = rows.filter((other) => other !== row);
      const unlike = (other: AllocatedRow) =>
        Math.abs(
          (other.meanPerHa ?? other.standardDeviation ?? 0) - (row.meanPerHa ?? row.standardDeviation ?? 0),
        );
      const other = others.toSorted((a, b) => unlike(a) - unlike(b))[0]?.name ?? '';
      return planProblem('plan-few-in-stratum', { stratum: row.name, stations: row.stations, other });
    });
}

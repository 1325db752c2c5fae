/** How many stations and spares each stratum gets: as typed, or a total divided. */

import { allocate } from '../../planning/size/allocate.ts';
import { type Planned, planned, planProblem, refused, stops } from '../../planning/size/plan-problem.ts';
import { wholeProblems } from '../../planning/size/typed-numbers.ts';
import type { Store } from '../../survey/store.ts';
import { planAllocate } from '../plan-allocate.ts';
import type { DividedTotal, PlanDrawRequest, StratumNumber } from './draw-request.ts';
import { type PlanGround, unmapped } from './plan-ground.ts';

export interface StationsAsked {
  readonly strata: readonly { readonly name: string; readonly stations: number; readonly spares: number }[];
  /** How a total was divided, in words; null where every number was typed. */
  readonly allocation: string | null;
}

export async function stationsPerStratum(
  store: Store,
  request: PlanDrawRequest,
  ground: PlanGround,
): Promise<Planned<StationsAsked>> {
  const { stations, total, strata } = request;
  if (stations.length > 0 === (total !== null)) return refused([planProblem('plan-stations-unclear')]);
  const names = total === null ? stations.map(({ stratum }) => stratum) : strataOf(strata, ground);
  const without = unmapped([...names, ...request.spares.map(({ stratum }) => stratum)], ground);
  if (stops(without)) return refused(without);
  if (total === null) {
    const wrong = stations.flatMap(({ n }) => wholeProblems('stations', n, { atLeast: 0, atMost: 20_000 }));
    if (wrong.length > 0) return refused(wrong);
    return planned({ strata: withSpares(stations, request), allocation: null });
  }
  const divided = await divide(store, total, { names, ground });
  if (divided.value === null) return refused(divided.problems);
  const { n, words } = divided.value;
  return planned({ strata: withSpares(n, request), allocation: words }, divided.problems);
}

function strataOf(asked: readonly string[], ground: PlanGround): readonly string[] {
  return asked.length > 0 ? asked : [...ground.strata.keys()];
}

function withSpares(numbers: readonly StratumNumber[], { spares, sparesEach }: PlanDrawRequest) {
  return numbers.map(({ stratum, n }) => ({
    ...{ name: stratum, stations: n },
    // Half as many again: on a rough coast one station in three cannot be worked (common practice).
    spares: spares.find((one) => one.stratum === stratum)?.n ?? sparesEach ?? Math.ceil(n / 2),
  }));
}

async function divide(
  store: Store,
  total: DividedTotal,
  over: { readonly names: readonly string[]; readonly ground: PlanGround },
): Promise<Planned<{ readonly n: readonly StratumNumber[]; readonly words: string }>> {
  const goal = { stations: total.stations };
  if (over.names.length === 0)
    return refused([planProblem('plan-no-map', { strata: 'any stratum', mapped: '' })]);
  if (total.rule === 'proportional') {
    const strata = over.names.map((name) => ({
      ...{ name, areaHa: over.ground.strata.get(name)!.mapped.ground.leftHa },
      ...{ standardDeviation: null, costPerStation: null, mostStations: null },
    }));
    const split = allocate({ strata, rule: 'proportional', goal, minimum: total.minimum });
    if (split.value === null) return refused(split.problems);
    const n = split.value.strata.map(({ name, stations }) => ({ stratum: name, n: stations }));
    const words = `${total.stations} stations divided by area, at least ${total.minimum} in each stratum`;
    return planned({ n, words }, split.problems);
  }
  if (total.pilot === null) {
    return refused([planProblem('plan-spread-missing', { strata: over.names.join(', ') })]);
  }
  const split = await planAllocate(store, {
    ...{ survey: total.pilot, typed: [], species: total.species, goal, rule: 'neyman' },
    ...{ minimum: total.minimum, costs: [], targetCv: 0.2 },
  });
  if (stops(split.problems)) return refused(split.problems);
  const without = unmapped(
    split.rows.map(({ name }) => name),
    over.ground,
  );
  if (stops(without)) return refused(without);
  const n = split.rows.map(({ name, stations }) => ({ stratum: name, n: stations }));
  const species = total.species.length === 0 ? 'all its species' : total.species.join(', ');
  const words = `${total.stations} stations divided by area and spread of ${species} in ${total.pilot}, at least ${total.minimum} in each stratum`;
  return planned({ n, words }, split.problems);
}

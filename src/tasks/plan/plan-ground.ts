/** The strata of the book as ground to draw from and to lay belts on: their map with every mask taken off. */

import { type GroundIndex, groundIndex } from '../../planning/ground/inside.ts';
import type { MappedStratum } from '../../planning/ground/mapped-strata.ts';
import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import { Failure } from '../../survey/failure.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import type { Store } from '../../survey/store.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import { measuredStrata } from '../maps/book-ground.ts';

export interface GroundStratum {
  readonly mapped: MappedStratum;
  /** What is left of it when the masks are off. */
  readonly index: GroundIndex;
  /** As it was drawn, masks and all. */
  readonly wholeIndex: GroundIndex | null;
  readonly frozenOn: string | null;
}

export interface PlanGround {
  readonly areas: readonly MapAreaRecord[];
  /** The strata that have a map and something left of it, by name. */
  readonly strata: ReadonlyMap<string, GroundStratum>;
  /** Every stratum of the book, mapped or not. */
  readonly names: readonly string[];
}

export async function readPlanGround(store: Store): Promise<PlanGround> {
  const areas = await store.all('mapArea');
  const strata = new Map<string, GroundStratum>();
  for (const mapped of measuredStrata(areas)) {
    const index = groundIndex(mapped.ground.area);
    const record = areas.find(({ role, name }) => role === 'stratum' && name === mapped.name);
    if (index === null) continue;
    const wholeIndex = groundIndex(mapped.area);
    strata.set(mapped.name, { mapped, index, wholeIndex, frozenOn: record?.content.frozenOn ?? null });
  }
  const named = (await store.all('stratum')).map(({ name }) => name);
  return { areas, strata, names: [...new Set([...named, ...strata.keys()])] };
}

/** A name nobody knows is a Failure; a stratum without a map is a problem with all of them. */
export function unmapped(names: readonly string[], ground: PlanGround): readonly PlanProblem[] {
  for (const name of names) {
    if (ground.names.includes(name)) continue;
    const nearest = nearestName(name, ground.names) ?? '';
    throw new Failure('unknown-stratum-name', {
      ...{ name, nearest, known: ground.names.slice(0, 12).join(', ') },
    });
  }
  const without = names.filter((name) => !ground.strata.has(name));
  if (without.length === 0) return [];
  const mapped = [...ground.strata.keys()].join(', ');
  return [planProblem('plan-no-map', { strata: without.join(', '), mapped })];
}

/** What checks of places look at besides the survey: the map of the book, its plans, and what was picked by hand before. */

import { borderDistanceM } from '../../planning/ground/border-distance.ts';
import { type GroundIndex, groundIndex } from '../../planning/ground/inside.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { Store } from '../../survey/store.ts';
import type { MapAreaRecord, Plan } from '../../survey/words.ts';
import { decimalsOf, type Spot, visitedSpot } from './positions.ts';

/** A station that was marked hand-picked in another survey, or in a plan. */
export interface HandPicked {
  /** Where it was said: the survey, or "plan X". */
  readonly where: string;
  readonly surveyId: string | null;
  readonly code: string;
  readonly spot: Spot;
}

export interface CheckGround {
  readonly maps: readonly MapAreaRecord[];
  readonly plans: readonly Plan[];
  readonly handPicked: readonly HandPicked[];
}

export const noGround: CheckGround = { maps: [], plans: [], handPicked: [] };

export async function readCheckGround(store: Store): Promise<CheckGround> {
  const [maps, plans] = await Promise.all([store.all('mapArea'), store.all('plan')]);
  const surveys = new Map((await store.all('survey')).map(({ id, name }) => [id, name]));
  const stations = (await store.all('station')).filter(({ selection }) => selection === 'hand-picked');
  const visited = stations.flatMap((station): readonly HandPicked[] => {
    const spot = visitedSpot(station);
    const where = surveys.get(station.surveyId);
    if (spot === null || where === undefined) return [];
    return [{ where, surveyId: station.surveyId, code: station.code, spot }];
  });
  const planned = plans.flatMap(({ name, content }) =>
    content.stations
      .filter(({ selection }) => selection === 'hand-picked')
      .map(({ code, position }) => ({ where: `plan ${name}`, surveyId: null, code, spot: position })),
  );
  return { maps, plans, handPicked: [...planned, ...visited] };
}

/** The area of a role and name on the map, ready for questions; null where nobody drew it. */
export function mappedArea(
  { maps }: CheckGround,
  role: MapAreaRecord['role'],
  name: string | null,
): MapAreaRecord | null {
  return maps.find((one) => one.role === role && one.name === name) ?? null;
}

export function isInArea(area: MapAreaRecord, spot: Spot): boolean {
  let index = indexes.get(area);
  if (index === undefined) {
    index = groundIndex(area.content.area);
    indexes.set(area, index);
  }
  return index?.contains(spot) ?? false;
}

/** Made once per area: a check asks for every station. */
const indexes = new WeakMap<MapAreaRecord, GroundIndex | null>();

export function metresToBorder(area: MapAreaRecord, spot: Spot): number {
  return borderDistanceM(area.content.area, spot) ?? 0;
}

export interface InPlan {
  readonly plan: string;
  readonly station: PlannedStation;
}

/** The stations planned for a survey by code, of the latest plan that has them; null when it has no plan. */
export function plannedFor(survey: string, ground: CheckGround): ReadonlyMap<string, InPlan> | null {
  const known = plannedBySurvey.get(ground)?.get(survey);
  if (known !== undefined) return known;
  const found = findPlanned(survey, ground);
  plannedBySurvey.set(ground, (plannedBySurvey.get(ground) ?? new Map()).set(survey, found));
  return found;
}

/** Worked out once: two checks ask for every station. */
const plannedBySurvey = new WeakMap<CheckGround, Map<string, ReadonlyMap<string, InPlan> | null>>();

/** A plan that names no survey is for the one of its own name. */
function findPlanned(survey: string, { plans }: CheckGround): ReadonlyMap<string, InPlan> | null {
  const its = plans.filter(({ name, content }) => (content.survey ?? name) === survey);
  if (its.length === 0) return null;
  const inOrder = its.toSorted((a, b) => (a.content.drawnOn < b.content.drawnOn ? -1 : 1));
  return new Map(
    inOrder.flatMap(({ name, content }) =>
      content.stations.map((station) => [station.code, { plan: name, station }]),
    ),
  );
}

/**
 * The survey with the planned positions of its plan where the rows carry none, written as finely as the survey writes
 * its positions: a copy of the plan can then be told from a reading.
 */
export function withPlannedPositions(inHand: SurveyInHand, ground: CheckGround): SurveyInHand {
  const planned = plannedFor(inHand.survey.name, ground);
  if (planned === null) return inHand;
  const decimals = decimalsOf(inHand.stations);
  const rounded = (degrees: number) => Number(degrees.toFixed(decimals));
  const stations = inHand.stations.map((station) => {
    const position = planned.get(station.record.code)?.station.position;
    if (position === undefined || station.record.plannedLatitudeDeg !== null) return station;
    const plannedLatitudeDeg = rounded(position.latitudeDeg);
    const plannedLongitudeDeg = rounded(position.longitudeDeg);
    return { ...station, record: { ...station.record, plannedLatitudeDeg, plannedLongitudeDeg } };
  });
  return { ...inHand, stations };
}

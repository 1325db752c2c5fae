/** Waypoints and tracks of a receiver, matched to the stations of a plan or a survey; written into the book only when asked. */

import { type GpxContent, type GpxPoint, readGpx } from '../../exchange/maps/gpx.ts';
import {
  closestApproach,
  matchWaypoints,
  type PlannedStation,
  type WaypointMatch,
} from '../../exchange/maps/match-waypoints.ts';
import { distanceBetweenM } from '../../planning/ground/geodesic.ts';
import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import type { Position } from '../../survey/map-area.ts';
import type { Problem } from '../../survey/message.ts';
import type { Change } from '../../survey/store.ts';
import type { Plan, Station } from '../../survey/words.ts';
import { mapProblems } from '../maps/map-problems.ts';
import { readBookWords, surveysAsked } from '../take-in-hand.ts';
import { type PlanTools, planNamed } from './plan-named.ts';
import { pointsAsSent } from './points-as-sent.ts';
import { farAway, sentNotMarked, strangers } from './waypoint-questions.ts';
import { waypointNames } from './waypoints-out.ts';

export interface WaypointsInRequest {
  readonly file: string;
  readonly text: string;
  /** One of the two, or both: the plan has the positions, the survey the rows to write into. */
  readonly plan: string | null;
  readonly survey: string | null;
  /** Nearer than this a waypoint without the right name is taken for a station, in metres. */
  readonly nearM: number;
  readonly letters: number;
  readonly write: boolean;
  /** Positions that are in the book already give way to the waypoint. */
  readonly overwrite: boolean;
}

export interface WaypointRow {
  readonly station: string;
  readonly waypoint: string | null;
  /** sent: the point of the plan as the receiver was given it, which nobody marked. */
  readonly by: 'name' | 'nearness' | 'sent' | null;
  readonly position: Position | null;
  readonly distanceM: number | null;
  readonly time: string | null;
  /** How near the tracks came, and when by the receiver; null without a track. */
  readonly trackDistanceM: number | null;
  readonly trackTime: string | null;
  readonly written: boolean;
}

export interface WaypointsIn {
  readonly rows: readonly WaypointRow[];
  readonly waypoints: number;
  readonly trackPoints: number;
  readonly written: number;
  /** The survey that was written into. */
  readonly survey: string | null;
  /** Of the reading of the file. */
  readonly problems: readonly Problem[];
  readonly planProblems: readonly PlanProblem[];
  readonly dataVersion: string;
}

export async function waypointsIn(request: WaypointsInRequest, tools: PlanTools): Promise<WaypointsIn> {
  const { store } = tools;
  const { value: gpx, findings } = readGpx(request.text);
  const problems = mapProblems(findings, request.file);
  const plan = request.plan === null ? null : await planNamed(store, request.plan);
  const survey = await surveyOf(request, plan, tools);
  const planned = plannedStations(plan, survey?.stations ?? [], request);
  const segments = gpx.tracks.flatMap((track) => track.segments);
  const trackPoints = segments.reduce((sum, segment) => sum + segment.length, 0);
  // Without a plan the places may be those that were visited: a point there is no copy of a plan.
  const asSent = pointsAsSent(
    planned.filter(({ isPlan }) => isPlan),
    gpx.waypoints,
  );
  const marks = gpx.waypoints.filter((waypoint) => !asSent.some((one) => one.waypoint === waypoint));
  const matches = matchWaypoints(planned, marks, request.nearM);
  const unmarked = asSent.filter(({ code }) => matches.stationsWithout.includes(code));
  const shown = [...matches.matches, ...unmarked.map((one) => ({ ...one, by: 'sent' as const }))];
  const isStopped = problems.some(({ severity }) => severity === 'stop') || isEmpty(gpx, trackPoints);
  const chosen = isStopped ? { changes: [], problems: [] } : writing(matches.matches, survey, request);
  const written = request.write && chosen.changes.length > 0;
  if (written) await apply(chosen.changes, { request, tools });
  const codes = new Set(written ? chosen.changes.map(({ after }) => (after as Station).code) : []);
  return {
    rows: planned.map((station) =>
      rowOf(station, { match: shown.find(({ code }) => code === station.code), segments, codes }),
    ),
    ...{ waypoints: gpx.waypoints.length, trackPoints, written: codes.size },
    survey: survey?.name ?? null,
    problems,
    planProblems: [
      ...(isEmpty(gpx, trackPoints) && problems.length === 0 ? [planProblem('waypoint-none')] : []),
      ...farAway(matches.matches, request.nearM),
      ...sentNotMarked(unmarked),
      ...strangers(matches.waypointsWithout, planned, sparesOf(plan, request)),
      ...(request.write ? chosen.problems : []),
    ],
    dataVersion: await store.dataVersion(),
  };
}

interface SurveyToWrite {
  readonly name: string;
  readonly stations: readonly Station[];
}

/** The survey asked for; else the one of the plan, which may not be in the book yet. */
async function surveyOf(
  request: WaypointsInRequest,
  plan: Plan | null,
  { store }: PlanTools,
): Promise<SurveyToWrite | null> {
  const name = request.survey ?? plan?.content.survey ?? null;
  if (name === null) return null;
  const words = await readBookWords(store);
  if (request.survey === null && !request.write && !words.surveys.some((one) => one.name === name))
    return null;
  const survey = surveysAsked(words, name)[0]!;
  const { stations } = await store.surveyRecords(survey.id, { lengths: false });
  return { name, stations };
}

interface KnownPlace extends PlannedStation {
  /** Whether it is where the plan put the station, and not where somebody was. */
  readonly isPlan: boolean;
}

/** Planned positions; without a plan those in the survey, planned before visited. */
function plannedStations(
  plan: Plan | null,
  stations: readonly Station[],
  { letters }: WaypointsInRequest,
): readonly KnownPlace[] {
  if (plan !== null) {
    const names = waypointNames(plan.content.stations, { names: 'short', letters });
    return plan.content.stations
      .filter(({ role }) => role === 'planned')
      .map(({ code, position }) => ({ code, shortName: names.get(code)!, position, isPlan: true }));
  }
  return stations.flatMap(({ code, waypoint, ...station }) => {
    const latitudeDeg = station.plannedLatitudeDeg ?? station.latitudeDeg;
    const longitudeDeg = station.plannedLongitudeDeg ?? station.longitudeDeg;
    if (latitudeDeg === null || longitudeDeg === null) return [];
    const isPlan = station.plannedLatitudeDeg !== null && station.plannedLongitudeDeg !== null;
    return [{ code, shortName: waypoint, position: { latitudeDeg, longitudeDeg }, isPlan }];
  });
}

/** Spares of the plan: their own waypoints come back from the receiver and are no strangers. */
function sparesOf(plan: Plan | null, { letters }: WaypointsInRequest): readonly PlannedStation[] {
  if (plan === null) return [];
  const names = waypointNames(plan.content.stations, { names: 'short', letters });
  return plan.content.stations
    .filter(({ role }) => role !== 'planned')
    .map(({ code, position }) => ({ code, shortName: names.get(code)!, position }));
}

function isEmpty({ waypoints }: GpxContent, trackPoints: number): boolean {
  return waypoints.length + trackPoints === 0;
}

/** What would be written: into rows of the survey without a position; a waypoint far from its station is a question first. */
function writing(
  matches: readonly WaypointMatch[],
  survey: SurveyToWrite | null,
  { nearM, overwrite }: WaypointsInRequest,
): { readonly changes: readonly Change[]; readonly problems: readonly PlanProblem[] } {
  const problems: PlanProblem[] = [];
  const changes: Change[] = [];
  const missing: string[] = [];
  for (const { code, waypoint, distanceM } of matches) {
    if (distanceM > nearM) continue;
    const station = survey?.stations.find((one) => one.code === code);
    if (station === undefined) {
      missing.push(code);
      continue;
    }
    const { latitudeDeg, longitudeDeg } = station;
    if (latitudeDeg !== null && longitudeDeg !== null && !overwrite) {
      const apartM = distanceBetweenM({ latitudeDeg, longitudeDeg }, waypoint.position);
      problems.push(planProblem('waypoint-station-has-position', { code, distanceM: Math.round(apartM) }));
      continue;
    }
    const after = {
      ...station,
      ...waypoint.position,
      positionSource: 'gps' as const,
      waypoint: waypoint.name,
    };
    changes.push({ kind: 'station', recordId: station.id, after });
  }
  const codes = missing.join(', ');
  if (codes !== '')
    problems.push(
      planProblem('waypoint-station-not-entered', { codes, survey: survey?.name ?? 'the survey' }),
    );
  return { changes, problems };
}

async function apply(
  changes: readonly Change[],
  { request, tools }: { readonly request: WaypointsInRequest; readonly tools: PlanTools },
): Promise<void> {
  const why = `arrival positions from waypoints of ${request.file}`;
  await tools.store.apply(changes, { ...tools.signature, why }, tools.newId);
}

function rowOf(
  station: PlannedStation,
  found: {
    readonly match: (Omit<WaypointMatch, 'by'> & Pick<WaypointRow, 'by'>) | undefined;
    readonly segments: readonly (readonly GpxPoint[])[];
    readonly codes: ReadonlySet<string>;
  },
): WaypointRow {
  const { match, segments, codes } = found;
  const track = closestApproach(segments, station.position);
  return {
    ...{ station: station.code, waypoint: match?.waypoint.name ?? null, by: match?.by ?? null },
    ...{ position: match?.waypoint.position ?? null, distanceM: match?.distanceM ?? null },
    time: match?.waypoint.time ?? null,
    ...{ trackDistanceM: track?.distanceM ?? null, trackTime: track?.point.time ?? null },
    written: codes.has(station.code),
  };
}

/** The stations of a plan for a handheld or a chart plotter: points with names it accepts, and the list as a route. */

import { type GpxPoint, writeGpx } from '../../exchange/maps/gpx.ts';
import { shortNames } from '../../exchange/maps/short-names.ts';
import { bearing } from '../../report/plan-lines.ts';
import { counted } from '../../survey/counted.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { Store } from '../../survey/store.ts';
import { planNamed } from './plan-named.ts';

export interface WaypointsOutRequest {
  readonly plan: string;
  readonly names: 'short' | 'code';
  /** Letters the receiver takes. */
  readonly letters: number;
  readonly route: boolean;
  readonly spares: boolean;
}

export interface WaypointOut {
  readonly name: string;
  readonly station: string;
  readonly stratum: string;
  readonly role: PlannedStation['role'];
  readonly selection: PlannedStation['selection'];
  readonly position: PlannedStation['position'];
}

export interface WaypointsOut {
  readonly gpx: string;
  readonly rows: readonly WaypointOut[];
  readonly dataVersion: string;
}

export async function waypointsOut(store: Store, request: WaypointsOutRequest): Promise<WaypointsOut> {
  const { name, content } = await planNamed(store, request.plan);
  const names = waypointNames(content.stations, request);
  const stations = content.stations.filter(
    ({ role }) => role === 'planned' || (role === 'spare' && request.spares),
  );
  const pointOf = (station: PlannedStation): GpxPoint => ({
    ...{
      position: station.position,
      name: names.get(station.code)!,
      description: descriptionOf(station),
      time: null,
    },
  });
  const planned = stations.filter(({ role }) => role === 'planned');
  const gpx = writeGpx({
    waypoints: stations.map(pointOf),
    routes: request.route ? [{ name, points: planned.map(pointOf) }] : [],
    tracks: [],
  });
  const rows = stations.map(({ code, stratum, role, selection, position }) => ({
    ...{ name: names.get(code)!, station: code, stratum, role, selection, position },
  }));
  return { gpx, rows, dataVersion: await store.dataVersion() };
}

/** Of every station of the plan, so that a spare keeps its name when it is called up. */
export function waypointNames(
  stations: readonly PlannedStation[],
  { names, letters }: Pick<WaypointsOutRequest, 'names' | 'letters'>,
): ReadonlyMap<string, string> {
  const codes = stations.map(({ code }) => code);
  return names === 'code' ? new Map(codes.map((code) => [code, code])) : shortNames(codes, letters);
}

function descriptionOf(station: PlannedStation): string {
  const { code, stratum, selection, role, replaces, belts } = station;
  const course = bearing(station, 'magneticBearingDeg');
  return [
    ...[code, stratum, selection],
    ...(role === 'spare' ? ['spare'] : []),
    ...(replaces === null ? [] : [`in place of ${replaces}`]),
    ...(belts.length === 0 ? [] : [`${counted(belts.length, 'belt')}, compass ${course}`]),
  ].join(', ');
}

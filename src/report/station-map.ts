/**
 * Where the stations are. Colour and shape say the stratum, a ring says the zone. Stations that fall on
 * one point (because positions are rounded) stand side by side around it.
 */

import type { StationWithTransects } from '../survey/observation.ts';
import { colours } from './colours.ts';
import { mapFurniture } from './map-furniture.ts';
import { type MapSheet, mapSheet, type Point } from './map-projection.ts';
import { mark } from './palette.ts';
import { type PositionDetail, positionAtDetail } from './position-detail.ts';
import { drawing, element, textWidth, write } from './svg.ts';

export interface MapFrame {
  readonly width: number;
  readonly detail: PositionDetail;
  readonly inWords: string;
  /** In the order of their marks. */
  readonly strata: readonly string[];
  readonly zones: readonly string[];
}

export interface StationMap {
  /** Null where no position may be shown, or none is known. */
  readonly drawing: string | null;
  readonly withoutPosition: readonly string[];
}

interface Spot {
  readonly station: StationWithTransects;
  readonly x: number;
  readonly y: number;
}

const apart = 14;

export function stationMap(stations: readonly StationWithTransects[], frame: MapFrame): StationMap {
  const withoutPosition = stations.filter((station) => pointOf(station, 'exact') === null);
  const names = withoutPosition.map((station) => station.record.code);
  const points = stations.flatMap((station) => pointOf(station, frame.detail) ?? []);
  if (points.length === 0) return { drawing: null, withoutPosition: names };
  const sheet = mapSheet(points, { width: frame.width, maximumHeight: frame.width < 500 ? 380 : 440 });
  const spots = spread(stations, sheet, frame.detail);
  const children = [
    ...mapFurniture(sheet, frame.width),
    ...spots.flatMap((spot) => drawSpot(spot, frame)),
    ...labels(spots, { width: frame.width, height: sheet.height }),
    ...legend(frame, sheet.height + 24),
  ];
  const height = sheet.height + 24 + legendHeight(frame);
  return {
    drawing: drawing({ width: frame.width, height }, frame.inWords, children),
    withoutPosition: names,
  };
}

function pointOf(station: StationWithTransects, detail: PositionDetail): Point | null {
  const { latitudeDeg, longitudeDeg } = station.record;
  if (latitudeDeg === null || longitudeDeg === null) return null;
  const latitude = positionAtDetail(latitudeDeg, detail);
  const longitude = positionAtDetail(longitudeDeg, detail);
  return latitude === null || longitude === null ? null : { latitudeDeg: latitude, longitudeDeg: longitude };
}

/** Stations of one point in a small block around it, in the order of their codes. */
function spread(stations: readonly StationWithTransects[], sheet: MapSheet, detail: PositionDetail): Spot[] {
  const groups = new Map<string, { at: { x: number; y: number }; members: StationWithTransects[] }>();
  for (const station of stations) {
    const point = pointOf(station, detail);
    if (point === null) continue;
    const at = sheet.place(point);
    const key = `${at.x.toFixed(1)} ${at.y.toFixed(1)}`;
    groups.set(key, { at, members: [...(groups.get(key)?.members ?? []), station] });
  }
  return [...groups.values()].flatMap(({ at, members }) => {
    const columns = Math.ceil(Math.sqrt(members.length));
    const rows = Math.ceil(members.length / columns);
    return members.map((station, i) => ({
      station,
      x: at.x + ((i % columns) - (columns - 1) / 2) * apart,
      y: at.y + (Math.floor(i / columns) - (rows - 1) / 2) * apart,
    }));
  });
}

function drawSpot({ station, x, y }: Spot, frame: MapFrame): string[] {
  const drawn = mark(frame.strata.indexOf(station.stratum.name), x, y);
  const zone = station.record.zone === null ? -1 : frame.zones.indexOf(station.record.zone);
  return zone < 0 ? [drawn] : [ring(zone, x, y), drawn];
}

/** One ring for the first zone, dashed for the second, dotted for the third. */
function ring(zone: number, x: number, y: number): string {
  const dashes = [null, '4 2', '1.5 2'][zone % 3]!;
  const attributes = { cx: x, cy: y, r: 8.5, fill: 'none', stroke: colours.ink, 'stroke-width': 1.3 };
  return element('circle', { ...attributes, 'stroke-dasharray': dashes });
}

/** Station codes where there is room for them; a code that would cover a mark or another code is not written. */
function labels(
  spots: readonly Spot[],
  sheet: { readonly width: number; readonly height: number },
): string[] {
  const taken: Frame[] = spots.map(({ x, y }) => ({ left: x - 8, right: x + 8, top: y - 8, bottom: y + 8 }));
  const children: string[] = [];
  for (const { station, x, y } of spots) {
    const width = textWidth(station.record.code, 11) + 2;
    for (const [left, top] of [
      [x + 10, y - 6],
      [x - 10 - width, y - 6],
      [x - width / 2, y - 22],
      [x - width / 2, y + 10],
    ] as const) {
      const place: Frame = { left, right: left + width, top, bottom: top + 12 };
      if (left < 2 || place.right > sheet.width - 2 || top < 2 || place.bottom > sheet.height - 2) continue;
      if (taken.some((other) => meets(place, other))) continue;
      taken.push(place);
      children.push(write(left + 1, top + 10, station.record.code, { 'font-size': 11 }));
      break;
    }
  }
  return children;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function meets(a: Frame, b: Frame): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function legendEntries(
  frame: MapFrame,
): readonly { readonly words: string; readonly sign: (x: number, y: number) => string }[] {
  return [
    ...frame.strata.map((words, i) => ({ words, sign: (x: number, y: number) => mark(i, x, y) })),
    ...frame.zones.map((words, i) => ({
      words: `ring: ${words}`,
      sign: (x: number, y: number) => ring(i, x, y),
    })),
  ];
}

function legendHeight(frame: MapFrame): number {
  return Math.ceil(legendEntries(frame).length / columnsOf(frame)) * 22 + 4;
}

function columnsOf(frame: MapFrame): number {
  const longest = Math.max(...legendEntries(frame).map((entry) => textWidth(entry.words, 12)));
  return Math.max(1, Math.min(4, Math.floor(frame.width / (longest + 40))));
}

function legend(frame: MapFrame, top: number): string[] {
  const columns = columnsOf(frame);
  return legendEntries(frame).flatMap(({ words, sign }, i) => {
    const x = 10 + (i % columns) * (frame.width / columns);
    const y = top + 8 + Math.floor(i / columns) * 22;
    return [sign(x, y), write(x + 15, y + 4, words, { 'font-size': 12 })];
  });
}

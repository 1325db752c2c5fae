/**
 * Where the stations are. Colour and shape say the stratum, a ring says the zone. Stations that fall on
 * one point (because positions are rounded) stand side by side around it.
 */

import * as Plot from '@observablehq/plot';
import type { MapArea } from '../survey/map-area.ts';
import type { StationWithTransects } from '../survey/observation.ts';
import type { Language } from './catalogue/language.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';
import { colours } from './colours.ts';
import { borderMarks } from './map-borders.ts';
import { type CodedSpot, codeMarks } from './map-codes.ts';
import { mapFurniture } from './map-furniture.ts';
import { type MapSheet, mapSheet, type Point } from './map-projection.ts';
import { seriesColours, seriesSymbols } from './palette.ts';
import { type PlotDocument, plotFigure } from './plot-figure.ts';
import { type PositionDetail, positionAtDetail } from './position-detail.ts';
import { textWidth } from './svg.ts';

export interface MapFrame {
  readonly width: number;
  readonly detail: PositionDetail;
  readonly inWords: string;
  /** In the order of their marks. */
  readonly strata: readonly string[];
  readonly zones: readonly string[];
  /** Of the strata; none where the book has no map. */
  readonly borders?: readonly MapArea[];
  readonly language?: Language;
  readonly document: PlotDocument;
}

export interface StationMap {
  /** Null where no position may be shown, or none is known. */
  readonly drawing: string | null;
  readonly withoutPosition: readonly string[];
}

interface Spot {
  readonly station: StationWithTransects;
  readonly eastKm: number;
  readonly northKm: number;
}

function coded({ station, eastKm, northKm }: Spot): CodedSpot {
  return { code: station.record.code, eastKm, northKm };
}

/** In the units of the drawing. */
const apart = 19;
const roomLeft = 16;
const roomBelow = 44;

export function stationMap(stations: readonly StationWithTransects[], frame: MapFrame): StationMap {
  const withoutPosition = stations.filter((station) => pointOf(station, 'exact') === null);
  const names = withoutPosition.map((station) => station.record.code);
  const points = stations.flatMap((station) => pointOf(station, frame.detail) ?? []);
  if (points.length === 0) return { drawing: null, withoutPosition: names };
  const sheet = mapSheet(points, {
    width: frame.width - roomLeft,
    maximumHeight: frame.width < 500 ? 380 : 440,
  });
  const spots = spread(stations, sheet, frame.detail);
  const legend = legendMarks(frame);
  const marginBottom = roomBelow + legend.height;
  const options: Plot.PlotOptions = {
    width: frame.width,
    height: sheet.height + marginBottom,
    margin: 0,
    marginLeft: roomLeft,
    marginBottom,
    x: { domain: [-sheet.halfEastKm, sheet.halfEastKm], axis: null },
    y: { domain: [-sheet.halfNorthKm, sheet.halfNorthKm], axis: null },
    marks: [
      ...mapFurniture(sheet),
      ...borderMarks(frame.borders ?? [], sheet),
      ...stationMarks(spots, frame),
      codeMarks(spots.map(coded), sheet),
      ...legend.marks,
    ],
  };
  return { drawing: plotFigure(options, frame), withoutPosition: names };
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
  const groups = new Map<string, { at: Omit<Spot, 'station'>; members: StationWithTransects[] }>();
  for (const station of stations) {
    const point = pointOf(station, detail);
    if (point === null) continue;
    const at = sheet.place(point);
    const key = `${at.eastKm.toFixed(3)} ${at.northKm.toFixed(3)}`;
    groups.set(key, { at, members: [...(groups.get(key)?.members ?? []), station] });
  }
  const apartKm = apart / sheet.unitsPerKm;
  return [...groups.values()].flatMap(({ at, members }) => {
    const columns = Math.ceil(Math.sqrt(members.length));
    const rows = Math.ceil(members.length / columns);
    return members.map((station, i) => ({
      station,
      eastKm: at.eastKm + ((i % columns) - (columns - 1) / 2) * apartKm,
      northKm: at.northKm - (Math.floor(i / columns) - (rows - 1) / 2) * apartKm,
    }));
  });
}

/** A ring for each zone, then the sign of the stratum, edged in ink. */
function stationMarks(spots: readonly Spot[], frame: MapFrame): Plot.Markish[] {
  const place = { x: 'eastKm', y: 'northKm' };
  return [
    ...frame.zones.map((zone, i) =>
      Plot.dot(
        spots.filter(({ station }) => station.record.zone === zone),
        { ...place, ...ringSign(i) },
      ),
    ),
    ...frame.strata.map((stratum, i) =>
      Plot.dot(
        spots.filter(({ station }) => station.stratum.name === stratum),
        { ...place, ...stratumSign(i) },
      ),
    ),
  ];
}

function stratumSign(index: number) {
  const fill = seriesColours[index % seriesColours.length]!;
  const symbol = seriesSymbols[index % seriesSymbols.length]!;
  return { symbol, fill, stroke: colours.ink, strokeWidth: 1, r: 5 };
}

/** One ring for the first zone, dashed for the second, dotted for the third. */
function ringSign(index: number) {
  const dashes = ['none', '4 2', '1.5 2'][index % 3]!;
  return { fill: 'none', stroke: colours.ink, strokeWidth: 1.3, strokeDasharray: dashes, r: 8.5 };
}

/** Signs and their words in columns below the map. */
function legendMarks({ strata, zones, width, language = 'en' }: MapFrame): {
  marks: Plot.Markish[];
  height: number;
} {
  const entries = [
    ...strata.map((words, i) => ({ words, sign: stratumSign(i) })),
    ...zones.map((zone, i) => ({ words: reportPhrases(language).where.ring(zone), sign: ringSign(i) })),
  ];
  const longest = Math.max(...entries.map((entry) => textWidth(entry.words, 12)));
  const columns = Math.max(1, Math.min(4, Math.floor(width / (longest + 40))));
  const corner = { frameAnchor: 'bottom-left' } as const;
  const marks = entries.flatMap(({ words, sign }, i) => {
    const dx = 10 - roomLeft + (i % columns) * (width / columns);
    const dy = roomBelow + 10 + Math.floor(i / columns) * 22;
    return [
      Plot.dot([0], { ...corner, ...sign, dx, dy }),
      Plot.text([words], {
        ...corner,
        text: (word: string) => word,
        dx: dx + 15,
        dy,
        textAnchor: 'start',
        lineAnchor: 'middle',
      }),
    ];
  });
  return { marks, height: Math.ceil(entries.length / columns) * 22 + 4 };
}

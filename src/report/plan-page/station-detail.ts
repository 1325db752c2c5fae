/** One station from above: its belts to scale, the border of its ground, north up. */

import { shorterWayDeg } from '../../planning/ground/plane.ts';
import type { MapArea, Position } from '../../survey/map-area.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { colours } from '../colours.ts';
import { formatShort } from '../numbers.ts';
import { bearing } from '../plan-lines.ts';
import { drawing, element, line, write } from '../svg.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

const width = 208;
const height = 176;
const mapHeight = 156;
const metresPerDegree = 111_200;

/** Null for a station without belts. */
export function stationDetail(
  station: PlannedStation,
  ground: {
    /** Strata and masks near it. */
    readonly areas: readonly { readonly area: MapArea; readonly isMask: boolean }[];
    readonly beltWidthM: number | null;
  },
  language: Language,
): string | null {
  const ends = station.belts.flatMap(({ start, end }) => [start, end]);
  if (ends.length === 0) return null;
  const sheet = sheetOf(ends);
  const borders = ground.areas.flatMap(({ area, isMask }) => borderLines(area, sheet, isMask));
  const thick = Math.max(2.4, (ground.beltWidthM ?? 0) * sheet.perMetre);
  const belts = station.belts.flatMap(({ number, start, end }) => {
    const [from, to] = [sheet.place(start), sheet.place(end)];
    return [
      line(from.x, from.y, to.x, to.y, { 'stroke-width': thick }),
      number === 1
        ? element('circle', {
            cx: from.x,
            cy: from.y,
            r: 4,
            fill: colours.paper,
            stroke: colours.ink,
            'stroke-width': 1.5,
          })
        : '',
    ];
  });
  const barM = roundM(60 / sheet.perMetre);
  const bar = barM * sheet.perMetre;
  const words = planPagePhrases(language).belts;
  const bearings = bearing(station, 'trueBearingDeg', language);
  const inWords = words.detailInWords(station.code, String(station.belts.length), bearings);
  return drawing({ width, height }, inWords, [
    element('rect', {
      // A whole unit inside the drawing: a column of half pixels would cut the line off.
      x: 1,
      y: 1,
      width: width - 2,
      height: mapHeight - 2,
      fill: 'none',
      stroke: colours.rule,
    }),
    ...borders,
    ...belts.filter((mark) => mark !== ''),
    line(width - 12, 24, width - 12, 8, { 'stroke-width': 1.2 }),
    element('path', {
      d: `M${width - 15} 13 L${width - 12} 7 L${width - 9} 13`,
      fill: 'none',
      stroke: colours.ink,
    }),
    write(width - 12, 36, words.north, { 'text-anchor': 'middle', 'font-size': 10 }),
    line(0, mapHeight + 12, bar, mapHeight + 12, { 'stroke-width': 2 }),
    write(bar + 6, mapHeight + 16, `${formatShort(barM, language)} m`, { 'font-size': 11 }),
  ]);
}

interface DetailSheet {
  readonly perMetre: number;
  readonly place: (position: Position) => Place;
}

/** The belts fill most of the sheet; half as much again around them shows what lies beside. */
function sheetOf(ends: readonly Position[]): DetailSheet {
  const first = ends[0]!;
  const eastM = (position: Position) =>
    shorterWayDeg(position.longitudeDeg - first.longitudeDeg) *
    metresPerDegree *
    Math.cos((first.latitudeDeg * Math.PI) / 180);
  const northM = (position: Position) => (position.latitudeDeg - first.latitudeDeg) * metresPerDegree;
  const [easts, norths] = [ends.map(eastM), ends.map(northM)];
  const spanOf = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  const middleOf = (values: readonly number[]) => (Math.max(...values) + Math.min(...values)) / 2;
  const perMetre = Math.min(
    (width - 50) / Math.max(40, spanOf(easts)),
    (mapHeight - 36) / Math.max(40, spanOf(norths)),
  );
  return {
    perMetre,
    place: (position) => ({
      x: width / 2 + (eastM(position) - middleOf(easts)) * perMetre,
      y: mapHeight / 2 - (northM(position) - middleOf(norths)) * perMetre,
    }),
  };
}

/** The pieces of border that cross the sheet, cut at its edge. */
function borderLines(area: MapArea, { place }: DetailSheet, isMask: boolean): string[] {
  const look = { stroke: colours.softInk, 'stroke-width': 1.2, 'stroke-dasharray': isMask ? '2 3' : '6 3' };
  return area.parts
    .flatMap((part) => [part.outer, ...part.holes])
    .flatMap((ring) =>
      ring.flatMap((corner, i) => {
        const cut = cutToSheet(place(corner), place(ring[(i + 1) % ring.length]!));
        return cut === null ? [] : [line(cut[0].x, cut[0].y, cut[1].x, cut[1].y, look)];
      }),
    );
}

/** Liang and Barsky 1984 (from memory): the part of a line inside the frame. */
function cutToSheet(from: Place, to: Place): readonly [Place, Place] | null {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [enter, leave] = [0, 1];
  const sides = [
    [-dx, from.x - 1],
    [dx, width - 1 - from.x],
    [-dy, from.y - 1],
    [dy, mapHeight - 1 - from.y],
  ] as const;
  for (const [along, room] of sides) {
    if (along === 0 && room < 0) return null;
    if (along < 0) enter = Math.max(enter, room / along);
    if (along > 0) leave = Math.min(leave, room / along);
  }
  if (enter >= leave) return null;
  const at = (share: number) => ({ x: from.x + share * dx, y: from.y + share * dy });
  return [at(enter), at(leave)];
}

function roundM(metres: number): number {
  const power = 10 ** Math.floor(Math.log10(metres));
  return [5, 2, 1].map((digit) => digit * power).find((one) => one <= metres) ?? power;
}

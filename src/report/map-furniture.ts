/** What every map carries: its edge, degrees and minutes, a scale bar in round kilometres, north. */

import * as Plot from '@observablehq/plot';
import { colours } from './colours.ts';
import { degreesInWords, type MapSheet } from './map-projection.ts';
import { formatShort } from './numbers.ts';

export function mapFurniture(sheet: MapSheet): Plot.Markish[] {
  return [...degrees(sheet), Plot.frame({ stroke: colours.ink }), ...scaleBar(sheet), ...north()];
}

/** Lines at even minutes; not so near an edge that their words would be cut. */
function degrees({ place, unitsPerKm, ...sheet }: MapSheet): Plot.Markish[] {
  const middle = { latitudeDeg: sheet.parallelsDeg[0] ?? 0, longitudeDeg: sheet.meridiansDeg[0] ?? 0 };
  const parallels = sheet.parallelsDeg
    .map((latitudeDeg) => ({ latitudeDeg, northKm: place({ ...middle, latitudeDeg }).northKm }))
    .filter(({ northKm }) => Math.abs(northKm) < sheet.halfNorthKm - 34 / unitsPerKm);
  const meridians = sheet.meridiansDeg
    .map((longitudeDeg) => ({ longitudeDeg, eastKm: place({ ...middle, longitudeDeg }).eastKm }))
    .filter(({ eastKm }) => Math.abs(eastKm) < sheet.halfEastKm - 34 / unitsPerKm);
  const thin = { stroke: colours.rule, strokeWidth: 0.6 };
  const quiet = { fontSize: 11, fill: colours.softInk };
  return [
    Plot.ruleY(parallels, { ...thin, y: 'northKm' }),
    Plot.ruleX(meridians, { ...thin, x: 'eastKm' }),
    Plot.text(parallels, {
      ...quiet,
      y: 'northKm',
      text: (each) => degreesInWords(each.latitudeDeg, 'latitude'),
      frameAnchor: 'left',
      textAnchor: 'middle',
      rotate: -90,
      dx: -8,
    }),
    Plot.text(meridians, {
      ...quiet,
      x: 'eastKm',
      text: (each) => degreesInWords(each.longitudeDeg, 'longitude'),
      frameAnchor: 'bottom',
      lineAnchor: 'top',
      dy: 4,
    }),
  ];
}

/** A bar of 1, 2 or 5 times a power of ten kilometres, about a sixth of the sheet, below the map and on its scale. */
function scaleBar({ halfEastKm, halfNorthKm, unitsPerKm }: MapSheet): Plot.Markish[] {
  const km = roundKm(110 / unitsPerKm);
  const x2 = halfEastKm - 1 / unitsPerKm;
  const x1 = x2 - km;
  const y = -halfNorthKm - 30 / unitsPerKm;
  const endKm = 4 / unitsPerKm;
  return [
    Plot.ruleY([y], { x1, x2, strokeWidth: 2 }),
    Plot.ruleX([x1, x2], { y1: y - endKm, y2: y + endKm, strokeWidth: 2 }),
    Plot.text([km < 1 ? `${formatShort(km * 1000)} m` : `${formatShort(km)} km`], {
      x: [x1],
      y: [y],
      text: (words: string) => words,
      textAnchor: 'end',
      dx: -8,
      fontSize: 12,
    }),
  ];
}

function roundKm(km: number): number {
  const power = Number(`1e${Math.floor(Math.log10(km))}`);
  for (const digit of [5, 2, 1]) if (digit * power <= km) return digit * power;
  return power;
}

function north(): Plot.Markish[] {
  const corner = { frameAnchor: 'top-right', dx: -20 } as const;
  return [
    Plot.vector([0], { ...corner, dy: 20, length: 20, anchor: 'middle', strokeWidth: 1.5 }),
    Plot.text(['N'], {
      ...corner,
      textAnchor: 'middle',
      dy: 40,
      text: (word: string) => word,
      fontSize: 13,
      fontWeight: 600,
    }),
  ];
}

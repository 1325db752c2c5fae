/** What every map carries: its edge, degrees and minutes, a scale bar in round kilometres, north. */

import { colours } from './colours.ts';
import { degreesInWords, type MapSheet } from './map-projection.ts';
import { formatShort } from './numbers.ts';
import { element, line, write } from './svg.ts';

export function mapFurniture(sheet: MapSheet, width: number): string[] {
  const middle = sheet.place({
    latitudeDeg: sheet.parallelsDeg[0] ?? 0,
    longitudeDeg: sheet.meridiansDeg[0] ?? 0,
  });
  const thin = { stroke: colours.rule, 'stroke-width': 0.6 };
  const quiet = { 'font-size': 11, fill: colours.softInk };
  const parallels = sheet.parallelsDeg.flatMap((latitudeDeg) => {
    const { y } = sheet.place({ latitudeDeg, longitudeDeg: sheet.meridiansDeg[0] ?? 0 });
    const words = write(4, y - 3, degreesInWords(latitudeDeg, 'latitude'), quiet);
    return y < 16 || y > sheet.height - 2 ? [] : [line(0, y, width, y, thin), words];
  });
  const meridians = sheet.meridiansDeg.flatMap((longitudeDeg) => {
    const { x } = sheet.place({ latitudeDeg: sheet.parallelsDeg[0] ?? middle.y, longitudeDeg });
    const label = write(x, sheet.height + 13, degreesInWords(longitudeDeg, 'longitude'), {
      ...quiet,
      'text-anchor': 'middle',
    });
    return x < 34 || x > width - 34 ? [] : [line(x, 0, x, sheet.height, thin), label];
  });
  const edge = element('rect', {
    x: 0.5,
    y: 0.5,
    width: width - 1,
    height: sheet.height - 1,
    fill: 'none',
    stroke: colours.ink,
  });
  return [...parallels, ...meridians, edge, ...scaleBar(sheet, width), ...northArrow(width)];
}

/** A bar of 1, 2 or 5 times a power of ten kilometres, about a quarter of the sheet. */
function scaleBar(sheet: MapSheet, width: number): string[] {
  const km = roundKm(110 / sheet.unitsPerKm);
  const length = km * sheet.unitsPerKm;
  const y = sheet.height - 14;
  const end = width - 16;
  const start = end - length;
  const heavy = { 'stroke-width': 2 };
  return [
    element('rect', {
      x: start - 8,
      y: y - 22,
      width: length + 16,
      height: 30,
      fill: colours.paper,
      class: 'paper',
    }),
    line(start, y, end, y, heavy),
    line(start, y - 4, start, y + 4, heavy),
    line(end, y - 4, end, y + 4, heavy),
    write((start + end) / 2, y - 7, km < 1 ? `${formatShort(km * 1000)} m` : `${formatShort(km)} km`, {
      'text-anchor': 'middle',
      'font-size': 12,
    }),
  ];
}

function roundKm(km: number): number {
  const power = Number(`1e${Math.floor(Math.log10(km))}`);
  for (const digit of [5, 2, 1]) if (digit * power <= km) return digit * power;
  return power;
}

function northArrow(width: number): string[] {
  const x = width - 20;
  return [
    element('path', { d: `M${x},10l6,20l-6,-5l-6,5Z`, fill: colours.ink }),
    write(x, 44, 'N', { 'text-anchor': 'middle', 'font-weight': 600 }),
  ];
}

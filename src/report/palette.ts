/**
 * The colours of strata and the signs that double them. Nothing is told by colour alone:
 * a stratum has a shape as well, so that a black-and-white copy says the same.
 */

import { colours } from './colours.ts';
import { element } from './svg.ts';

/** Okabe and Ito (2008), in their order, without black: safe for the usual colour blindnesses. */
const seriesColours = ['#e69f00', '#56b4e9', '#009e73', '#f0e442', '#0072b2', '#d55e00', '#cc79a7'] as const;

const shapes: readonly ((x: number, y: number, r: number) => string)[] = [
  (x, y, r) => `M${p(x - r, y)}A${p(r, r)} 0 1 0 ${p(x + r, y)}A${p(r, r)} 0 1 0 ${p(x - r, y)}Z`,
  (x, y, r) => polygon(x, y, r * 1.25, 4, 45),
  (x, y, r) => polygon(x, y, r * 1.3, 3, -90),
  (x, y, r) => polygon(x, y, r * 1.3, 4, 0),
  (x, y, r) => polygon(x, y, r * 1.3, 3, 90),
  (x, y, r) => polygon(x, y, r * 1.15, 6, 0),
  (x, y, r) => polygon(x, y, r * 1.2, 5, -90),
];

/** The mark of the nth stratum: its colour and its shape, edged in ink. */
export function mark(index: number, x: number, y: number, radius = 5): string {
  return element('path', {
    d: shapes[index % shapes.length]!(x, y, radius),
    fill: seriesColours[index % seriesColours.length]!,
    stroke: colours.ink,
    'stroke-width': 1,
  });
}

function polygon(x: number, y: number, radius: number, corners: number, startDeg: number): string {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = ((startDeg + (360 / corners) * i) * Math.PI) / 180;
    return p(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  });
  return `M${points.join('L')}Z`;
}

function p(x: number, y: number): string {
  return `${Math.round(x * 10) / 10 + 0},${Math.round(y * 10) / 10 + 0}`;
}

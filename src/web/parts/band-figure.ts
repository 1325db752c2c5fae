/**
 * The fading band of one answer as SVG text: dark where the density is likely, a tick at the estimate, hair lines at the
 * ends of the interval. None recorded: it fades from zero to the bound. Presentation attributes only.
 */

import { colours } from '../../report/colours.ts';
import { inkStops } from '../../report/ink-stops.ts';
import { drawing, element, line, write } from '../../report/svg.ts';
import type { DensityRow } from '../../tasks/sheets/answer-schemas.ts';
import type { BandAxis } from './band-axis.ts';

export interface BandSize {
  readonly width: number;
  readonly axis: BandAxis;
  /** Names the ink of this drawing; unlike that of any other drawing on the page. */
  readonly name: string;
  /** What it shows, for those who cannot see it. */
  readonly inWords: string;
}

const height = 34;
const bandTop = 7;
const bandHeight = 20;
/** Room for the outermost numbers of the axis. */
const margin = 14;

type Banded = Pick<DensityRow, 'densityPerHa' | 'intervalPerHa' | 'scatteredBoundPerHa' | 'belief'>;

/** A row without an answer has no band: its reason stands in its place. */
export function bandFigure(row: Banded, { width, axis, name, inWords }: BandSize): string {
  const x = placeOn(axis, width);
  const children = axis.ticksPerHa.map((perHa) =>
    line(x(perHa), 0, x(perHa), height, { stroke: colours.rule, 'stroke-width': 0.6, 'stroke-opacity': 0.6 }),
  );
  if (row.belief !== null) {
    children.push(
      gradient(row.belief, axis, name),
      element('rect', {
        x: x(0),
        y: bandTop,
        width: x(axis.highestPerHa) - x(0),
        height: bandHeight,
        fill: `url(#${name})`,
      }),
    );
  }
  children.push(...hairLines(row).map((hair) => upright(x(hair.perHa), 2, hair.attributes)));
  if (row.densityPerHa !== null) {
    const at = x(row.densityPerHa);
    children.push(upright(at, 5, { stroke: colours.paper, 'stroke-width': 5 }));
    children.push(upright(at, 5, { 'stroke-width': 2.4 }));
  }
  return drawing({ width, height }, inWords, children);
}

/** The numbers of the axis, drawn once for all bands below it. */
export function bandAxisFigure(
  axis: BandAxis,
  width: number,
  words: { readonly inWords: string; readonly number: (perHa: number) => string },
): string {
  const x = placeOn(axis, width);
  const children = [line(x(0), 21, x(axis.highestPerHa), 21)];
  let free = Number.NEGATIVE_INFINITY;
  for (const perHa of axis.ticksPerHa) {
    const text = words.number(perHa);
    const half = text.length * 3.6;
    children.push(line(x(perHa), 17, x(perHa), 24));
    if (x(perHa) - half < free) continue;
    children.push(write(x(perHa), 12, text, { 'text-anchor': 'middle' }));
    free = x(perHa) + half + 4;
  }
  return drawing({ width, height: 24 }, words.inWords, children);
}

function placeOn(axis: BandAxis, width: number): (perHa: number) => number {
  return (perHa) => margin + axis.at(perHa) * Math.max(1, width - 2 * margin);
}

function upright(x: number, by: number, attributes: Readonly<Record<string, string | number>>): string {
  return line(x, bandTop - by, x, bandTop + bandHeight + by, attributes);
}

function hairLines({ intervalPerHa, scatteredBoundPerHa }: Banded) {
  const ends = (intervalPerHa ?? []).filter((perHa) => perHa > 0);
  const lines = ends.map((perHa) => ({ perHa, attributes: { 'stroke-width': 0.9 } as Attributes }));
  if (scatteredBoundPerHa !== null) {
    lines.push({
      perHa: scatteredBoundPerHa,
      attributes: { 'stroke-width': 0.9, 'stroke-dasharray': '2 2' },
    });
  }
  return lines;
}

type Attributes = Readonly<Record<string, string | number>>;

function gradient(belief: NonNullable<DensityRow['belief']>, axis: BandAxis, name: string): string {
  const stops = inkStops(belief, axis).map(({ at, ink }) =>
    element('stop', { offset: at.toFixed(3), 'stop-color': colours.ink, 'stop-opacity': ink.toFixed(3) }),
  );
  return element('linearGradient', { id: name }, stops);
}

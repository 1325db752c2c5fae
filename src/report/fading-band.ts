/**
 * The fading band: an estimate drawn as what is believed about it. Dark where the density is likely,
 * fading outward; a tick at the estimate, hair lines at the ends of the interval. Where nothing can be
 * said, the reason stands in the row instead.
 */

import * as Plot from '@observablehq/plot';
import type { DensityAnswer } from '../estimates/answers.ts';
import {
  type BandLayout,
  type NumberedRow,
  phoneLayout,
  reasonMark,
  sheetLayout,
  wordMarks,
} from './band-words.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import type { Language } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { type DensityAxis, densityAxis, densityScale } from './density-axis.ts';
import { darkestPerHa, inkStops } from './ink-stops.ts';
import { formatShort } from './numbers.ts';
import { type PlotDocument, plotFigure } from './plot-figure.ts';
import { element } from './svg.ts';

export interface BandRow {
  readonly label: string;
  /** A second, quieter line: the scientific name, or the stratum. */
  readonly note: string;
  readonly answer: DensityAnswer;
}

export interface BandFrame {
  readonly width: number;
  /** Begins the names inside this drawing; unlike that of any other drawing on the page. */
  readonly name: string;
  readonly language: Language;
  /** What the figure shows, for those who cannot see it. */
  readonly inWords: string;
  readonly document: PlotDocument;
}

const axisHeight = 42;

/** One band per row on one axis of animals per hectare. */
export function fadingBands(rows: readonly BandRow[], frame: BandFrame): string {
  const axis = axisOf(rows.map((row) => row.answer));
  const layout = frame.width < 500 ? phoneLayout : sheetLayout;
  const numbered = rows.map((row, index) => ({ ...row, index }));
  const options: Plot.PlotOptions = {
    width: frame.width,
    height: rows.length * layout.rowHeight + axisHeight,
    marginTop: 0,
    marginBottom: axisHeight,
    marginLeft: layout.marginLeft,
    marginRight: layout.marginRight,
    x: { ...densityScale(axis), axis: null },
    y: { type: 'band', domain: numbered.map((row) => row.index), padding: 0, axis: null },
    marks: [
      ...axisMarks(axis, frame.language),
      ...bandMarks(
        numbered.filter((row) => row.answer.densityPerHa !== null),
        { axis, layout, frame },
      ),
      ...wordMarks(numbered, layout, frame.language),
      reasonMark(
        numbered.filter((row) => row.answer.densityPerHa === null),
        { layout, frame },
      ),
    ],
  };
  const definitions = numbered.map((row) => gradient(row, axis, frame.name)).join('');
  return plotFigure(options, { ...frame, definitions });
}

/** Said only where it can be seen: an estimate from fewer than five animals, left of what the counts speak for most. */
export function fewAnimalsExplained(rows: readonly BandRow[], language: Language = 'en'): string {
  return rows.some(({ answer }) => standsBelowDarkest(answer))
    ? densityPhrases(language).tickLeftOfDarkest
    : '';
}

/** An estimate from fewer than five animals, below what the counts speak for most. */
export function standsBelowDarkest({ animals, belief, densityPerHa }: DensityAnswer): boolean {
  return animals > 0 && animals < 5 && belief !== null && darkestPerHa(belief) > 1.1 * (densityPerHa ?? 0);
}

export function axisOf(answers: readonly DensityAnswer[]): DensityAxis {
  let highestPerHa = 0;
  let largestAreaM2 = 0;
  for (const answer of answers) {
    if (answer.densityPerHa === null) continue;
    const { scatteredBoundPerHa, densityPerHa, intervalPerHa } = answer;
    highestPerHa = Math.max(highestPerHa, intervalPerHa?.[1] ?? 0, scatteredBoundPerHa ?? 0, densityPerHa);
    largestAreaM2 = Math.max(largestAreaM2, answer.searchedAreaM2);
  }
  const animalPerHa = largestAreaM2 > 0 ? 10_000 / largestAreaM2 : 1;
  return densityAxis({ highestPerHa: Math.max(highestPerHa * 1.15, animalPerHa * 10), animalPerHa });
}

function axisMarks(axis: DensityAxis, language: Language): Plot.Markish[] {
  const even = formatShort(axis.evenBelowPerHa, language);
  const label = densityPhrases(language).axis(even);
  return [
    Plot.axisX(axis.ticksPerHa, {
      tickFormat: (perHa: number) => formatShort(perHa, language),
      tickSize: 0,
      label,
      labelAnchor: 'center',
      labelOffset: axisHeight - 8,
      labelArrow: 'none',
      fontSize: 12,
    }),
    Plot.frame({ anchor: 'bottom', stroke: colours.ink }),
  ];
}

interface Drawn {
  readonly axis: DensityAxis;
  readonly layout: BandLayout;
  readonly frame: BandFrame;
}

/** Grid, ink, hair lines and the tick of the estimate. */
function bandMarks(rows: readonly NumberedRow[], { axis, layout, frame }: Drawn): Plot.Markish[] {
  const inked = rows.filter((row) => row.answer.belief !== null);
  const grid = rows.flatMap(({ index }) => axis.ticksPerHa.map((perHa) => ({ index, perHa })));
  const ends = rows.flatMap(({ index, answer }) => hairLines(answer).map((end) => ({ index, ...end })));
  const estimates = rows.map(({ index, answer }) => ({ index, perHa: answer.densityPerHa }));
  const reaching = (by: number) => ({
    x: 'perHa',
    y: 'index',
    insetTop: layout.bandTop - by,
    insetBottom: layout.rowHeight - layout.bandTop - layout.bandHeight - by,
  });
  const hair = { ...reaching(2), stroke: colours.ink, strokeWidth: 0.8 };
  return [
    Plot.tickX(grid, { ...reaching(layout.narrow ? 4 : 10), stroke: colours.rule, strokeWidth: 0.6 }),
    Plot.barX(inked, {
      ...reaching(0),
      x: null,
      x1: 0,
      x2: axis.highestPerHa,
      fill: ({ index }: NumberedRow) => `url(#${frame.name}-${index + 1})`,
    }),
    Plot.tickX(
      ends.filter((end) => !end.scattered),
      hair,
    ),
    Plot.tickX(
      ends.filter((end) => end.scattered),
      { ...hair, strokeDasharray: '2 2' },
    ),
    Plot.tickX(estimates, {
      ...reaching(5),
      stroke: colours.paper,
      strokeWidth: 5,
      className: 'paper-line',
    }),
    Plot.tickX(estimates, { ...reaching(5), stroke: colours.ink, strokeWidth: 2.4 }),
  ];
}

function hairLines(answer: DensityAnswer): { readonly perHa: number; readonly scattered: boolean }[] {
  const lines = (answer.intervalPerHa ?? [])
    .filter((end) => end > 0)
    .map((perHa) => ({ perHa, scattered: false }));
  const scattered = answer.scatteredBoundPerHa;
  return scattered === null ? lines : [...lines, { perHa: scattered, scattered: true }];
}

function gradient({ answer, index }: NumberedRow, axis: DensityAxis, name: string): string {
  if (answer.belief === null) return '';
  const inks = inkStops(answer.belief, axis);
  const blank = (i: number) => (inks[i]?.ink ?? 0) < 0.0005;
  const needed = inks.filter((_, i) => !(blank(i - 1) && blank(i) && blank(i + 1)));
  const stops = needed.map(({ at, ink }) =>
    element('stop', { offset: at.toFixed(3), 'stop-color': colours.ink, 'stop-opacity': ink.toFixed(3) }),
  );
  return `${element('linearGradient', { id: `${name}-${index + 1}` }, stops)}\n`;
}

/**
 * The fading band: an estimate drawn as what is believed about it. Dark where the density is likely,
 * fading outward; a tick at the estimate, hair lines at the ends of the interval. Where nothing can be
 * said, the reason stands in the row instead.
 */

import type { DensityAnswer } from '../estimates/answers.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { type DensityAxis, densityAxis } from './density-axis.ts';
import { answerInBrief } from './density-words.ts';
import { inkStops } from './ink-stops.ts';
import { formatShort } from './numbers.ts';
import { drawing, element, line, wrapWords, write } from './svg.ts';

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
}

interface Layout {
  readonly narrow: boolean;
  readonly left: number;
  readonly right: number;
  readonly rowHeight: number;
  readonly bandTop: number;
}

const bandHeight = 18;
const axisHeight = 46;

/** One band per row on one axis of animals per hectare. */
export function fadingBands(rows: readonly BandRow[], frame: BandFrame): string {
  const axis = axisOf(rows.map((row) => row.answer));
  const layout = layoutOf(frame.width);
  const bottom = rows.length * layout.rowHeight + 4;
  const children = [
    ...gridLines(axis, layout, rows.length),
    ...axisLines(axis, layout, bottom),
    ...rows.flatMap((row, index) => drawRow(row, index, { axis, layout, frame })),
  ];
  return drawing({ width: frame.width, height: bottom + axisHeight }, frame.inWords, children);
}

/** The words under the first figure of bands. */
export const bandsExplained =
  'The darker the band, the more the counts speak for that density. The tall tick is the estimate, the hair lines are the ' +
  'ends of the interval. Where none was recorded the band fades from zero: the full hair line is the bound if animals lie in ' +
  'clumps, the dotted one the bound if they are scattered. The axis runs evenly at its left end, so that zero has a place, and ' +
  'further right each equal step multiplies.';

function axisOf(answers: readonly DensityAnswer[]): DensityAxis {
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

function layoutOf(width: number): Layout {
  return width < 500
    ? { narrow: true, left: 8, right: width - 12, rowHeight: 78, bandTop: 47 }
    : { narrow: false, left: 176, right: width - 172, rowHeight: 44, bandTop: 11 };
}

/** Behind the bands; on a phone not behind the words above them. */
function gridLines(axis: DensityAxis, layout: Layout, rows: number): string[] {
  const thin = { stroke: colours.rule, 'stroke-width': 0.6 };
  return Array.from({ length: rows }, (_, row) => row * layout.rowHeight).flatMap((top) =>
    axis.ticksPerHa.map((tick) => {
      const x = across(axis, layout, tick);
      return line(x, layout.narrow ? top + layout.bandTop - 5 : top + 2, x, top + layout.rowHeight + 4, thin);
    }),
  );
}

function axisLines(axis: DensityAxis, layout: Layout, bottom: number): string[] {
  const children: string[] = [];
  let lastLabelEnd = Number.NEGATIVE_INFINITY;
  for (const tick of axis.ticksPerHa) {
    const x = across(axis, layout, tick);
    const label = formatShort(tick);
    const half = label.length * 3.3;
    if (x - half < lastLabelEnd + 4) continue;
    children.push(write(x, bottom + 15, label, { 'text-anchor': 'middle', 'font-size': 12 }));
    lastLabelEnd = x + half;
  }
  children.push(line(layout.left, bottom, layout.right, bottom));
  children.push(
    write((layout.left + layout.right) / 2, bottom + 33, axisTitle(axis), {
      'text-anchor': 'middle',
      'font-size': 12,
    }),
  );
  return children;
}

function axisTitle(axis: DensityAxis): string {
  return `animals per hectare: even up to ${formatShort(axis.evenBelowPerHa)}, then multiplying`;
}

interface Drawn {
  readonly axis: DensityAxis;
  readonly layout: Layout;
  readonly frame: BandFrame;
}

function drawRow(row: BandRow, index: number, drawn: Drawn): string[] {
  const { layout, frame } = drawn;
  const top = index * layout.rowHeight;
  const children = rowWords(row, top, drawn);
  if (row.answer.densityPerHa === null) return [...children, ...reasonInPlace(row.answer, top, drawn)];
  return [...children, ...band(row.answer, top + layout.bandTop, `${frame.name}-${index + 1}`, drawn)];
}

function rowWords(row: BandRow, top: number, { layout, frame }: Drawn): string[] {
  const [first, second] = answerInBrief(row.answer);
  const end = { 'text-anchor': 'end' };
  const quiet = { 'font-size': 12, fill: colours.softInk };
  const strong = { 'font-weight': 600 };
  if (layout.narrow) {
    return [
      write(0, top + 18, row.label, strong),
      write(0, top + 34, row.note, quiet),
      write(frame.width, top + 18, first, { ...strong, ...end }),
      write(frame.width, top + 34, second, { ...quiet, ...end }),
    ];
  }
  return [
    write(0, top + 19, row.label, strong),
    write(0, top + 34, row.note, quiet),
    write(layout.right + 14, top + 19, first, strong),
    write(layout.right + 14, top + 34, second, quiet),
  ];
}

function reasonInPlace(answer: DensityAnswer, top: number, { layout, frame }: Drawn): string[] {
  const words = answer.reason === null ? 'No answer' : sentence(frame.language, answer.reason);
  const letters = Math.floor((layout.right - layout.left - 8) / 5.6);
  const lines = wrapWords(words, letters);
  const room = layout.narrow ? 2 : 3;
  const shown =
    lines.length <= room
      ? lines
      : [...wrapWords(words, letters - 6).slice(0, room - 1), '… in full in the table below'];
  const start = top + (layout.narrow ? 55 : 24 - (shown.length - 1) * 6.5);
  const size = {
    x: layout.left + 1,
    width: layout.right - layout.left,
    y: start - 12,
    height: shown.length * 13 + 4,
  };
  return [
    element('rect', { ...size, fill: colours.paper, class: 'paper' }),
    ...shown.map((text, i) =>
      write(layout.left + 4, start + i * 13, text, { 'font-size': 11.5, fill: colours.question }),
    ),
  ];
}

function band(answer: DensityAnswer, y: number, name: string, { axis, layout }: Drawn): string[] {
  const children: string[] = [];
  if (answer.belief !== null) {
    const stops = inkStops(answer.belief, axis).map(({ at, ink }) =>
      element('stop', { offset: at.toFixed(3), 'stop-color': colours.ink, 'stop-opacity': ink.toFixed(3) }),
    );
    children.push(element('defs', {}, [element('linearGradient', { id: name }, stops)]));
    const size = { x: layout.left, y, width: layout.right - layout.left, height: bandHeight };
    children.push(element('rect', { ...size, fill: `url(#${name})` }));
  }
  for (const end of hairLines(answer)) {
    const x = across(axis, layout, end.perHa);
    const dashes = end.scattered ? '2 2' : null;
    children.push(line(x, y - 2, x, y + bandHeight + 2, { 'stroke-width': 0.8, 'stroke-dasharray': dashes }));
  }
  const x = across(axis, layout, answer.densityPerHa ?? 0);
  children.push(
    line(x, y - 5, x, y + bandHeight + 5, { stroke: colours.paper, 'stroke-width': 5, class: 'paper-line' }),
  );
  children.push(line(x, y - 5, x, y + bandHeight + 5, { 'stroke-width': 2.4 }));
  return children;
}

function hairLines(answer: DensityAnswer): { readonly perHa: number; readonly scattered: boolean }[] {
  const lines = (answer.intervalPerHa ?? [])
    .filter((end) => end > 0)
    .map((perHa) => ({ perHa, scattered: false }));
  const scattered = answer.scatteredBoundPerHa;
  return scattered === null ? lines : [...lines, { perHa: scattered, scattered: true }];
}

function across(axis: DensityAxis, layout: Layout, densityPerHa: number): number {
  return layout.left + axis.at(densityPerHa) * (layout.right - layout.left);
}

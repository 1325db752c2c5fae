/**
 * One species from survey to survey on a true axis of time: the fading band of each survey stands at its days, dark
 * where the density is likely. A thin line joins two estimates that were counted alike; it never goes through a survey
 * without an answer or without animals, and it is broken where the way of counting changed.
 */

import type { DensityAnswer } from '../estimates/answers.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { colours } from './colours.ts';
import type { DensityAxis } from './density-axis.ts';
import { answerInBrief } from './density-words.ts';
import { axisOf } from './fading-band.ts';
import { inkStops } from './ink-stops.ts';
import { formatShort } from './numbers.ts';
import { drawing, element, line, wrapWords, write } from './svg.ts';
import { timeAxis } from './time-axis.ts';

export interface TimeRow {
  readonly survey: string;
  /** First and last ISO day that stations were worked. */
  readonly from: string;
  readonly to: string;
  readonly answer: DensityAnswer;
  /** How the survey before counted, beside this one. */
  readonly countedBefore: 'alike' | 'otherwise' | 'not known';
}

export interface TimeFrame {
  readonly width: number;
  /** Begins the names inside this drawing; unlike that of any other drawing on the page. */
  readonly name: string;
  readonly language: Language;
  /** What the figure shows, for those who cannot see it. */
  readonly inWords: string;
}

const top = 20;
const plotHeight = 132;
const bottom = top + plotHeight;
const left = 46;
const rightMargin = 8;
const bandWidth = 16;
/** From the end of the axis to the outermost band. */
const inset = 26;
const wordsTop = bottom + 42;
const wordsWidth = 80;
const lineHeight = 14;
const wordsHeight = 5 * lineHeight + 6;

/** Whether there is room for the words of each survey under its band. */
export function timeBandsFit(surveys: number, width: number): boolean {
  return surveys * wordsWidth <= width;
}

export function timeBands(rows: readonly TimeRow[], frame: TimeFrame): string {
  const axis = axisOf(rows.map(({ answer }) => answer));
  const right = frame.width - rightMargin;
  const time = timeAxis(
    rows.flatMap(({ from, to }) => [from, to]),
    { ticks: Math.floor((right - left) / 48) },
  );
  const reach = right - left - 2 * inset;
  const x = (share: number) => left + inset + share * reach;
  const y = (perHa: number) => bottom - axis.at(perHa) * plotHeight;
  const bands = rows.map((row, i): Band => {
    const [start, end] = [x(time.at(row.from)), x(time.at(row.to))];
    const width = Math.max(bandWidth, end - start);
    return { row, middle: (start + end) / 2, width, id: `${frame.name}-${i + 1}` };
  });
  const hasWords = timeBandsFit(rows.length, frame.width);
  const drawn = [
    ...densityTicks(axis, y, { right, language: frame.language }),
    ...time.ticks.flatMap(({ at, label }) => [
      line(x(at), bottom, x(at), bottom + 5, { 'stroke-width': 0.8 }),
      write(x(at), bottom + 18, label, { 'font-size': 11, 'text-anchor': 'middle' }),
    ]),
    ...bands.flatMap((band, i) => (i === 0 ? [] : joinOf(bands[i - 1]!, band, y))),
    ...bands.flatMap((band) => bandOf(band, axis, y)),
    ...(hasWords ? wordsUnder(bands, frame) : []),
  ];
  return drawing(
    { width: frame.width, height: hasWords ? wordsTop + wordsHeight : bottom + 26 },
    frame.inWords,
    drawn,
  );
}

interface Band {
  readonly row: TimeRow;
  readonly middle: number;
  readonly width: number;
  readonly id: string;
}

function densityTicks(
  axis: DensityAxis,
  y: (perHa: number) => number,
  { right, language }: { readonly right: number; readonly language: Language },
): string[] {
  const label = densityPhrases(language).axis(formatShort(axis.evenBelowPerHa, language));
  return [
    write(0, 11, label, { 'font-size': 11, fill: colours.softInk }),
    ...axis.ticksPerHa.flatMap((perHa) => [
      line(left, y(perHa), right, y(perHa), {
        stroke: perHa === 0 ? colours.ink : colours.rule,
        'stroke-width': perHa === 0 ? 1 : 0.6,
      }),
      write(left - 6, y(perHa) + 4, formatShort(perHa, language), { 'font-size': 11, 'text-anchor': 'end' }),
    ]),
  ];
}

function isKnown({ answer }: TimeRow): boolean {
  return answer.densityPerHa !== null && answer.densityPerHa > 0;
}

/** A line between two estimates counted alike; two strokes on the axis where the way of counting changed. */
function joinOf(before: Band, after: Band, y: (perHa: number) => number): string[] {
  if (after.row.countedBefore === 'otherwise') {
    const middle = (before.middle + after.middle) / 2;
    return [-3, 3].map((step) => line(middle + step - 3, bottom + 6, middle + step + 3, bottom - 6));
  }
  if (after.row.countedBefore !== 'alike' || !isKnown(before.row) || !isKnown(after.row)) return [];
  return [
    line(
      before.middle + before.width / 2 + 5,
      y(before.row.answer.densityPerHa!),
      after.middle - after.width / 2 - 5,
      y(after.row.answer.densityPerHa!),
      { stroke: colours.softInk, 'stroke-width': 0.9, class: 'join' },
    ),
  ];
}

function bandOf({ row, middle, width, id }: Band, axis: DensityAxis, y: (perHa: number) => number): string[] {
  const { answer } = row;
  const box = { x: middle - width / 2, y: top, width, height: plotHeight };
  if (answer.densityPerHa === null)
    return [element('rect', { ...box, fill: 'none', stroke: colours.question, 'stroke-dasharray': '2 3' })];
  const across = (perHa: number, more: number, ink: Parameters<typeof line>[4]) =>
    line(middle - width / 2 - more, y(perHa), middle + width / 2 + more, y(perHa), ink);
  const ends = (answer.intervalPerHa ?? []).filter((end) => end > 0);
  const scattered = answer.scatteredBoundPerHa;
  const estimate = answer.densityPerHa > 0 ? [answer.densityPerHa] : [];
  return [
    ...gradientOf(answer, axis, id),
    ...(answer.belief === null ? [] : [element('rect', { ...box, fill: `url(#${id})` })]),
    ...ends.map((end) => across(end, 3, { 'stroke-width': 0.8 })),
    ...(scattered === null ? [] : [across(scattered, 3, { 'stroke-width': 0.8, 'stroke-dasharray': '2 2' })]),
    ...estimate.map((perHa) =>
      across(perHa, 5, { stroke: colours.paper, 'stroke-width': 5, class: 'paper-line' }),
    ),
    ...estimate.map((perHa) => across(perHa, 5, { 'stroke-width': 2.4 })),
  ];
}

/** From the foot of the axis upward. */
function gradientOf({ belief }: DensityAnswer, axis: DensityAxis, id: string): string[] {
  if (belief === null) return [];
  const stops = inkStops(belief, axis).map(({ at, ink }) =>
    element('stop', { offset: at.toFixed(3), 'stop-color': colours.ink, 'stop-opacity': ink.toFixed(3) }),
  );
  return [element('linearGradient', { id, x1: 0, y1: 1, x2: 0, y2: 0 }, stops)];
}

/** The survey, its density, interval and stations, led to its band where they had to move aside. */
function wordsUnder(bands: readonly Band[], { width, language }: TimeFrame): string[] {
  const places = apart(
    bands.map(({ middle }) => middle),
    { least: wordsWidth / 2, most: width - wordsWidth / 2 },
  );
  return bands.flatMap(({ row, middle }, i) => {
    const at = places[i]!;
    const [strong, quiet] = answerInBrief(row.answer, language);
    const names = wrapWords(row.survey, 14);
    const name = names.length > 2 ? [names[0]!, `${names[1]!} …`] : names;
    const quietLines = quiet.split(' · ');
    return [
      line(middle, bottom + 22, at, wordsTop - 12, { stroke: colours.rule, 'stroke-width': 0.8 }),
      ...[...name, strong, ...quietLines].map((text, row) =>
        write(at, wordsTop + row * lineHeight, text, {
          'font-size': 11,
          'text-anchor': 'middle',
          'font-weight': row === name.length ? 600 : null,
          fill: row > name.length ? colours.softInk : colours.ink,
        }),
      ),
    ];
  });
}

/** Places moved aside as little as is needed, in order and inside. There is room for all. */
function apart(
  wanted: readonly number[],
  { least, most }: { readonly least: number; readonly most: number },
): readonly number[] {
  const places: number[] = [];
  for (const [i, place] of wanted.entries())
    places.push(Math.max(place, i === 0 ? least : places[i - 1]! + wordsWidth));
  let limit = most;
  for (let i = places.length - 1; i >= 0; i--) {
    places[i] = Math.min(places[i]!, limit);
    limit = places[i]! - wordsWidth;
  }
  return places;
}

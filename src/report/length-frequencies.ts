/**
 * Length frequencies: the share of the animals in each class, lengths raised to the counts, with the
 * size limit as a line. How many were measured stands with it, because that is what the picture rests on.
 */

import type { SizesAnswer } from '../estimates/answers.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { formatCount, formatShort } from './numbers.ts';
import { drawing, element, line, write } from './svg.ts';

export interface LengthFrame {
  readonly width: number;
  readonly inWords: string;
  /** What was measured: "body length", "shell length". */
  readonly measure: string;
}

const plotHeight = 170;
const left = 44;
const top = 30;

/** Null where there is nothing to draw; the sentence for that is `sizesInWords`. */
export function lengthFrequencies(answer: SizesAnswer, frame: LengthFrame): string | null {
  const classes = answer.classes;
  const first = classes[0];
  const last = classes.at(-1);
  if (first === undefined || last === undefined) return null;
  const limitMm = answer.shareAtLeast?.limitMm ?? null;
  const lowMm = Math.min(first.fromMm, limitMm ?? first.fromMm);
  const highMm = Math.max(last.toMm, limitMm ?? last.toMm);
  const right = frame.width - 12;
  const x = (mm: number) => left + ((mm - lowMm) / (highMm - lowMm)) * (right - left);
  const highest = roundShare(Math.max(...classes.map((each) => each.share)));
  const y = (share: number) => top + plotHeight * (1 - share / highest);
  const columns = classes.map((each) =>
    element('rect', {
      x: x(each.fromMm) + 0.5,
      y: y(each.share),
      width: Math.max(0.5, x(each.toMm) - x(each.fromMm) - 1),
      height: top + plotHeight - y(each.share),
      fill: colours.softInk,
    }),
  );
  const children = [
    ...shareAxis(highest, y, right),
    ...columns,
    ...lengthAxis({ lowMm, highMm, x, right, measure: frame.measure }),
    ...(limitMm === null ? [] : limitLine(limitMm, x(limitMm), frame.width)),
  ];
  return drawing({ width: frame.width, height: top + plotHeight + 44 }, frame.inWords, children);
}

/** "412 animals, 188 of them measured", or why there is nothing to show. */
export function sizesInWords(answer: SizesAnswer, language: Language): string {
  const animals = `${formatCount(answer.animals)} ${answer.animals === 1 ? 'animal' : 'animals'} counted`;
  if (answer.measured === 0)
    return answer.reason === null
      ? `${animals}, none measured`
      : `${animals}. ${sentence(language, answer.reason)}`;
  return `${animals}, ${formatCount(answer.measured)} measured`;
}

function shareAxis(highest: number, y: (share: number) => number, right: number): string[] {
  const quiet = { 'text-anchor': 'end', 'font-size': 12 };
  return [0, highest / 2, highest].flatMap((share) => [
    line(left, y(share), right, y(share), { stroke: colours.rule, 'stroke-width': 0.6 }),
    write(left - 6, y(share) + 4, `${formatShort(share * 100)} %`, quiet),
  ]);
}

interface LengthAxis {
  readonly lowMm: number;
  readonly highMm: number;
  readonly x: (mm: number) => number;
  readonly right: number;
  readonly measure: string;
}

function lengthAxis({ lowMm, highMm, x, right, measure }: LengthAxis): string[] {
  const bottom = top + plotHeight;
  const wanted = (highMm - lowMm) / ((right - left) / 60);
  const step = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500].find((mm) => mm >= wanted) ?? 1000;
  const children = [line(left, bottom, right, bottom)];
  for (let mm = Math.ceil(lowMm / step) * step; mm <= highMm; mm += step) {
    children.push(line(x(mm), bottom, x(mm), bottom + 4));
    children.push(write(x(mm), bottom + 17, formatShort(mm), { 'text-anchor': 'middle', 'font-size': 12 }));
  }
  const label = { 'text-anchor': 'middle', 'font-size': 12 };
  children.push(write((left + right) / 2, bottom + 35, `${measure}, mm`, label));
  return children;
}

function limitLine(limitMm: number, x: number, width: number): string[] {
  const words = `limit ${formatShort(limitMm)} mm`;
  const anchor = x > width * 0.7 ? 'end' : 'start';
  return [
    line(x, 14, x, top + plotHeight, { stroke: colours.paper, 'stroke-width': 4, class: 'paper-line' }),
    line(x, 14, x, top + plotHeight, { 'stroke-width': 1.8, 'stroke-dasharray': '6 3' }),
    write(anchor === 'end' ? x - 5 : x + 5, 18, words, {
      'text-anchor': anchor,
      'font-weight': 600,
      'font-size': 12,
    }),
  ];
}

function roundShare(share: number): number {
  return [0.04, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1].find((round) => round >= share) ?? 1;
}

/** Fading bands of a change: later over earlier, around 1, on an axis where each equal step multiplies. */

import type { ChangeAnswer } from '../estimates/change/change-answer.ts';
import { colours } from './colours.ts';
import { drawing, element, line, textWidth, wrapWords, write } from './svg.ts';

export interface RatioRow {
  readonly label: string;
  readonly answer: ChangeAnswer;
}

const rowHeight = 30;
const ticks = [1 / 16, 1 / 4, 1, 4, 16];
const furthest = Math.log(32);

/** `name` begins the names inside this drawing, unlike that of any other on the page. */
export function ratioBands(
  rows: readonly RatioRow[],
  frame: { readonly width: number; readonly name: string; readonly inWords: string; readonly axis: string },
): string {
  const left = frame.width < 500 ? 112 : 170;
  const right = frame.width - 12;
  const bottom = rows.length * rowHeight + 6;
  const at = (ratio: number) => {
    const share = (Math.log(ratio) + furthest) / (2 * furthest);
    return left + Math.min(1, Math.max(0, share)) * (right - left);
  };
  const grid = ticks.flatMap((ratio) => [
    line(at(ratio), 0, at(ratio), bottom, {
      stroke: ratio === 1 ? colours.ink : colours.rule,
      'stroke-width': ratio === 1 ? 1.2 : 0.6,
    }),
    write(at(ratio), bottom + 15, tickWords(ratio), { 'font-size': 12, 'text-anchor': 'middle' }),
  ]);
  const drawn = rows.flatMap((row, i) =>
    bandOf(row, { y: i * rowHeight + 4, at, id: `${frame.name}-${i}`, left, right }),
  );
  // On a phone the label is wider than its axis: it takes the whole width, and a second line where it needs one.
  const isNarrow = textWidth(frame.axis, 12) > right - left;
  const lines = isNarrow ? wrapWords(frame.axis, Math.floor(frame.width / 6.5)) : [frame.axis];
  const middle = isNarrow ? frame.width / 2 : (left + right) / 2;
  const label = lines.map((text, i) =>
    write(middle, bottom + 33 + 15 * i, text, { 'font-size': 12, 'text-anchor': 'middle' }),
  );
  const height = bottom + 25 + 15 * lines.length;
  return drawing({ width: frame.width, height }, frame.inWords, [...grid, ...drawn, ...label]);
}

function tickWords(ratio: number): string {
  return ratio < 1 ? `1/${1 / ratio}` : `${ratio}×`.replace('1×', '1');
}

interface Place {
  readonly y: number;
  readonly at: (ratio: number) => number;
  readonly id: string;
  readonly left: number;
  readonly right: number;
}

function bandOf({ label, answer }: RatioRow, { y, at, id, left, right }: Place): string[] {
  const { belief, ratio, ratioInterval } = answer;
  const middle = y + 11;
  const words = write(0, middle + 4, label, { 'font-size': 13 });
  if (belief === null) return [words];
  const most = Math.max(...belief.weight);
  const step = Math.max(1, Math.floor(belief.ratio.length / 48));
  const stops = belief.ratio.flatMap((each, i) =>
    i % step === 0 && each > 0
      ? [
          element('stop', {
            offset: ((at(each) - left) / (right - left)).toFixed(3),
            'stop-color': colours.ink,
            'stop-opacity': ((0.85 * belief.weight[i]!) / most).toFixed(2),
          }),
        ]
      : [],
  );
  const ends = (ratioInterval ?? []).flatMap((end) =>
    end === null || end <= 0 || Math.abs(Math.log(end)) > furthest
      ? []
      : [line(at(end), y - 1, at(end), y + 23, { 'stroke-width': 0.8 })],
  );
  const tick =
    ratio === null || ratio <= 0
      ? []
      : [
          line(at(ratio), y - 3, at(ratio), y + 25, {
            stroke: colours.paper,
            'stroke-width': 5,
            class: 'paper-line',
          }),
          line(at(ratio), y - 3, at(ratio), y + 25, { 'stroke-width': 2.4 }),
        ];
  return [
    words,
    element('linearGradient', { id }, stops),
    element('rect', { x: left, y, width: right - left, height: 22, fill: `url(#${id})` }),
    ...ends,
    ...tick,
  ];
}

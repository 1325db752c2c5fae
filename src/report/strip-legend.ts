/** What the signs of the belt strip mean, drawn with the strip itself. */

import { colours } from './colours.ts';
import { drawing, element, line, write } from './svg.ts';

/** The five signs with their words, wrapped to the width. */
export function stripLegend(width: number): string {
  const children: string[] = [];
  let x = 1;
  let y = 1;
  for (const entry of entries) {
    const wide = 42 + entry.words.length * 6.2;
    if (x > 1 && x + wide > width) {
      x = 1;
      y += 26;
    }
    children.push(...entry.draw(x, y), write(x + 30, y + 13, entry.words, { 'font-size': 12 }));
    x += wide;
  }
  return drawing(
    { width, height: y + 22 },
    `Signs: ${entries.map((entry) => entry.words).join('; ')}`,
    children,
  );
}

const box = (x: number, y: number, more: Record<string, string | number>) =>
  element('rect', { x, y, width: 24, height: 16, fill: 'none', stroke: colours.ink, ...more });

const entries: readonly { readonly words: string; readonly draw: (x: number, y: number) => string[] }[] = [
  {
    words: 'a stroke for each animal',
    draw: (x, y) => [
      box(x, y, {}),
      ...[4, 7, 10].map((at) => line(x + at, y + 4, x + at, y + 12, { 'stroke-width': 1.4 })),
    ],
  },
  {
    words: 'many animals: filled height',
    draw: (x, y) => [
      element('rect', { x, y: y + 7, width: 24, height: 9, fill: colours.softInk }),
      box(x, y, {}),
    ],
  },
  { words: 'searched and empty', draw: (x, y) => [box(x, y, {})] },
  {
    words: 'lost or not done',
    draw: (x, y) => [
      box(x, y, { stroke: colours.rule }),
      ...[0, 6, 12].map((at) => line(x + at, y + 16, x + at + 12, y, { 'stroke-width': 0.7 })),
    ],
  },
  {
    words: 'blank: waits for an answer',
    draw: (x, y) => [
      box(x, y, { stroke: colours.question, 'stroke-width': 1.6, 'stroke-dasharray': '1.5 3' }),
    ],
  },
  { words: 'not looked for', draw: (x, y) => [line(x, y + 8, x + 24, y + 8, { stroke: colours.softInk })] },
  { words: 'cut short', draw: (x, y) => [box(x, y, { width: 12 })] },
];

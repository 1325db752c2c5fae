/** What the signs of the belt strip mean, drawn with the strip itself. */

import type { Language } from './catalogue/language.ts';
import { type ReportPhrases, reportPhrases } from './catalogue/report-phrases.ts';
import { colours } from './colours.ts';
import { drawing, element, line, write } from './svg.ts';

/** The five signs with their words, wrapped to the width. */
export function stripLegend(width: number, language: Language = 'en'): string {
  const { signs } = reportPhrases(language);
  const children: string[] = [];
  let x = 1;
  let y = 1;
  for (const entry of entries) {
    const words = signs[entry.sign];
    const wide = 42 + words.length * 6.2;
    if (x > 1 && x + wide > width) {
      x = 1;
      y += 26;
    }
    children.push(...entry.draw(x, y), write(x + 30, y + 13, words, { 'font-size': 12 }));
    x += wide;
  }
  return drawing(
    { width, height: y + 22 },
    signs.title(entries.map((entry) => signs[entry.sign]).join('; ')),
    children,
  );
}

const box = (x: number, y: number, more: Record<string, string | number>) =>
  element('rect', { x, y, width: 24, height: 16, fill: 'none', stroke: colours.ink, ...more });

const entries: readonly {
  readonly sign: Exclude<keyof ReportPhrases['signs'], 'title'>;
  readonly draw: (x: number, y: number) => string[];
}[] = [
  {
    sign: 'stroke',
    draw: (x, y) => [
      box(x, y, {}),
      ...[4, 7, 10].map((at) => line(x + at, y + 4, x + at, y + 12, { 'stroke-width': 1.4 })),
    ],
  },
  {
    sign: 'filled',
    draw: (x, y) => [
      element('rect', { x, y: y + 7, width: 24, height: 9, fill: colours.softInk }),
      box(x, y, {}),
    ],
  },
  { sign: 'empty', draw: (x, y) => [box(x, y, {})] },
  {
    sign: 'lost',
    draw: (x, y) => [
      box(x, y, { stroke: colours.rule }),
      ...[0, 6, 12].map((at) => line(x + at, y + 16, x + at + 12, y, { 'stroke-width': 0.7 })),
    ],
  },
  {
    sign: 'blank',
    draw: (x, y) => [
      box(x, y, { stroke: colours.question, 'stroke-width': 1.6, 'stroke-dasharray': '1.5 3' }),
    ],
  },
  { sign: 'notLookedFor', draw: (x, y) => [line(x, y + 8, x + 24, y + 8, { stroke: colours.softInk })] },
  { sign: 'short', draw: (x, y) => [box(x, y, { width: 12 })] },
];

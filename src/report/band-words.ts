/** The words of a band: its name, its answer in brief, or why there is no answer; and where they stand. */

import * as Plot from '@observablehq/plot';
import type { DensityAnswer } from '../estimates/answers.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import { type Language, sentenceOnPaper } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { answerInBrief } from './density-words.ts';
import type { BandFrame, BandRow } from './fading-band.ts';
import { wrapWords } from './svg.ts';

export type NumberedRow = BandRow & { readonly index: number };

/** Where things stand in a row, from its top: words at the sides of the band, or above it on a phone. */
export interface BandLayout {
  readonly narrow: boolean;
  readonly marginLeft: number;
  readonly marginRight: number;
  readonly rowHeight: number;
  readonly bandTop: number;
  readonly bandHeight: number;
  readonly firstLine: number;
}

export const sheetLayout: BandLayout = {
  narrow: false,
  marginLeft: 176,
  marginRight: 172,
  rowHeight: 42,
  bandTop: 10,
  bandHeight: 18,
  firstLine: 13,
};

export const phoneLayout: BandLayout = {
  narrow: true,
  marginLeft: 8,
  marginRight: 18,
  rowHeight: 56,
  bandTop: 36,
  bandHeight: 12,
  firstLine: 10,
};

/** Name and note at the left, the answer in brief at the right. */
export function wordMarks(
  rows: readonly NumberedRow[],
  layout: BandLayout,
  language: Language,
): Plot.Markish[] {
  const { narrow, marginLeft, marginRight, rowHeight, firstLine } = layout;
  const left = { frameAnchor: 'left', textAnchor: 'start', dx: -marginLeft } as const;
  const right = narrow
    ? ({ frameAnchor: 'right', textAnchor: 'end', dx: marginRight } as const)
    : ({ frameAnchor: 'right', textAnchor: 'start', dx: 14 } as const);
  const strong = { y: 'index', dy: firstLine - rowHeight / 2, fontSize: 13, fontWeight: 600 };
  const quiet = { y: 'index', dy: firstLine + 15 - rowHeight / 2, fontSize: 12, fill: colours.softInk };
  return [
    Plot.text(rows, { ...left, ...strong, text: 'label' }),
    Plot.text(rows, { ...left, ...quiet, text: 'note' }),
    Plot.text(rows, {
      ...right,
      ...strong,
      text: ({ answer }: BandRow) => answerInBrief(answer, language)[0],
    }),
    Plot.text(rows, {
      ...right,
      ...quiet,
      text: ({ answer }: BandRow) => answerInBrief(answer, language)[1],
    }),
  ];
}

export function reasonMark(
  rows: readonly NumberedRow[],
  { layout, frame }: { readonly layout: BandLayout; readonly frame: BandFrame },
): Plot.Markish {
  return Plot.text(rows, {
    y: 'index',
    frameAnchor: 'left',
    textAnchor: 'start',
    dx: layout.narrow ? -layout.marginLeft : 4,
    dy: layout.narrow ? layout.bandTop + 8 - layout.rowHeight / 2 : 0,
    lineHeight: 1.05,
    fontSize: 11.5,
    fill: colours.question,
    text: ({ answer }: BandRow) => reasonInPlace(answer, layout, frame),
  });
}

/** The reason in as many lines as the row has room for. */
function reasonInPlace(answer: DensityAnswer, layout: BandLayout, frame: BandFrame): string {
  const phrases = densityPhrases(frame.language);
  const words = answer.reason === null ? phrases.noAnswer : sentenceOnPaper(frame.language, answer.reason);
  const width = layout.narrow ? frame.width : frame.width - layout.marginLeft - layout.marginRight - 8;
  const letters = Math.floor(width / 5.6);
  const lines = wrapWords(words, letters);
  const room = layout.narrow ? 2 : 3;
  if (lines.length <= room) return lines.join('\n');
  return [...wrapWords(words, letters - 6).slice(0, room - 1), phrases.inTable].join('\n');
}

/**
 * Length frequencies: the share of the animals in each class, lengths raised to the counts, with the
 * size limit as a line. How many were measured stands with it, because that is what the picture rests on.
 */

import * as Plot from '@observablehq/plot';
import type { SizesAnswer } from '../estimates/answers.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { formatCount, formatShort } from './numbers.ts';
import { type PlotDocument, plotFigure } from './plot-figure.ts';

export interface LengthFrame {
  readonly width: number;
  readonly inWords: string;
  /** What was measured: "body length", "shell length". */
  readonly measure: string;
  /** English where none is given. */
  readonly language?: Language;
  readonly document: PlotDocument;
}

/** Null where there is nothing to draw; the sentence for that is `sizesInWords`. */
export function lengthFrequencies(answer: SizesAnswer, frame: LengthFrame): string | null {
  const { language = 'en' } = frame;
  const first = answer.classes[0];
  const last = answer.classes.at(-1);
  if (first === undefined || last === undefined) return null;
  const limitMm = answer.shareAtLeast?.limitMm ?? null;
  const lowMm = Math.min(first.fromMm, limitMm ?? first.fromMm);
  const highMm = Math.max(last.toMm, limitMm ?? last.toMm);
  const options: Plot.PlotOptions = {
    width: frame.width,
    height: 178,
    marginTop: 26,
    marginRight: 14,
    marginBottom: 42,
    marginLeft: 44,
    x: { domain: [lowMm, highMm] },
    y: { nice: 3 },
    marks: [
      Plot.gridY({ ticks: 3, stroke: colours.rule, strokeOpacity: 1, strokeWidth: 0.6 }),
      Plot.axisY({
        ticks: 3,
        tickSize: 0,
        fontSize: 12,
        label: null,
        tickFormat: (share: number) => `${formatShort(share * 100, language)} %`,
      }),
      Plot.axisX({
        ticks: 5,
        tickSize: 4,
        fontSize: 12,
        tickFormat: (mm: number) => formatShort(mm, language),
        label: `${frame.measure}, mm`,
        labelAnchor: 'center',
        labelOffset: 36,
        labelArrow: 'none',
      }),
      Plot.rectY(answer.classes, {
        x1: 'fromMm',
        x2: 'toMm',
        y: 'share',
        insetLeft: 0.5,
        insetRight: 0.5,
        fill: colours.softInk,
      }),
      Plot.ruleY([0]),
      ...(limitMm === null ? [] : limitMarks(limitMm, limitMm > lowMm + 0.65 * (highMm - lowMm), language)),
    ],
  };
  return plotFigure(options, frame);
}

/** "412 animals, 188 of them measured", or why there is nothing to show. */
export function sizesInWords(answer: SizesAnswer, language: Language): string {
  const { sizes } = reportPhrases(language);
  const animals = sizes.counted(formatCount(answer.animals), answer.animals === 1);
  if (answer.measured === 0)
    return answer.reason === null
      ? sizes.noneMeasured(animals)
      : `${animals}. ${sentence(language, answer.reason)}`;
  return sizes.measured(animals, formatCount(answer.measured));
}

/** The words stand on the side of the line where there is room for them. */
function limitMarks(limitMm: number, wordsLeft: boolean, language: Language): Plot.Markish[] {
  const reaching = { insetTop: -16 };
  return [
    Plot.ruleX([limitMm], { ...reaching, stroke: colours.paper, strokeWidth: 4, className: 'paper-line' }),
    Plot.ruleX([limitMm], { ...reaching, strokeWidth: 1.8, strokeDasharray: '6 3' }),
    Plot.text([reportPhrases(language).sizes.limitAt(formatShort(limitMm, language))], {
      x: [limitMm],
      frameAnchor: 'top',
      textAnchor: wordsLeft ? 'end' : 'start',
      dx: wordsLeft ? -5 : 5,
      dy: -18,
      text: (words: string) => words,
      fontWeight: 600,
      fontSize: 12,
    }),
  ];
}

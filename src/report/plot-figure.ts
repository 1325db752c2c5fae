/**
 * Figures are drawn by Observable Plot. The document it draws in is passed in, because this room knows no DOM.
 * What comes out is text that is the same on every machine: coordinates to a tenth of a unit, no style sheet
 * of Plot's own, no generated names.
 */

import * as Plot from '@observablehq/plot';
import type { Language } from './catalogue/sentence.ts';
import { colours } from './colours.ts';
import { escapeText } from './escape.ts';

export type PlotDocument = NonNullable<Plot.PlotOptions['document']>;

/** What every section with figures is given. */
export interface Drawing {
  readonly document: PlotDocument;
  readonly language: Language;
}

export interface FigureTools {
  readonly document: PlotDocument;
  /** What the figure shows, for those who cannot see it. */
  readonly inWords: string;
  /** Gradients and the like that the marks refer to, as markup. */
  readonly definitions?: string;
}

/** A whole figure as markup, with the sentence that stands for it where it cannot be seen. */
export function plotFigure(options: Plot.PlotOptions, tools: FigureTools): string {
  const drawn = Plot.plot({ ...options, document: tools.document });
  drawn.querySelector('style')?.remove();
  for (const name of ['class', 'font-family', 'font-size', 'fill']) drawn.removeAttribute(name);
  for (const part of drawn.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  const own =
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escapeText(tools.inWords)}" ` +
    `font-family="'Source Sans 3', sans-serif" font-size="12" fill="${colours.ink}" color="${colours.ink}" `;
  const markup = inTenths(drawn.outerHTML).replace(/(<g[ >]|<\/svg>)/g, '\n$1');
  return own + markup.slice('<svg '.length).replace('\n', `\n${tools.definitions ?? ''}`);
}

/** Only attributes that place something; words are left as they are. Heights of letters (em) keep their hundredths. */
function inTenths(markup: string): string {
  return markup.replace(/ (?:x|y|x1|x2|y1|y2|dy|cx|cy|width|height|d|transform)="[^"]*"/g, (attribute) => {
    const steps = attribute.endsWith('em"') ? 100 : 10;
    return attribute.replace(/-?\d*\.\d+(e-?\d+)?/g, (number) =>
      String(Math.round(Number(number) * steps) / steps + 0),
    );
  });
}

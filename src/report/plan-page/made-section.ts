/** How the stations were drawn: method, seed, division, spread over the ground. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { planPhrases } from '../catalogue/plan-phrases.ts';
import { list, paragraph, section } from '../html.ts';
import { formatShort } from '../numbers.ts';
import { spreadLines } from '../plan-spread-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';

export function madeSection({ content }: PlanPageInput, language: Language): string {
  const { made: words } = planPagePhrases(language);
  return section('made', words.head, [
    paragraph(methodInWords(content, language)),
    paragraph(words.chance),
    ...(content.laid === null ? [] : [paragraph(words.bearings)]),
    ...spreadMarkup(content, language),
  ]);
}

function methodInWords(content: PlanPageInput['content'], language: Language): string {
  const { made: words } = planPagePhrases(language);
  const { methods, allocation } = planPhrases(language);
  const { minimumSpacingM } = content;
  const apart = minimumSpacingM === null ? '' : words.apart(formatShort(minimumSpacingM, language));
  const divided = content.allocation === undefined ? '' : ` ${allocation(content.allocation)}.`;
  const revisits = content.revisits === undefined ? '' : words.revisits(content.revisits);
  const method = words.method(capital(methods[content.method]), apart, String(content.seed));
  return `${method}${divided}${revisits}`;
}

/** Lines that stand in from the edge are a list under the line before them. */
function spreadMarkup(content: PlanPageInput['content'], language: Language): string[] {
  const markup: string[] = [];
  let items: string[] = [];
  const close = () => {
    if (items.length > 0) markup.push(list(items));
    items = [];
  };
  for (const text of spreadLines(content, language).filter((one) => one !== '')) {
    if (text.startsWith(' ')) items.push(text.trim());
    else {
      close();
      markup.push(paragraph(text));
    }
  }
  close();
  return markup;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

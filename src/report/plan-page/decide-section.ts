/** What is to be decided, and the work that the plan asks for. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { paragraph, section } from '../html.ts';
import { formatCount, formatShort } from '../numbers.ts';
import { stratumRows } from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';

export function decideSection({ content }: PlanPageInput, language: Language): string {
  const { decide: words } = planPagePhrases(language);
  const rows = stratumRows(content);
  const total = (of: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + of(row), 0);
  const picked = total((row) => row.handPicked);
  const stations = words.stations(
    formatCount(total((row) => row.planned)),
    formatCount(rows.length),
    picked === 0 ? '' : words.picked(formatCount(picked)),
    formatCount(total((row) => row.sparesLeft)),
  );
  return section('decide', words.head, [
    paragraph(content.decision ?? words.none, content.decision === null ? 'question' : ''),
    paragraph(`${stations} ${workInWords(content, language)}`),
  ]);
}

function workInWords({ laid }: PlanPageInput['content'], language: Language): string {
  const { decide: words } = planPagePhrases(language);
  if (laid === null) return words.noBelts;
  const short = (value: number) => formatShort(value, language);
  const size =
    laid.beltWidthM === null
      ? words.long(short(laid.beltLengthM))
      : words.longAndWide(short(laid.beltLengthM), short(laid.beltWidthM));
  return words.belts(formatCount(laid.belts), size, short(laid.gapM));
}

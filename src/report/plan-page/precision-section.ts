/** What precision a plan promises, and what it costs; or why neither is known. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { paragraph, section } from '../html.ts';
import { formatCount, formatShort, withDecimalMark } from '../numbers.ts';
import type { NoPrecision, PlanPageInput } from './plan-page-input.ts';
import { precisionTable } from './plan-tables.ts';

export function precisionSection(input: PlanPageInput, language: Language): string {
  const { pilot, reason } = input.precision;
  const words = planPagePhrases(language).precision;
  if (reason === null)
    return section('precision', words.head, [
      precisionTable(input, language),
      ...unseenMarkup(input, language),
      paragraph(costInWords(input, language)),
    ]);
  const why = reasonInWords(reason, language);
  return section('precision', words.head, [
    paragraph(pilot === null ? words.notKnown(why) : words.notKnownFrom(why, pilot), 'question'),
    paragraph(costInWords(input, language)),
  ]);
}

function reasonInWords(reason: NoPrecision, language: Language): string {
  const words = planPagePhrases(language).precision;
  return reason.code === 'noSpreadIn' ? words.noSpreadIn(reason.strata.join(', ')) : words[reason.code];
}

function unseenMarkup({ precision: { pilot, unseen } }: PlanPageInput, language: Language): string[] {
  if (pilot === null || unseen.length === 0) return [];
  return [paragraph(planPagePhrases(language).precision.unseen(pilot, unseen.join(', ')), 'quiet')];
}

function costInWords({ content, stationsPerDay, dayCost }: PlanPageInput, language: Language): string {
  const words = planPagePhrases(language).precision;
  const stations = content.stations.filter(({ role }) => role === 'planned').length;
  if (stationsPerDay === null) return words.noRate(formatCount(stations));
  const days = Math.ceil(stations / stationsPerDay);
  const money =
    dayCost === null
      ? ''
      : words.money(moneyInWords(days * dayCost, language), moneyInWords(dayCost, language));
  return words.cost(formatCount(stations), formatShort(stationsPerDay, language), formatCount(days), money);
}

/** Whole units in full, never rounded to three digits: it is a budget. Cents below a thousand, where there are any. */
function moneyInWords(amount: number, language: Language): string {
  return Number.isInteger(amount) || amount >= 1000
    ? formatCount(amount)
    : withDecimalMark(amount.toFixed(2), language);
}

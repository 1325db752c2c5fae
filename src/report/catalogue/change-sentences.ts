/** A change, in the words of an officer: what can be told, and what it would take. */

import type { ChangeAnswer, Told } from '../../estimates/change/change-answer.ts';
import { formatShare, formatShort, formatSignificant } from '../numbers.ts';
import { changePhrases } from './change-phrases.ts';
import type { Language } from './language.ts';

/** "probably lower, not proven at 95 %". */
export function toldInWords(told: Told, confidence: number, language: Language = 'en'): string {
  const words = changePhrases(language);
  const isProven = told === 'lower' || told === 'higher' || told === 'cannot tell';
  return isProven ? words.told[told] : words.notProven(words.told[told], formatShare(confidence));
}

/** "-60 % (-85 to +6 %)"; beyond a few times as many, in times: "2.1 times (0.4 to 31 times)". */
export function changeInNumbers({ ratio, ratioInterval }: ChangeAnswer, language: Language = 'en'): string {
  const words = changePhrases(language);
  if (ratioInterval === null) return '';
  const [low, high] = ratioInterval;
  // A bound on the other side of no change bounds nothing that anybody asked.
  if (ratio === null) return low > 1 ? words.noneBefore(times(low, language)) : words.noneBeforeUntold;
  if (low === 0 && high !== null && ratio === 0)
    return high < 1 ? words.noneLater(formatShare(high)) : words.noneLaterUntold;
  if (high === null) return words.atLeast(times(ratio, language), times(low, language));
  if (high > 4)
    return words.range(times(ratio, language), ratioInDigits(low, language), times(high, language));
  const lowest = percent(low, language).replace('\u00a0%', '');
  return words.range(percent(ratio, language), lowest, percent(high, language));
}

/** Two digits, and more where two would print a ratio of 1 that is none: 1.004 lies on one side of no change. */
export function ratioInDigits(ratio: number, language: Language = 'en'): string {
  const digits = ([2, 3, 4, 5] as const).find((one) => Number(ratio.toPrecision(one)) !== 1) ?? 2;
  return formatSignificant(ratio, digits, language);
}

/** The ends alone, where both are known: "−74" and "+190 %", or "0.063" and "5.6 times". */
export function changeRange(
  { ratio, ratioInterval }: ChangeAnswer,
  language: Language = 'en',
): { readonly low: string; readonly high: string; readonly inTimes: boolean } | null {
  if (ratioInterval === null || ratio === null || ratio === 0) return null;
  const [low, high] = ratioInterval;
  if (high === null) return null;
  return high > 4
    ? { low: ratioInDigits(low, language), high: times(high, language), inTimes: true }
    : { low: percent(low, language), high: percent(high, language), inTimes: false };
}

function times(ratio: number, language: Language): string {
  const words = changePhrases(language);
  return ratio >= 10_000 ? words.overTenThousand : words.times(ratioInDigits(ratio, language));
}

function percent(ratio: number, language: Language): string {
  const change = 100 * (ratio - 1);
  // "−100 %" would say that nothing is left.
  if (change > -100 && change < -99) return `−${formatShort(Math.floor(-change * 10) / 10, language)}\u00a0%`;
  const rounded = Math.round(change);
  // An end beyond "no change" must not print as no change.
  if (rounded === 0 && Math.abs(change) >= 0.005)
    return `${change > 0 ? '+' : '−'}${formatSignificant(Math.abs(change), 1, language)}\u00a0%`;
  const sign = rounded > 0 ? '+' : rounded < 0 ? '−' : '±';
  return `${sign}${formatSignificant(Math.abs(rounded), 2, language)}\u00a0%`;
}

/** What surveys like these could have told, and how many stations a halving would take. */
export function whatItTakesInWords(answer: ChangeAnswer, language: Language = 'en'): string {
  const { smallestFallTo, stationsMoreForHalving, neverTold } = answer;
  const words = changePhrases(language);
  if (smallestFallTo === null) return '';
  const could = smallestFallTo < 0.01 ? words.hardlyAny : words.tellAFall(formatShare(smallestFallTo));
  const stations = (n: number) => formatSignificant(n, 2, language);
  if (neverTold) return words.halvingEach(could, stations(answer.stationsEachForHalving!));
  if (stationsMoreForHalving === 0) return words.halvingToo(could);
  return words.halvingMore(could, stations(stationsMoreForHalving!));
}

/** "a usual (log ratio) comparison of surveys like these reports a change where there is none 1 time in 9". */
export function falseAlarmInWords(share: number, confidence: number): string {
  const promised = formatSignificant(1 / (1 - confidence), 2);
  const found = share === 0 ? 'none of 400 tried' : `1 in ${formatSignificant(1 / share, 2)}`;
  return `the usual comparison (log ratio) of such surveys cries wolf ${found}, where 1 in ${promised} is promised`;
}

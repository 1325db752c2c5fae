/** A change, in the words of an officer: what can be told, and what it would take. */

import type { ChangeAnswer, Told } from '../../estimates/change/change-answer.ts';
import { formatShare, formatSignificant } from '../numbers.ts';

/** "probably lower, not proven at 95 %". */
export function toldInWords(told: Told, confidence: number): string {
  if (told === 'lower' || told === 'higher') return told;
  if (told === 'cannot tell') return 'cannot tell';
  return `${told}, not proven at ${formatShare(confidence)}`;
}

/** "-60 % (-85 to +6 %)"; beyond a few times as many, in times: "2.1 times (0.4 to 31 times)". */
export function changeInNumbers({ ratio, ratioInterval }: ChangeAnswer): string {
  if (ratioInterval === null) return '';
  const [low, high] = ratioInterval;
  if (ratio === null) return `none seen before; at least ${times(low)} as many`;
  if (low === 0 && high !== null && ratio === 0)
    return `none seen later; at most ${formatShare(high)} of what it was`;
  if (high === null) return `${times(ratio)} (at least ${times(low)})`;
  if (high > 4) return `${times(ratio)} (${formatSignificant(low, 2)} to ${times(high)})`;
  return `${percent(ratio)} (${percent(low).replace('\u00a0%', '')} to ${percent(high)})`;
}

function times(ratio: number): string {
  return ratio >= 10_000 ? 'over 10\u202f000 times' : `${formatSignificant(ratio, 2)} times`;
}

function percent(ratio: number): string {
  const change = 100 * (ratio - 1);
  // "−100 %" would say that nothing is left.
  if (change > -100 && change < -99) return `−${(Math.floor(-change * 10) / 10).toFixed(1)}\u00a0%`;
  const sign = Math.round(change) > 0 ? '+' : Math.round(change) < 0 ? '−' : '±';
  return `${sign}${formatSignificant(Math.abs(Math.round(change)), 2)}\u00a0%`;
}

/** What surveys like these could have told, and how many stations a halving would take. */
export function whatItTakesInWords(answer: ChangeAnswer): string {
  const { smallestFallTo, stationsMoreForHalving, neverTold } = answer;
  if (smallestFallTo === null) return '';
  const could =
    smallestFallTo < 0.01
      ? 'surveys like these would hardly tell even the loss of all animals'
      : `surveys like these tell, 8 times in 10, a fall to ${formatShare(smallestFallTo)} of what it was`;
  if (neverTold)
    return `${could}; a halving would take two surveys of about ${formatSignificant(answer.stationsEachForHalving!, 2)} stations each`;
  if (stationsMoreForHalving === 0) return `${could}, so a halving too`;
  return `${could}; about ${formatSignificant(stationsMoreForHalving!, 2)} more stations would tell a halving`;
}

/** "a usual (log ratio) comparison of surveys like these reports a change where there is none 1 time in 9". */
export function falseAlarmInWords(share: number, confidence: number): string {
  const promised = formatSignificant(1 / (1 - confidence), 2);
  const found = share === 0 ? 'none of 400 tried' : `1 in ${formatSignificant(1 / share, 2)}`;
  return `the usual comparison (log ratio) of such surveys cries wolf ${found}, where 1 in ${promised} is promised`;
}

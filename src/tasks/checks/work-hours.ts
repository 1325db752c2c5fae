import type { Station } from '../../survey/words.ts';

/** A dive may go on past midnight, but nobody works a station for more than so long (our bound). */
export const longestMin = 6 * 60;

/** Minutes after midnight; null unless both times stand and make sense. A work past midnight ends after 1440. */
export function workHours({
  timeStart,
  timeEnd,
}: Pick<Station, 'timeStart' | 'timeEnd'>): { readonly startMin: number; readonly endMin: number } | null {
  if (timeStart === null || timeEnd === null) return null;
  const startMin = minutesOf(timeStart);
  const endMin = minutesOf(timeEnd);
  if (endMin > startMin) return { startMin, endMin };
  const pastMidnight = endMin + 1440;
  return pastMidnight - startMin <= longestMin ? { startMin, endMin: pastMidnight } : null;
}

function minutesOf(time: string): number {
  return 60 * Number(time.slice(0, 2)) + Number(time.slice(3, 5));
}

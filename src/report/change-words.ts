/** Changes of a density, and how often they are told, in words. */

import { formatCount, formatShare, formatShort, formatSignificant } from './numbers.ts';

/** "a halving", "a doubling", "a fall to 30 %", "a rise to 1.5-fold"; 1 is "no change". */
export function changeInWords(factor: number): string {
  if (factor === 1) return 'no change';
  if (factor === 0.5) return 'a halving';
  if (factor === 2) return 'a doubling';
  return factor < 1 ? `a fall to ${formatShare(factor)}` : `a rise to ${formatShort(factor)}-fold`;
}

/** The smallest fall that is told, given as the share that is lost: "a fall to 31 % of what it was". */
export function fallInWords(lostShare: number): string {
  return `a fall to ${formatShare(1 - lostShare)} of what it was`;
}

/** "7 times in 10", "less than once in 10", "more than 9 times in 10". */
export function timesInTen(share: number): string {
  const tenths = Math.round(share * 10);
  if (tenths === 0) return 'less than once in 10';
  if (tenths === 10) return share === 1 ? 'always' : 'more than 9 times in 10';
  return tenths === 1 ? 'once in 10' : `${tenths} times in 10`;
}

/** A small share as "1 in 14"; 0 is "none of N tried" to the reader's caution. */
export function oneIn(share: number, tried: number): string {
  return share === 0 ? `none of ${formatShort(tried)} tried` : `1 in ${formatSignificant(1 / share, 2)}`;
}

/** A rise of 140 % is 2.4 times as many; beyond a hundred times nothing is told. */
export function riseInWords(rise: number): string {
  return rise > 99 ? 'over 100 times' : `${formatSignificant(1 + rise, 2)} times`;
}

/** Two standard errors of a share of one half, the least certain one. */
export function luckInWords(simulations: number): string {
  return `${formatCount(Math.ceil(100 / Math.sqrt(simulations)))} in 100`;
}

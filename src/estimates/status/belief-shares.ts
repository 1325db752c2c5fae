/** What a belief about a density says of one density: the share below it, and the density below which a share lies. */

import { normalQuantile } from '../../maths/distributions.ts';
import type { Belief } from '../answers.ts';
import type { ReferenceLevel } from './probability-below.ts';

/** The belief holds the middle 99.8 %; the rest lies in two equal tails. */
const TAIL = 0.001;
/** A reference with a spread of its own is taken at so many equally likely places. */
const PLACES = 101;

/**
 * Share of the clumped-count belief below a reference density, between 0 and 1.
 *
 * Answers the same question as `probabilityBelow` with the house's default interval: counts clumped, few stations.
 * A reference with a coefficient of variation is log-normal around its value and averaged over. The belief is the one
 * of the fading band: 100 densities over its middle 99.8 %, so that shares nearer 0 or 1 than one in a thousand are
 * not told apart. For a belief made of nothing seen it is not to be asked: see METHODS c5.
 */
export function shareBelow(belief: Belief, reference: ReferenceLevel): number {
  const { logs, cumulative } = cumulated(belief);
  const logReference = Math.log(reference.densityPerHa);
  if (reference.cv === null || reference.cv === 0) return shareAt(logs, cumulative, logReference);
  const spread = Math.sqrt(Math.log1p(reference.cv ** 2));
  let total = 0;
  for (let i = 0; i < PLACES; i++) {
    total += shareAt(logs, cumulative, logReference + spread * normalQuantile((i + 0.5) / PLACES));
  }
  return total / PLACES;
}

/** The density in animals per hectare below which the given share of the belief lies. */
export function densityAtShare(belief: Belief, share: number): number {
  const { logs, cumulative } = cumulated(belief);
  if (share <= cumulative[0]!) return Math.exp(logs[0]!);
  const next = cumulative.findIndex((below) => below >= share);
  if (next === -1) return Math.exp(logs.at(-1)!);
  const from = cumulative[next - 1]!;
  const part = (share - from) / (cumulative[next]! - from);
  return Math.exp(logs[next - 1]! + part * (logs[next]! - logs[next - 1]!));
}

interface Cumulated {
  readonly logs: readonly number[];
  readonly cumulative: readonly number[];
}

/** Weights are per unit of log density, so the trapezes stand on the logarithms. */
function cumulated({ densityPerHa, weight }: Belief): Cumulated {
  const logs = densityPerHa.map(Math.log);
  const raw = [0];
  for (let i = 1; i < logs.length; i++) {
    raw.push(raw[i - 1]! + ((weight[i]! + weight[i - 1]!) / 2) * (logs[i]! - logs[i - 1]!));
  }
  const all = raw.at(-1)!;
  return { logs, cumulative: raw.map((one) => TAIL + ((1 - 2 * TAIL) * one) / all) };
}

function shareAt(logs: readonly number[], cumulative: readonly number[], log: number): number {
  if (log <= logs[0]!) return log === logs[0]! ? TAIL : TAIL / 2;
  if (log >= logs.at(-1)!) return 1 - TAIL / 2;
  let low = 0;
  let high = logs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (logs[middle]! <= log) low = middle;
    else high = middle;
  }
  const part = (log - logs[low]!) / (logs[high]! - logs[low]!);
  return cumulative[low]! + part * (cumulative[high]! - cumulative[low]!);
}

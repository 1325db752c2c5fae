import { normalQuantile } from '../../maths/distributions.ts';
import type { Interval } from '../shapes.ts';

export interface UnseenSpecies {
  readonly seen: number;
  /** Species of which one animal was found, and two. */
  readonly once: number;
  readonly twice: number;
  /** Species that are there at least, seen and unseen. */
  readonly atLeast: number;
  readonly standardError: number;
  /** Null when the estimate adds nothing to what was seen. */
  readonly interval: Interval | null;
}

/**
 * Species that are there at least, with those nobody found (Chao1, bias-corrected).
 *
 * Question: how many of the species looked for were missed? S + f1(f1 - 1) / (2(f2 + 1)), f1 and f2 the species met
 * once and twice. It is a lower bound. Standard error by the delta method with the multinomial covariance of f1 and
 * f2; the interval is log-normal on the unseen, so it never falls below what was seen.
 *
 * With no more than one species met once it adds nothing and there is no interval: that is no proof that nothing was
 * missed. Null when nothing was counted. Source: Chao 1984, 1987, Biometrics 43:783 (from memory; R package vegan
 * agrees in value and standard error).
 */
export function unseenSpecies(counts: readonly number[], confidence = 0.95): UnseenSpecies | null {
  const seen = counts.filter((count) => count > 0).length;
  if (seen === 0) return null;
  const once = counts.filter((count) => count === 1).length;
  const twice = counts.filter((count) => count === 2).length;
  const unseen = (once * (once - 1)) / (2 * (twice + 1));
  const atLeast = seen + unseen;
  const byOnce = once === 0 ? 0 : (2 * once - 1) / (2 * (twice + 1));
  const byTwice = (-once * (once - 1)) / (2 * (twice + 1) ** 2);
  const variance =
    byOnce ** 2 * once + byTwice ** 2 * twice - (byOnce * once + byTwice * twice) ** 2 / atLeast;
  const standardError = Math.sqrt(Math.max(0, variance));
  const interval = unseen === 0 ? null : onUnseen(seen, unseen, standardError, confidence);
  return { seen, once, twice, atLeast, standardError, interval };
}

function onUnseen(seen: number, unseen: number, standardError: number, confidence: number): Interval {
  const z = normalQuantile((1 + confidence) / 2);
  const factor = Math.exp(z * Math.sqrt(Math.log(1 + (standardError / unseen) ** 2)));
  return [seen + unseen / factor, seen + unseen * factor];
}

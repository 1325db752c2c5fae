import { normalQuantile } from '../../maths/distributions.ts';
import type { Interval } from '../shapes.ts';

export interface SeenByTwo {
  readonly firstSaw: number;
  readonly secondSaw: number;
  /** Animals that both saw, told by their place along the tape: never worked out from two counts. */
  readonly bothSaw: number;
}

export interface MarkedByTwo {
  /** Animals that could be seen, after Chapman. */
  readonly animals: number;
  readonly standardError: number;
  readonly interval: Interval;
  readonly seen: number;
  /** Chance that the first diver sees an animal; null when the second saw none. */
  readonly firstDetects: number | null;
  readonly secondDetects: number | null;
  readonly eitherDetects: number | null;
}

/**
 * Animals on a belt that two divers searched, and the chance that each sees one (Chapman's estimator).
 *
 * Question: how many of the animals that can be seen did a diver pass by? (n1 + 1)(n2 + 1)/(m + 1) - 1, with the
 * variance of Seber; the interval is log-normal on the animals neither saw, so it never falls below those that were
 * seen. A diver's detection is the share of the other's animals that this diver saw too.
 *
 * Assumes: animals are matched one by one by place along the tape and side; the second diver was not led by the
 * first; every animal is as easy to see as another; none came or left. Animals buried or in crevices, which neither
 * can see, are outside. With m = 0 the formula still gives a number, worth nothing: the caller says so.
 *
 * Source: Chapman 1951; Seber 1982 (formula read in the help of a general statistics package).
 */
export function markedByTwo({ firstSaw, secondSaw, bothSaw }: SeenByTwo, confidence = 0.95): MarkedByTwo {
  if (bothSaw > Math.min(firstSaw, secondSaw))
    throw new Error('markedByTwo requires no more common animals than each saw');
  const animals = ((firstSaw + 1) * (secondSaw + 1)) / (bothSaw + 1) - 1;
  const variance =
    ((firstSaw + 1) * (secondSaw + 1) * (firstSaw - bothSaw) * (secondSaw - bothSaw)) /
    ((bothSaw + 1) ** 2 * (bothSaw + 2));
  const seen = firstSaw + secondSaw - bothSaw;
  const firstDetects = secondSaw > 0 ? bothSaw / secondSaw : null;
  const secondDetects = firstSaw > 0 ? bothSaw / firstSaw : null;
  const eitherDetects =
    firstDetects === null || secondDetects === null ? null : 1 - (1 - firstDetects) * (1 - secondDetects);
  const interval = intervalOnUnseen(seen, animals - seen, variance, confidence);
  return {
    animals,
    standardError: Math.sqrt(variance),
    interval,
    seen,
    firstDetects,
    secondDetects,
    eitherDetects,
  };
}

function intervalOnUnseen(seen: number, unseen: number, variance: number, confidence: number): Interval {
  // Rounding may leave a hair below zero.
  if (unseen < 1e-9) return [seen, seen];
  // 1.96 and not 1.9599…, as published, at the usual confidence.
  const z = confidence === 0.95 ? 1.96 : normalQuantile((1 + confidence) / 2);
  const factor = Math.exp(z * Math.sqrt(Math.log(1 + variance / unseen ** 2)));
  return [seen + unseen / factor, seen + unseen * factor];
}

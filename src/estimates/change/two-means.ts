import { tCdf, twoSidedQuantile } from '../../maths/distributions.ts';
import { mean, sampleVariance, sum } from '../../maths/variance.ts';
import type { Reason } from '../../survey/message.ts';
import type { Interval } from '../shapes.ts';

/** One station in one of two surveys: its value per hectare and, when the place was worked in both, the name of the place. */
export interface PlaceValue {
  readonly place: string | null;
  readonly valuePerHa: number;
}

/** One stratum in the earlier (`from`) and the later (`to`) survey. */
export interface StratumOfTwo {
  readonly name: string;
  /** Relative weight, usually hectares: the same for both surveys, so that only the animals can change. */
  readonly weight: number;
  readonly from: readonly PlaceValue[];
  readonly to: readonly PlaceValue[];
}

export interface Contrast {
  readonly value: number;
  readonly standardError: number | null;
  readonly degreesOfFreedom: number | null;
  readonly interval: Interval | null;
  readonly pValue: number | null;
}

export interface ChangeOfMeans {
  readonly fromPerHa: number;
  readonly toPerHa: number;
  /** Places worked in both surveys and matched. */
  readonly pairs: number;
  /** Later minus earlier, animals per hectare. */
  readonly difference: Contrast;
  /** Natural logarithm of later over earlier; null where one of the two is zero. */
  readonly logRatio: Contrast | null;
  readonly reason: Reason | null;
}

/**
 * Change between two surveys by design: the difference and the log ratio of two stratified means, with t intervals.
 *
 * Stations drawn anew are independent: var(difference) = v1 + v2 and var(ln ratio) = CV1^2 + CV2^2. Places worked in
 * both surveys share what is special about them: such a place enters as one value, later / n2 - earlier / n1, whose spread
 * between places is what counts (paired t where all places are matched). Matched places, stations of the earlier survey
 * alone and of the later alone are independent groups; degrees of freedom by Satterthwaite over groups and strata.
 *
 * Assumes random stations and, for matched places, that the boat came back to the same ground.
 * A stratum with one station has no spread: no standard error, with the reason.
 * No interval where the spread is zero: stations that agree to the last animal prove nothing.
 * Source: Welch 1947 and the delta method (from memory); checked against R in the vectors f1 and f3.
 */
export function changeOfMeans(strata: readonly StratumOfTwo[], confidence: number): ChangeOfMeans {
  const total = sum(strata.map((stratum) => stratum.weight));
  const parts = strata.map((stratum) => partOf(stratum, stratum.weight / total));
  const fromPerHa = sum(parts.map((part) => part.share * part.meanFrom));
  const toPerHa = sum(parts.map((part) => part.share * part.meanTo));
  const lone = strata.filter((stratum) => stratum.from.length < 2 || stratum.to.length < 2);
  const reason: Reason | null =
    lone.length === 0
      ? null
      : { code: 'change-lone-station', parameters: { strata: lone.map((one) => one.name).join(', ') } };
  const pairs = sum(strata.map((stratum) => matchedValues(stratum.from, stratum.to).length));
  const contrast = (value: number, scaleFrom: number, scaleTo: number) =>
    contrastOf(value, reason === null ? spreadOf(parts, scaleFrom, scaleTo) : null, confidence);
  return {
    fromPerHa,
    toPerHa,
    pairs,
    difference: contrast(toPerHa - fromPerHa, 1, 1),
    logRatio:
      fromPerHa > 0 && toPerHa > 0
        ? contrast(Math.log(toPerHa / fromPerHa), 1 / fromPerHa, 1 / toPerHa)
        : null,
    reason,
  };
}

interface Part {
  readonly share: number;
  readonly meanFrom: number;
  readonly meanTo: number;
  readonly valuesFrom: readonly number[];
  readonly valuesTo: readonly number[];
  readonly matched: readonly (readonly [from: number, to: number])[];
}

function partOf({ from, to }: StratumOfTwo, share: number): Part {
  const valuesFrom = from.map((one) => one.valuePerHa);
  const valuesTo = to.map((one) => one.valuePerHa);
  const matched = matchedValues(from, to);
  return {
    share,
    meanFrom: mean(valuesFrom),
    meanTo: mean(valuesTo),
    valuesFrom,
    valuesTo,
    // One matched place tells no spread of pairs: it counts as two stations.
    matched: matched.length < 2 ? [] : matched,
  };
}

/** The values of the places that stand in both lists, each as earlier and later. */
export function matchedValues(
  from: readonly PlaceValue[],
  to: readonly PlaceValue[],
): readonly (readonly [from: number, to: number])[] {
  const later = new Map(to.flatMap((one) => (one.place === null ? [] : [[one.place, one.valuePerHa]])));
  return from.flatMap((one) => {
    const value = one.place === null ? undefined : later.get(one.place);
    return value === undefined ? [] : [[one.valuePerHa, value] as const];
  });
}

interface Spread {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

/** Variance of scaleTo x later - scaleFrom x earlier: sums over independent groups of stations, never below zero. */
function spreadOf(parts: readonly Part[], scaleFrom: number, scaleTo: number): Spread {
  const groups = parts.flatMap((part) => groupsOf(part, part.share * scaleFrom, part.share * scaleTo));
  const variance = sum(groups.map((group) => group.variance));
  const squares = sum(groups.map((group) => group.variance ** 2 / group.degreesOfFreedom));
  const all = sum(groups.map((group) => group.degreesOfFreedom));
  return { variance, degreesOfFreedom: squares === 0 ? all : variance ** 2 / squares };
}

/** Of one stratum: matched places as one value each, stations of the earlier survey alone, of the later alone. */
function groupsOf({ valuesFrom, valuesTo, matched }: Part, scaleFrom: number, scaleTo: number): Spread[] {
  const perFrom = scaleFrom / valuesFrom.length;
  const perTo = scaleTo / valuesTo.length;
  const single = (values: readonly number[], per: number) => ({
    variance: (values.length - matched.length) * per ** 2 * (sampleVariance(values) ?? 0),
    degreesOfFreedom: values.length - 1,
  });
  const pairs = {
    variance: matched.length * (sampleVariance(matched.map(([a, b]) => perTo * b - perFrom * a)) ?? 0),
    degreesOfFreedom: matched.length - 1,
  };
  return [
    ...(matched.length > 0 ? [pairs] : []),
    ...(valuesFrom.length > matched.length ? [single(valuesFrom, perFrom)] : []),
    ...(valuesTo.length > matched.length ? [single(valuesTo, perTo)] : []),
  ];
}

/** A value with its t interval and two-sided p value; without spread the value alone. */
export function contrastOf(value: number, spread: Spread | null, confidence: number): Contrast {
  if (spread === null)
    return { value, standardError: null, degreesOfFreedom: null, interval: null, pValue: null };
  const { variance, degreesOfFreedom } = spread;
  const root = Math.sqrt(variance);
  // What rounding leaves of nothing is nothing.
  const standardError = root <= 1e-9 * Math.abs(value) ? 0 : root;
  const q = twoSidedQuantile(confidence, degreesOfFreedom);
  const half = q === null || standardError === 0 ? null : q * standardError;
  return {
    value,
    standardError,
    degreesOfFreedom,
    interval: half === null ? null : [value - half, value + half],
    pValue: standardError === 0 ? null : 2 * tCdf(-Math.abs(value) / standardError, degreesOfFreedom),
  };
}

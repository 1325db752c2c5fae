/** What the raised lengths say: mean, share above a limit, quantiles and classes of the animals of the scope. */

import { weightedQuantile } from '../maths/quantiles.ts';
import { sum } from '../maths/variance.ts';
import type { RaisedLength, RaisedLengths } from './raised-lengths.ts';
import type { Interval, MeanEstimate } from './shapes.ts';
import { betaInterval, logitInterval } from './share-intervals.ts';
import { weightedRatio } from './weighted-ratio.ts';

/**
 * Mean length of the animals, in millimetres, with its standard error between stations.
 *
 * All searched stations are in the error, with nothing where none was seen; degrees of freedom are stations
 * minus strata. A stratum with one station: no standard error, with the reason.
 * Source: METHODS d; R svymean with stations as clusters and empty stations kept as a domain.
 */
export function raisedMeanLengthMm(raised: RaisedLengths): MeanEstimate {
  return ratioOver(raised, (length) => length.lengthMm);
}

export interface RaisedShare extends MeanEstimate {
  /** Logit interval; null where the share is 0 or 1 or has no spread. */
  readonly interval: Interval | null;
  /** Korn and Graubard's interval, as a check beside it. */
  readonly betaInterval: Interval | null;
}

/**
 * Share of the animals that are at least `limitMm` long, between 0 and 1.
 * Source: as for the mean; intervals as R svyciprop.
 */
export function raisedShareAtLeast(raised: RaisedLengths, limitMm: number, confidence = 0.95): RaisedShare {
  const share = ratioOver(raised, (length) => (length.lengthMm >= limitMm ? 1 : 0));
  const { standardError, degreesOfFreedom } = share;
  const value = Math.min(1, Math.max(0, share.value ?? 0));
  const design = { value, standardError, degreesOfFreedom: degreesOfFreedom ?? 0 };
  return {
    ...share,
    value,
    interval: logitInterval(design, confidence),
    betaInterval: betaInterval(design, raised.measured, confidence),
  };
}

/**
 * Lengths in millimetres below or at which the given shares of the animals lie; no interpolation.
 * Source: R svyquantile, qrule "math".
 */
export function raisedQuantilesMm(raised: RaisedLengths, probabilities: readonly number[]): number[] {
  const values = allLengths(raised).map((length) => ({ value: length.lengthMm, weight: length.stock }));
  return probabilities.map((probability) => weightedQuantile(values, probability)!);
}

export interface RaisedClass {
  readonly fromMm: number;
  /** Not included. */
  readonly toMm: number;
  readonly measured: number;
  readonly animals: number;
  readonly stock: number;
  readonly share: number;
}

/** Animals by length class; a length on an edge belongs to the class above. Lengths outside the edges are left out. */
export function raisedClasses(raised: RaisedLengths, edgesMm: readonly number[]): RaisedClass[] {
  const lengths = allLengths(raised);
  const total = sum(lengths.map((length) => length.stock));
  return edgesMm.slice(1).map((toMm, i) => {
    const fromMm = edgesMm[i]!;
    const inside = lengths.filter((length) => length.lengthMm >= fromMm && length.lengthMm < toMm);
    const stock = sum(inside.map((length) => length.stock));
    const measured = sum(inside.map((length) => length.measured));
    const animals = sum(inside.map((length) => length.animals));
    return { fromMm, toMm, measured, animals, stock, share: stock / total };
  });
}

/** Class edges of one width in millimetres, from the class of the shortest animal to that of the longest. */
export function classEdgesMm(raised: RaisedLengths, widthMm: number): number[] {
  if (!(widthMm > 0)) throw new Error('classEdgesMm requires a positive width');
  const lengths = allLengths(raised).map((length) => length.lengthMm);
  const shortest = lengths.reduce((a, b) => Math.min(a, b));
  const longest = lengths.reduce((a, b) => Math.max(a, b));
  const first = Math.floor(shortest / widthMm);
  const last = Math.floor(longest / widthMm) + 1;
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * widthMm);
}

/** The raised animals are the cluster totals of each station; the stock weights already hold the stratum weight. */
function ratioOver(raised: RaisedLengths, amount: (length: RaisedLength) => number): MeanEstimate {
  const { value, standardError, degreesOfFreedom, reason } = weightedRatio(
    raised.strata.map((stratum) => ({
      name: stratum.name,
      unitWeight: 1,
      numerators: stratum.stations.map((lengths) =>
        sum(lengths.map((length) => length.stock * amount(length))),
      ),
      denominators: stratum.stations.map((lengths) => sum(lengths.map((length) => length.stock))),
      populationUnits: null,
    })),
  );
  return { value, standardError, degreesOfFreedom, reason };
}

function allLengths(raised: RaisedLengths): RaisedLength[] {
  return raised.strata.flatMap((stratum) => stratum.stations.flat());
}

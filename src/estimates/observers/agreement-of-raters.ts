import { betaQuantile } from '../../maths/distributions.ts';
import { mean, sum } from '../../maths/variance.ts';
import type { Interval } from '../shapes.ts';

export interface AgreementOfRaters {
  /** Rows: belts. */
  readonly subjects: number;
  readonly raters: number;
  /** ICC(1,1): each belt by other divers. */
  readonly oneWay: number;
  /** ICC(2,1), absolute agreement of single divers: the one to report. */
  readonly absolute: number;
  readonly absoluteInterval: Interval;
  /** ICC(3,1): a diver who always counts half as many still agrees. */
  readonly consistency: number;
  /** The same three for the mean of all divers: ICC(1,k), (2,k), (3,k); null where the formula divides by nothing. */
  readonly oneWayOfMean: number | null;
  readonly absoluteOfMean: number | null;
  readonly consistencyOfMean: number | null;
}

/**
 * Intraclass correlation of divers who counted the same belts, all six forms of Shrout and Fleiss.
 *
 * Question: how much of the spread of single counts lies between belts, and not between divers? 1 is agreement,
 * 0 none; below 0 the divers differ more than the belts do. From the mean squares of a table of belts by divers.
 * Assumes belts drawn from those of the survey: on belts that are all alike even good divers get a low value.
 * The interval of ICC(2,1) rests on Satterthwaite's approximation to F.
 *
 * Null under 3 belts, under 2 divers, or when every count is the same. Throws on a table with holes.
 * Source: Shrout and Fleiss 1979, Psychological Bulletin 86:420 (table read; interval formula from memory).
 */
export function agreementOfRaters(
  ratings: readonly (readonly number[])[],
  confidence = 0.95,
): AgreementOfRaters | null {
  const n = ratings.length;
  const k = ratings[0]?.length ?? 0;
  if (ratings.some((row) => row.length !== k)) throw new Error('agreementOfRaters requires a full table');
  if (n < 3 || k < 2) return null;
  const { between, raters, error, within } = meanSquares(ratings);
  if (between + raters + error === 0) return null;
  // Rows may differ in nothing but a constant; then single forms divide nothing by nothing.
  if (between === 0 && error === 0) return null;
  const absolute = (between - error) / (between + (k - 1) * error + (k * (raters - error)) / n);
  return {
    subjects: n,
    raters: k,
    oneWay: (between - within) / (between + (k - 1) * within),
    absolute,
    absoluteInterval: intervalOfAbsolute({ n, k, between, raters, error, absolute, confidence }),
    consistency: (between - error) / (between + (k - 1) * error),
    oneWayOfMean: over(between - within, between),
    absoluteOfMean: over(between - error, between + (raters - error) / n),
    consistencyOfMean: over(between - error, between),
  };
}

/** Null when the divisor is nothing but rounding: belts all alike. */
function over(above: number, below: number): number | null {
  return below <= 1e-12 * Math.abs(above) ? null : above / below;
}

interface MeanSquares {
  readonly between: number;
  readonly raters: number;
  readonly error: number;
  readonly within: number;
}

function meanSquares(ratings: readonly (readonly number[])[]): MeanSquares {
  const n = ratings.length;
  const k = ratings[0]!.length;
  const all = ratings.flat();
  const grand = mean(all);
  const squares = (values: readonly number[]) => sum(values.map((value) => (value - grand) ** 2));
  const ofRows = k * squares(ratings.map((row) => mean(row)));
  const ofColumns = n * squares(ratings[0]!.map((_, j) => mean(ratings.map((row) => row[j]!))));
  const total = squares(all);
  const rest = Math.max(0, total - ofRows - ofColumns);
  return {
    between: ofRows / (n - 1),
    raters: ofColumns / (k - 1),
    error: rest < total * 1e-14 ? 0 : rest / ((n - 1) * (k - 1)),
    within: (total - ofRows) / (n * (k - 1)),
  };
}

function intervalOfAbsolute(from: {
  readonly n: number;
  readonly k: number;
  readonly between: number;
  readonly raters: number;
  readonly error: number;
  readonly absolute: number;
  readonly confidence: number;
}): Interval {
  const { n, k, between, raters, error, absolute, confidence } = from;
  // Divers who agree to the last animal leave no error to divide by.
  if (1 - absolute < 1e-12) return [1, 1];
  const a = (k * absolute) / (n * (1 - absolute));
  const b = 1 + (k * absolute * (n - 1)) / (n * (1 - absolute));
  const degrees =
    (a * raters + b * error) ** 2 / ((a * raters) ** 2 / (k - 1) + (b * error) ** 2 / ((n - 1) * (k - 1)));
  // Below divers − 1, or 0/0, only where a negative agreement makes a weight negative: there the rule is out of its depth.
  const atLeast = Number.isNaN(degrees) ? k - 1 : Math.max(degrees, k - 1);
  const tail = (1 + confidence) / 2;
  const down = fQuantile(tail, n - 1, atLeast);
  const up = fQuantile(tail, atLeast, n - 1);
  const noise = k * raters + (k * n - k - n) * error;
  return [
    (n * (between - down * error)) / (down * noise + n * between),
    (n * (up * between - error)) / (noise + n * up * between),
  ];
}

function fQuantile(probability: number, above: number, below: number): number {
  const x = betaQuantile(probability, { alpha: above / 2, beta: below / 2 });
  return (below * x) / (above * (1 - x));
}

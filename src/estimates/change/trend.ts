import { chiSquareCdf, tCdf, twoSidedQuantile } from '../../maths/distributions.ts';
import { sum } from '../../maths/variance.ts';
import type { Interval } from '../shapes.ts';

/** One survey of the row: its moment in years, its density and how sure it is. */
export interface TrendPoint {
  readonly year: number;
  readonly densityPerHa: number;
  readonly cv: number;
}

export interface Trend {
  /** Slope of ln density, per year. */
  readonly slopePerYear: number;
  readonly interceptLog: number;
  /** From the scatter of the surveys around the line (n - 2 degrees of freedom). */
  readonly standardErrorOfScatter: number;
  /** From the surveys' own standard errors, with what is scattered beyond them added. */
  readonly standardErrorKnown: number;
  readonly degreesOfFreedom: number;
  readonly pValue: number;
  readonly percentPerYear: number;
  readonly intervalOfScatterPercent: Interval;
  readonly intervalKnownPercent: Interval;
  /** The wider of the two: with few surveys either may look too sure by luck. */
  readonly intervalPercent: Interval;
  /** Change from the first to the last survey along the line, percent. */
  readonly wholePercent: number;
  readonly heterogeneity: { readonly q: number; readonly pValue: number; readonly tauSquared: number };
}

/**
 * Percent per year over three or more surveys: a line through the logarithms of the densities, weighted by
 * 1 / ln(1 + CV^2).
 *
 * The interval is the wider of two: from the scatter around the line with t(n - 2), and from the known variances with
 * the normal quantile (their tau^2 by moments added where the surveys scatter more than their errors allow).
 * Assumes independent surveys with comparable methods and a constant rate. Throws below three surveys or with a zero
 * density, which has no logarithm: the caller says so in words.
 * Source: weighted least squares and moment meta-regression; vector f5.
 */
export function trendOf(points: readonly TrendPoint[], confidence: number): Trend {
  if (points.length < 3) throw new Error(`trendOf requires three surveys, got ${points.length}`);
  if (points.some((point) => !(point.densityPerHa > 0 && point.cv > 0))) {
    throw new Error('trendOf requires positive densities with positive CVs');
  }
  if (new Set(points.map((point) => point.year)).size < 2) {
    throw new Error('trendOf requires surveys at different times');
  }
  const variances = points.map((point) => Math.log1p(point.cv ** 2));
  const fixed = weightedLine(
    points,
    variances.map((v) => 1 / v),
  );
  const df = points.length - 2;
  const standardErrorOfScatter = Math.sqrt((fixed.residualSum / df) * fixed.slopeVariance);
  const tauSquared = Math.max(0, (fixed.residualSum - df) / fixed.traceP);
  const random = weightedLine(
    points,
    variances.map((v) => 1 / (v + tauSquared)),
  );
  const standardErrorKnown = Math.sqrt(random.slopeVariance);
  const scatter = percentInterval(fixed.slope, standardErrorOfScatter * twoSidedQuantile(confidence, df)!);
  const known = percentInterval(random.slope, standardErrorKnown * twoSidedQuantile(confidence, null)!);
  const span = Math.max(...points.map((p) => p.year)) - Math.min(...points.map((p) => p.year));
  return {
    slopePerYear: fixed.slope,
    interceptLog: fixed.intercept,
    standardErrorOfScatter,
    standardErrorKnown,
    degreesOfFreedom: df,
    pValue: 2 * tCdf(-Math.abs(fixed.slope) / standardErrorOfScatter, df),
    percentPerYear: 100 * Math.expm1(fixed.slope),
    intervalOfScatterPercent: scatter,
    intervalKnownPercent: known,
    intervalPercent: [Math.min(scatter[0], known[0]), Math.max(scatter[1], known[1])],
    wholePercent: 100 * Math.expm1(fixed.slope * span),
    heterogeneity: {
      q: fixed.residualSum,
      pValue: 1 - chiSquareCdf(fixed.residualSum, df),
      tauSquared,
    },
  };
}

function percentInterval(slope: number, half: number): Interval {
  return [100 * Math.expm1(slope - half), 100 * Math.expm1(slope + half)];
}

/** Weighted least squares of ln density on the year; the trace of P is that of the moment estimator of tau^2. */
function weightedLine(points: readonly TrendPoint[], weights: readonly number[]) {
  const w = sum(weights);
  const meanYear = sum(points.map((p, i) => weights[i]! * p.year)) / w;
  const logs = points.map((p) => Math.log(p.densityPerHa));
  const meanLog = sum(logs.map((y, i) => weights[i]! * y)) / w;
  const sxx = sum(points.map((p, i) => weights[i]! * (p.year - meanYear) ** 2));
  const slope = sum(points.map((p, i) => weights[i]! * (p.year - meanYear) * (logs[i]! - meanLog))) / sxx;
  const residual = (i: number) => logs[i]! - meanLog - slope * (points[i]!.year - meanYear);
  const leverage = (i: number) => 1 / w + (points[i]!.year - meanYear) ** 2 / sxx;
  return {
    slope,
    intercept: meanLog - slope * meanYear,
    residualSum: sum(points.map((_, i) => weights[i]! * residual(i) ** 2)),
    slopeVariance: 1 / sxx,
    traceP: sum(weights.map((weight, i) => weight - weight ** 2 * leverage(i))),
  };
}

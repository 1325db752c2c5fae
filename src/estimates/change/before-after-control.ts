import { mean, sampleVariance, sum } from '../../maths/variance.ts';
import { type Contrast, contrastOf } from './two-means.ts';

/** Values per hectare of the stations of one cell: where (impact or control) and when (before or after). */
export interface FourCells {
  readonly impactBefore: readonly number[];
  readonly impactAfter: readonly number[];
  readonly controlBefore: readonly number[];
  readonly controlAfter: readonly number[];
}

export interface BeforeAfterControl {
  /** (impact after - before) - (control after - before), animals per hectare. */
  readonly contrast: Contrast;
  /** Logarithm of the ratio of ratios; null where a mean is zero. */
  readonly logRatioOfRatios: Contrast | null;
}

/**
 * Did the place change more than its control did? Contrast of four means, each with its own variance; Satterthwaite's
 * degrees of freedom. In logarithms it is the ratio of two ratios.
 *
 * One control cannot prove cause: anything else that happened to one of the two places alone looks the same.
 * Null standard error where a cell has fewer than two stations.
 * Source: Stewart-Oaten and Murdoch 1986, Underwood 1994 (from memory); vector f4.
 */
export function beforeAfterControl(cells: FourCells, confidence: number): BeforeAfterControl {
  const parts = [cells.impactAfter, cells.impactBefore, cells.controlAfter, cells.controlBefore].map(
    (values) => ({
      mean: mean(values),
      variance: (sampleVariance(values) ?? Number.NaN) / values.length,
      stations: values.length,
    }),
  );
  const means = parts.map((part) => part.mean);
  const signs = [1, -1, -1, 1];
  const isLone = parts.some((part) => part.stations < 2);
  const spread = (scales: readonly number[]) => {
    if (isLone) return null;
    const own = parts.map((part, i) => part.variance * scales[i]! ** 2);
    const variance = sum(own);
    const squares = sum(own.map((one, i) => one ** 2 / (parts[i]!.stations - 1)));
    const all = sum(parts.map((part) => part.stations - 1));
    return { variance, degreesOfFreedom: squares === 0 ? all : variance ** 2 / squares };
  };
  const isPositive = means.every((one) => one > 0);
  const combined = (values: readonly number[]) => sum(values.map((value, i) => signs[i]! * value));
  return {
    contrast: contrastOf(combined(means), spread([1, 1, 1, 1]), confidence),
    logRatioOfRatios: isPositive
      ? contrastOf(combined(means.map(Math.log)), spread(means.map((one) => 1 / one)), confidence)
      : null,
  };
}

import { twoSidedQuantile } from '../../maths/distributions.ts';
import type { Interval } from '../shapes.ts';
import type { PointEstimate } from './point-estimate.ts';

/**
 * Interval of the stock in animals: the interval of the density times the area.
 *
 * For a site or zone the area itself is only estimated from the stations that fell inside. Its share of
 * the stock's relative variance (that of the total less that of the mean) widens both ends on the log
 * scale, as independent errors add. Null where the density has no interval or the area is unknown.
 */
export function stockInterval(
  point: PointEstimate,
  intervalPerHa: Interval | null,
  confidence: number,
): Interval | null {
  const { density, stock, areaHa } = point;
  if (intervalPerHa === null || areaHa === null || density.value === null) return null;
  const plain: Interval = [intervalPerHa[0] * areaHa, intervalPerHa[1] * areaHa];
  const areaVariance = Math.max(0, relativeVariance(stock) - relativeVariance(density));
  if (areaVariance < 1e-12 || intervalPerHa[0] <= 0) return plain;
  const total = density.value * areaHa;
  const half = twoSidedQuantile(confidence, null)! * Math.sqrt(areaVariance);
  const below = Math.hypot(Math.log(total / plain[0]), half);
  const above = Math.hypot(Math.log(plain[1] / total), half);
  return [total * Math.exp(-below), total * Math.exp(above)];
}

function relativeVariance(estimate: PointEstimate['stock']): number {
  if (estimate === null || estimate.value === null || estimate.value === 0 || estimate.standardError === null)
    return 0;
  return (estimate.standardError / estimate.value) ** 2;
}

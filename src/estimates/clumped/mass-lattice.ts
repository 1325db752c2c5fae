/**
 * Finds where a smooth log height over log density has its mass, and reads it there.
 *
 * All readings lie on one fixed lattice of log densities (whole multiples of 1/80), so that what is
 * computed for one species serves the next. The lattice is read first in steps of 0.4; then steps are
 * halved, only where the mass is, until the hill is seen by enough points.
 */

export const LATTICE_STEP_LOG = 1 / 80;
const FIRST_STRIDE = 32;
/** Heights this far below the greatest (in logarithms) are no longer looked at. */
const DEPTH_LOG = 17;
/** A normal hill is within 4.5 of its top over three standard deviations to either side. */
const SHOULDER_LOG = 4.5;
const POINTS_ON_THE_HILL = 12;

export interface LatticeReading {
  readonly first: number;
  readonly stride: number;
  readonly logHeights: Float64Array;
}

/** Readings of `logHeightAt(index)` between two lattice indices, dense enough to interpolate. */
export function readWhereTheMassIs(
  logHeightAt: (index: number) => number,
  lowest: number,
  highest: number,
): LatticeReading {
  let stride = FIRST_STRIDE;
  let from = Math.floor(lowest / stride) * stride;
  let to = Math.ceil(highest / stride) * stride;
  for (;;) {
    const logHeights = new Float64Array((to - from) / stride + 1).map((_, i) =>
      logHeightAt(from + i * stride),
    );
    const greatest = logHeights.reduce((a, b) => Math.max(a, b), -Infinity);
    const onTheHill = logHeights.filter((height) => height > greatest - SHOULDER_LOG).length;
    if (stride === 1 || onTheHill >= POINTS_ON_THE_HILL) return { first: from, stride, logHeights };
    const inside = (height: number) => height > greatest - DEPTH_LOG;
    const firstInside = Math.max(0, logHeights.findIndex(inside) - 2);
    const lastInside = Math.min(logHeights.length - 1, logHeights.findLastIndex(inside) + 2);
    to = from + lastInside * stride;
    from += firstInside * stride;
    stride /= 2;
  }
}

/** The reading between lattice points, by the cubic through the four nearest. */
export function interpolated(reading: LatticeReading, logDensity: number): number {
  const { logHeights, first, stride } = reading;
  const position = (logDensity / LATTICE_STEP_LOG - first) / stride;
  const i = Math.min(logHeights.length - 3, Math.max(1, Math.floor(position)));
  const t = position - i;
  return (
    (-t * (t - 1) * (t - 2) * logHeights[i - 1]!) / 6 +
    ((t + 1) * (t - 1) * (t - 2) * logHeights[i]!) / 2 -
    ((t + 1) * t * (t - 2) * logHeights[i + 1]!) / 2 +
    ((t + 1) * t * (t - 1) * logHeights[i + 2]!) / 6
  );
}

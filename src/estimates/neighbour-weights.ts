import type { SpreadStations } from './local-mean.ts';

/** The weight of one station's value in the local mean of another. */
export interface NeighbourWeight {
  readonly of: number;
  readonly neighbour: number;
  readonly weight: number;
}

/**
 * Weights of the neighbours in each station's local mean; those of a station add up to 1, and those given by it too.
 *
 * Neighbours are the four nearest, the station itself among them, made mutual. The weight falls evenly with the rank
 * of the distance, over the inclusion probability; then the smallest change (least squares) that makes rows and
 * columns add up to one. Null when a distance is not a number. Cost: n^2 log n.
 * Source: Stevens and Olsen 2003 (algorithm read as a published script; re-implemented).
 */
export function neighbourWeights(
  stations: Omit<SpreadStations, 'values'>,
): readonly NeighbourWeight[] | null {
  const { inclusion, distance } = stations;
  const count = inclusion.length;
  const all = Array.from({ length: count }, (_, i) => i);
  const distances = all.map((i) => Float64Array.from(all, (j) => (i === j ? 0 : distance(i, j))));
  if (distances.some((row) => row.some((d) => !Number.isFinite(d)))) return null;
  const byRank = (i: number, some: readonly number[]) =>
    // A station is its own nearest, even where another stands on the same spot.
    [...some].sort((a, b) => rank(i, a, distances) - rank(i, b, distances) || a - b);
  const nearest = all.map((i) => byRank(i, all).slice(0, neighbourhood));
  const mutual = all.map((i) =>
    byRank(
      i,
      all.filter((j) => nearest[i]!.includes(j) || nearest[j]!.includes(i)),
    ),
  );
  const tapered = mutual.map((neighbours) => {
    const raw = neighbours.map((j, r) => (1 - r / neighbours.length) / inclusion[j]!);
    const total = raw.reduce((a, b) => a + b, 0);
    return raw.map((weight) => weight / total);
  });
  return balanced(mutual, tapered);
}

const neighbourhood = 4;

function rank(i: number, j: number, distances: readonly Float64Array[]): number {
  return i === j ? -1 : distances[i]![j]!;
}

/** Adds to each weight half the sum of a row and a column multiplier, chosen so that both sums become one. */
function balanced(
  mutual: readonly (readonly number[])[],
  tapered: readonly (readonly number[])[],
): readonly NeighbourWeight[] {
  const count = mutual.length;
  const missing = new Float64Array(count).fill(1);
  mutual.forEach((neighbours, i) => {
    neighbours.forEach((j, r) => {
      missing[j] = missing[j]! - tapered[i]![r]!;
    });
  });
  const spread = (x: Float64Array) =>
    Float64Array.from(mutual, (neighbours) => neighbours.reduce((total, j) => total + x[j]!, 0) / 2);
  // Rows must stay at one: their multiplier is minus the mean of the column multipliers around them.
  const rowsFrom = (column: Float64Array) =>
    spread(column).map((value, i) => (-2 * value) / mutual[i]!.length);
  const left = (column: Float64Array) => {
    const through = spread(rowsFrom(column));
    return column.map((value, i) => (value * mutual[i]!.length) / 2 + through[i]!);
  };
  const column = leastNormSolution(left, missing);
  const row = rowsFrom(column);
  return mutual.flatMap((neighbours, i) =>
    neighbours.map((j, r) => ({
      of: i,
      neighbour: j,
      weight: tapered[i]![r]! + (row[i]! + column[j]!) / 2,
    })),
  );
}

/**
 * The shortest solution of a consistent system with a symmetric matrix that has no negative direction, by conjugate
 * gradients from zero: what a pseudo-inverse gives, without a matrix.
 */
function leastNormSolution(apply: (x: Float64Array) => Float64Array, wanted: Float64Array): Float64Array {
  const x = new Float64Array(wanted.length);
  const residual = Float64Array.from(wanted);
  let direction = Float64Array.from(wanted);
  let squared = dot(residual, residual);
  const enough = squared * 1e-30;
  for (let step = 0; step < 4 * wanted.length && squared > enough; step++) {
    const image = apply(direction);
    const along = dot(direction, image);
    if (!(along > 0)) break;
    const length = squared / along;
    for (let i = 0; i < x.length; i++) {
      x[i] = x[i]! + length * direction[i]!;
      residual[i] = residual[i]! - length * image[i]!;
    }
    const next = dot(residual, residual);
    const turn = next / squared;
    direction = residual.map((value, i) => value + turn * direction[i]!);
    squared = next;
  }
  return x;
}

function dot(a: Float64Array, b: Float64Array): number {
  let total = 0;
  for (let i = 0; i < a.length; i++) total += a[i]! * b[i]!;
  return total;
}

import { sum } from '../../maths/variance.ts';
import { nearestPoints } from './nearest-points.ts';

/**
 * Spatial balance of chosen places, no unit: 0 when every station stands for the same amount of ground.
 *
 * Each possible place gives its inclusion probability to the nearest chosen one (shared where several are equally
 * near); the measure is the mean of (sum received - 1)^2. Compare it with that of simple random samples of the same
 * ground: alone the number means little. Throws without a chosen place.
 * Source: Stevens and Olsen 2004 (from memory); computed with R.
 */
export function voronoiBalance(
  places: { readonly points: readonly (readonly number[])[]; readonly inclusion: ArrayLike<number> },
  chosen: readonly (readonly number[])[],
): number {
  if (chosen.length === 0) throw new Error('voronoiBalance requires at least one chosen place');
  const tree = nearestPoints(chosen);
  const received = new Float64Array(chosen.length);
  places.points.forEach((point, i) => {
    const owners = tree.nearest(point);
    for (const owner of owners) received[owner] = received[owner]! + places.inclusion[i]! / owners.length;
  });
  return sum(received.map((share) => (share - 1) ** 2)) / chosen.length;
}

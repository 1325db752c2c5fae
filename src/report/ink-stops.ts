/** From belief to ink: how dark the band is at each place of the axis. */

import type { Belief } from '../estimates/answers.ts';
import type { DensityAxis } from './density-axis.ts';

/** The darkest a band gets, so that the tick can still be seen on it. */
const darkest = 0.82;
const stopCount = 48;

/** Ink between 0 and 1 at even steps across the axis; none outside the densities that were considered. */
export function inkStops(
  belief: Belief,
  axis: Pick<DensityAxis, 'at'>,
): { readonly at: number; readonly ink: number }[] {
  const places = belief.densityPerHa.map(axis.at);
  return Array.from({ length: stopCount + 1 }, (_, i) => {
    const at = i / stopCount;
    return { at, ink: darkest * weightAt(at, places, belief.weight) };
  });
}

/** The density the counts speak for most. */
export function darkestPerHa({ densityPerHa, weight }: Belief): number {
  return densityPerHa[weight.indexOf(Math.max(...weight))] ?? 0;
}

function weightAt(at: number, places: readonly number[], weights: readonly number[]): number {
  const after = places.findIndex((place) => place >= at);
  if (after === -1) return 0;
  if (after === 0) return places[0] === at ? weights[0]! : 0;
  const low = places[after - 1]!;
  const high = places[after]!;
  const share = high === low ? 0 : (at - low) / (high - low);
  return weights[after - 1]! + share * (weights[after]! - weights[after - 1]!);
}

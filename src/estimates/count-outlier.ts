import { negativeBinomialQuantile } from '../maths/negative-binomial-quantile.ts';
import { type CountsOverAreas, negativeBinomialScreen } from './negative-binomial-fit.ts';

export interface CountOutlier {
  /** Which station, as it stands in the counts. */
  readonly index: number;
  readonly animals: number;
  /** The most that the other stations let one expect there: upper 99.9 % of their negative binomial. */
  readonly upperCount: number;
  readonly clumpingK: number | null;
}

/**
 * The one station of a stratum whose count is hard to believe beside the others; null when none is.
 *
 * The station of the highest density is the suspect. It is left out, a negative binomial is fitted to the others by
 * maximum likelihood, and the suspect's count is set against the upper 99.9 % of that population on its own area.
 * The suspect stays out of its own fit, else one slip of the pen would make the population clumped enough to hold it.
 *
 * Of the best fit alone one clean stratum in seven would be asked about: the fit of few stations is uncertain, and the
 * suspect is the highest of all. So the count must also exceed the upper 99.9 % of the population that the 95 % ends
 * of the fit still allow: k at the lower end of its profile interval, the density at the upper end of its log-normal one. The false-alarm rate by simulation is
 * in docs/methods/checks.md.
 *
 * Needs 8 other stations, 3 of them with the species: under that a fit says nothing about the tail. Under 10 animals
 * nothing is asked (ours): so few are counted at one glance, and no answer moves by them.
 * Cost: two passes where moments already reach the suspect, else one fit of some 600 passes.
 * Source: negative binomial of station counts, Bliss and Fisher 1953 (from memory); 99.9 % is JOB's error 22.
 */
export function countOutlier(counts: CountsOverAreas): CountOutlier | null {
  const index = densest(counts);
  const others = without(counts, index);
  const positive = others.animals.filter((animals) => animals > 0).length;
  if (others.animals.length < leastOthers || positive < leastPositive) return null;
  const suspect = { animals: counts.animals[index]!, areaHa: counts.areasHa[index]! };
  if (suspect.animals < leastAnimals || isWithinReach(suspect, others)) return null;
  const fit = negativeBinomialScreen(others);
  if (fit === null) return null;
  const upperCount = upperCountOf(fit.densityPerHa, fit.clumpingK, suspect);
  if (suspect.animals <= upperCount) return null;
  const highestPerHa = fit.densityPerHa * Math.exp(1.96 * coefficientOfVariation(fit, others));
  if (suspect.animals <= upperCountOf(highestPerHa, fit.lowestK, suspect)) return null;
  return { index, animals: suspect.animals, upperCount, clumpingK: fit.clumpingK };
}

function upperCountOf(
  densityPerHa: number,
  clumpingK: number | null,
  { animals, areaHa }: { readonly animals: number; readonly areaHa: number },
): number {
  return negativeBinomialQuantile({ mean: densityPerHa * areaHa, clumpingK }, upperShare, animals);
}

/** Of the fitted density, on the log scale: squared, (1 / mean + 1 / k) / n. */
function coefficientOfVariation(
  { clumpingK }: { readonly clumpingK: number | null },
  { animals }: CountsOverAreas,
): number {
  const total = animals.reduce((sum, one) => sum + one, 0);
  return Math.sqrt(1 / total + (clumpingK === null ? 0 : 1 / (clumpingK * animals.length)));
}

const upperShare = 0.999;
const leastOthers = 8;
const leastPositive = 3;
const leastAnimals = 10;

function densest({ animals, areasHa }: CountsOverAreas): number {
  let best = 0;
  for (let i = 1; i < animals.length; i++) {
    if (animals[i]! * areasHa[best]! > animals[best]! * areasHa[i]!) best = i;
  }
  return best;
}

function without(counts: CountsOverAreas, index: number): CountsOverAreas {
  return {
    animals: counts.animals.filter((_, i) => i !== index),
    areasHa: counts.areasHa.filter((_, i) => i !== index),
  };
}

/** A quick look that spares most fits: by moments alone, and less doubt than the fit allows, the count is in reach. */
function isWithinReach(
  suspect: { readonly animals: number; readonly areaHa: number },
  { animals, areasHa }: CountsOverAreas,
): boolean {
  const total = animals.reduce((sum, one) => sum + one, 0);
  const perHa = total / areasHa.reduce((sum, one) => sum + one, 0);
  const mean = total / animals.length;
  const excess =
    animals.reduce((sum, one, i) => sum + (one - perHa * areasHa[i]!) ** 2, 0) / (animals.length - 1) - mean;
  if (excess <= 0) return false;
  const clumpingK = (0.8 * mean ** 2) / excess;
  // One standard error of the density upward, where the fit will allow two: simulated, it spares 3 outliers of 6 600.
  const highestPerHa = perHa * Math.exp(coefficientOfVariation({ clumpingK }, { animals, areasHa }));
  const population = { mean: highestPerHa * suspect.areaHa, clumpingK };
  return negativeBinomialQuantile(population, upperShare, suspect.animals) >= suspect.animals;
}

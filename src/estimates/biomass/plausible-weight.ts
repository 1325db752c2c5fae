/**
 * Lightest and heaviest body of a length that nature allows, in grams.
 *
 * A cube of seawater of that edge bounds every animal that is no wider or higher than it is long; a body a thousand
 * times lighter would be a thread. The bounds are our own choice, wide on purpose: a pair for centimetres read as one
 * for millimetres leaves them at once, by a factor of 10^b, and 1000 to one is what g for kg does.
 */
export function possibleWeightsG(lengthMm: number): {
  readonly lightestG: number;
  readonly heaviestG: number;
} {
  const cubeG = (lengthMm ** 3 / 1000) * seawaterDensity;
  return { lightestG: cubeG / 1000, heaviestG: cubeG };
}

/** Grams per cubic centimetre. */
const seawaterDensity = 1.025;

export function isPossibleWeight(lengthMm: number, weightG: number): boolean {
  const { lightestG, heaviestG } = possibleWeightsG(lengthMm);
  return weightG >= lightestG && weightG <= heaviestG;
}

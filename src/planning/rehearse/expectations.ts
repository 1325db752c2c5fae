import { sum } from '../../maths/variance.ts';
import type { RehearsalSpecies, RehearsalStratum } from './rehearsal-request.ts';

/** What formulas alone say of a planned survey of one species. */
export interface Expectations {
  /** Expected density over all strata, weighted by area. */
  readonly densityPerHa: number;
  readonly expectedAnimals: number;
  /** Standard error over density, from the expected counts and their clumping. */
  readonly expectedCv: number;
  /** Chance that not one animal is met: the product over stations of (1 + mean / k)^-k. */
  readonly probabilityNoneSeen: number;
}

/**
 * Expected density, animals, CV and the chance of an empty survey, for negative binomial counts.
 *
 * A count has variance mean + mean^2 / k (k null: mean); strata are weighted by area. Source: Cochran 1977, equation
 * 5.6, and the negative binomial (textbook, from memory).
 */
export function expectations(strata: readonly RehearsalStratum[], species: RehearsalSpecies): Expectations {
  const whole = sum(strata.map((stratum) => stratum.areaHa));
  const { clumpingK } = species;
  const rows = strata.map((stratum, h) => {
    const searchedHa = stratum.searchedAreaM2 / 10_000;
    const mean = species.densitiesPerHa[h]! * searchedHa;
    const share = stratum.areaHa / whole;
    const varianceOfCount = mean + (clumpingK === null ? 0 : mean ** 2 / clumpingK);
    return {
      density: share * species.densitiesPerHa[h]!,
      animals: mean * stratum.stations,
      variance: ((share / searchedHa) ** 2 * varianceOfCount) / stratum.stations,
      logNone: -stratum.stations * (clumpingK === null ? mean : clumpingK * Math.log1p(mean / clumpingK)),
    };
  });
  const densityPerHa = sum(rows.map((row) => row.density));
  return {
    densityPerHa,
    expectedAnimals: sum(rows.map((row) => row.animals)),
    expectedCv: Math.sqrt(sum(rows.map((row) => row.variance))) / densityPerHa,
    probabilityNoneSeen: Math.exp(sum(rows.map((row) => row.logNone))),
  };
}

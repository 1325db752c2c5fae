/**
 * How rich each station is in each species, before a single animal is drawn: its rate over the mean of
 * its patch, gamma with shape k and mean 1. With Poisson belts around it, counts of stations are negative
 * binomial with that k.
 *
 * A fixed station keeps four fifths of its gamma shape from survey to survey and draws the last fifth
 * afresh. Sums of gammas of one scale are gamma, so every survey alone is as clumped as the table says, and
 * the correlation between any two surveys is exactly 0.8 on the scale of the rates themselves.
 */

import type { SeededRandom } from '../../maths/random.ts';
import type { Animal, SurveyYear } from './animal.ts';
import { animals } from './animals.ts';
import { drawGamma } from './chance.ts';
import type { ChosenPlace } from './chosen-places.ts';

export const correlationOfFixed = 0.8;

/** Rate of each species over its mean, in the order of `animals`, by survey and station code. */
export type StationRates = ReadonlyMap<SurveyYear, ReadonlyMap<string, readonly number[]>>;

export function drawStationRates(
  places: ReadonlyMap<SurveyYear, readonly ChosenPlace[]>,
  random: SeededRandom,
): StationRates {
  const kept = new Map<string, readonly number[]>();
  const rates = new Map<SurveyYear, ReadonlyMap<string, readonly number[]>>();
  for (const [year, chosen] of places) {
    const ofYear = new Map<string, readonly number[]>();
    for (const place of chosen) {
      if (place.selection === 'random') ofYear.set(place.code, drawShares(1, random));
      else {
        const lasting = kept.get(place.code) ?? drawShares(correlationOfFixed, random);
        kept.set(place.code, lasting);
        const fresh = drawShares(1 - correlationOfFixed, random);
        ofYear.set(
          place.code,
          lasting.map((rate, i) => rate + fresh[i]!),
        );
      }
    }
    rates.set(year, ofYear);
  }
  return rates;
}

function drawShares(shareOfShape: number, random: SeededRandom): readonly number[] {
  return animals.map(({ clumpingK }: Animal) => drawGamma(shareOfShape * clumpingK, random) / clumpingK);
}

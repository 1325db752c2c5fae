/**
 * Animals that were weighed on board in 2026: the first ones measured at their station.
 * Weights follow an invented curve and scatter by an eighth, so that a length-weight line can be fitted.
 */

import type { SeededRandom } from '../../maths/random.ts';
import type { TallyRow, WeightRow } from '../../survey/table-rows.ts';
import { animals } from './animals.ts';
import { drawNormal } from './chance.ts';
import { surveyName } from './survey-words.ts';

interface Curve {
  /** Live weight at the mean length of the species. */
  readonly typicalG: number;
  readonly exponent: number;
  readonly perStation: number;
}

const curves: Readonly<Record<string, Curve>> = {
  'Holothuria atra': { typicalG: 150, exponent: 2.3, perStation: 4 },
  'Stichopus chloronotus': { typicalG: 140, exponent: 2.2, perStation: 5 },
  'Holothuria scabra': { typicalG: 260, exponent: 2.5, perStation: 12 },
  'Rochia nilotica': { typicalG: 250, exponent: 2.9, perStation: 4 },
};

const scatter = 0.125;

export function weighAnimals(tallies: readonly TallyRow[], random: SeededRandom): WeightRow[] {
  const weighed = new Map<string, number>();
  return tallies.flatMap((tally) => {
    const curve = curves[tally.species];
    if (tally.survey !== surveyName(2026) || tally.swim !== 1 || curve === undefined) return [];
    const key = `${tally.station} ${tally.species}`;
    const before = weighed.get(key) ?? 0;
    // A contracted animal does not belong on a line through relaxed ones.
    const relaxed = tally.lengths.filter((length) => length.measure !== 'body contracted');
    const taken = relaxed.slice(0, curve.perStation - before);
    weighed.set(key, before + taken.length);
    return taken.map(({ lengthMm }): WeightRow => {
      const weightG = weigh(tally.species, lengthMm, curve, random);
      const { survey, station, species } = tally;
      return { survey, station, species, lengthMm, weightG, state: 'live', drainMinutes: 5 };
    });
  });
}

function weigh(species: string, lengthMm: number, curve: Curve, random: SeededRandom): number {
  const meanMm = animals.find((animal) => animal.name === species)!.lengthMm.mean;
  const logRatio = curve.exponent * Math.log(lengthMm / meanMm) + scatter * drawNormal(random);
  return Math.max(1, Math.round(curve.typicalG * Math.exp(logRatio)));
}

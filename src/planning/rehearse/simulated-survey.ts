/** One planned survey carried out in the machine, and estimated as the report would. */

import type { StationCount } from '../../estimates/clumped/station-count.ts';
import type { MeanEstimate } from '../../estimates/shapes.ts';
import { stratifiedMean } from '../../estimates/stratified-mean.ts';
import type { SeededRandom } from '../../maths/random.ts';
import { samplerOf } from '../size/simulated-power.ts';
import type { RehearsalSpecies, RehearsalStratum } from './rehearsal-request.ts';

export interface SimulatedSurvey {
  /** For each stratum its stations. */
  readonly counts: readonly (readonly StationCount[])[];
  readonly animals: number;
  readonly estimate: MeanEstimate;
}

/** Makes surveys of one species whose densities are the expected ones times a factor. */
export function surveySimulator(
  strata: readonly RehearsalStratum[],
  species: Pick<RehearsalSpecies, 'densitiesPerHa' | 'clumpingK'>,
  factor: number,
): (random: SeededRandom) => SimulatedSurvey {
  const samplers = strata.map((stratum, h) =>
    samplerOf({
      meanPerStation: (species.densitiesPerHa[h]! * factor * stratum.searchedAreaM2) / squareMetresPerHa,
      clumpingK: species.clumpingK,
    }),
  );
  return (random) => {
    const counts = strata.map((stratum, h) =>
      Array.from({ length: stratum.stations }, () => ({
        animals: samplers[h]!(random),
        areaM2: stratum.searchedAreaM2,
      })),
    );
    const estimate = stratifiedMean(
      strata.map((stratum, h) => ({
        name: stratum.name,
        weight: stratum.areaHa,
        values: counts[h]!.map((count) => (count.animals / count.areaM2) * squareMetresPerHa),
        populationUnits: null,
      })),
    );
    const animals = counts.flat().reduce((total, count) => total + count.animals, 0);
    return { counts, animals, estimate };
  };
}

const squareMetresPerHa = 10_000;

/** Two surveys carried out in the machine, one before and one after a change, and compared as a report would. */

import { type SeededRandom, seededRandom } from '../../maths/random.ts';
import { sum } from '../../maths/variance.ts';
import { priorityAllocation } from '../size/priority-allocation.ts';
import { type Told, toldByLogRatio, toldByNoneSeen } from './change-told.ts';
import type { RehearsalSpecies, RehearsalStratum } from './rehearsal-request.ts';
import { type SimulatedSurvey, surveySimulator } from './simulated-survey.ts';

export interface TwoSurveysRequest {
  readonly before: readonly RehearsalStratum[];
  readonly after: readonly RehearsalStratum[];
  /** Densities before the change, and clumping. */
  readonly species: Pick<RehearsalSpecies, 'densitiesPerHa' | 'clumpingK'>;
  /** 0.5 a halving, 2 a doubling, 1 nothing. */
  readonly factor: number;
  readonly confidence: number;
  readonly simulations: number;
}

export interface ToldBetween {
  /** Share of the pairs that tell the change in its true direction; for the factor 1 in either, which is a false alarm. */
  readonly told: number;
  readonly simulationError: number;
}

/**
 * How often two surveys tell a change, both drawn with counts as clumped as expected: power, and for the factor 1 the
 * rate of false alarms.
 *
 * Each pair is compared by the interval of the log ratio. Where the second meets no animal a fall is told when the
 * bound for none seen lies below the first; where the first meets none, nothing is told. Repeats itself from `random`.
 * Assumes random stations, the same pattern over the strata and the same clumping before and after.
 */
export function toldBetween(request: TwoSurveysRequest, random: SeededRandom): ToldBetween {
  const { before, after, species, factor, confidence, simulations } = request;
  const first = surveySimulator(before, species, 1);
  const second = surveySimulator(after, species, factor);
  let falls = 0;
  let rises = 0;
  for (let i = 0; i < simulations; i++) {
    const told = compared(first(random), second(random), { clumpingK: species.clumpingK, confidence });
    falls += Number(told === 'fall');
    rises += Number(told === 'rise');
  }
  const told = (factor === 1 ? falls + rises : factor < 1 ? falls : rises) / simulations;
  return { told, simulationError: Math.sqrt((told * (1 - told)) / simulations) };
}

function compared(
  first: SimulatedSurvey,
  second: SimulatedSurvey,
  settings: { readonly clumpingK: number | null; readonly confidence: number },
): Told {
  const { value, standardError, degreesOfFreedom } = first.estimate;
  if (value === null || value === 0 || standardError === null) return 'undecided';
  const earlier = { densityPerHa: value, cv: standardError / value, degreesOfFreedom };
  return second.animals === 0
    ? toldByNoneSeen(second, earlier, settings)
    : toldByLogRatio(second, earlier, settings.confidence);
}

export interface ChangeNeed {
  /** Smallest number of stations found that tells the change often enough; null when the most tried do not. */
  readonly stations: number | null;
  readonly tried: number;
}

/**
 * Stations of the later survey with which a change is told with the wanted power, by simulation and halving.
 *
 * `earlier` null compares with a first survey of the same size. Every size is simulated from the same seed; the answer
 * is as sharp as the simulation (about 4 % of the stations with 1000 pairs). Null at `most`: the earlier survey, whose
 * own error no later station mends, may be what stands in the way.
 */
export function stationsToTell(
  request: Omit<TwoSurveysRequest, 'before' | 'after'> & {
    readonly strata: readonly RehearsalStratum[];
    readonly earlier: readonly RehearsalStratum[] | null;
    readonly power: number;
    readonly most: number;
    readonly seed: number;
  },
): ChangeNeed {
  const { strata, earlier, power, most, seed } = request;
  const isTold = (stations: number) => {
    const after = splitLike(strata, stations);
    return toldBetween({ ...request, before: earlier ?? after, after }, seededRandom(seed)).told >= power;
  };
  let high = 2 * strata.length;
  while (high < most && !isTold(high)) high = Math.min(most, high * 2);
  if (high >= most && !isTold(most)) return { stations: null, tried: most };
  let low = high === 2 * strata.length ? high : Math.floor(high / 2);
  while (high - low > Math.max(1, Math.floor(high / 50))) {
    const middle = Math.floor((low + high) / 2);
    if (isTold(middle)) high = middle;
    else low = middle;
  }
  return { stations: high, tried: high };
}

/** So many stations over the strata in the proportions of those they have, two in each at least. */
export function splitLike(
  strata: readonly RehearsalStratum[],
  stations: number,
): readonly RehearsalStratum[] {
  const claims = strata.map((stratum) => ({ weight: stratum.stations, minimum: 2, maximum: null }));
  const given = priorityAllocation(claims, Math.max(stations, sum(claims.map((claim) => claim.minimum))));
  return strata.map((stratum, h) => ({ ...stratum, stations: given[h]! }));
}

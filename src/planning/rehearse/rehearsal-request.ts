/** What is rehearsed, and what an officer should hear before it is. */

import { sum } from '../../maths/variance.ts';
import { type PlanProblem, planProblem, stops } from '../size/plan-problem.ts';
import { numberProblems, repeatedNames, wholeProblems } from '../size/typed-numbers.ts';

export interface RehearsalStratum {
  readonly name: string;
  readonly areaHa: number;
  readonly stations: number;
  /** What one finished station searches: all its belts together. */
  readonly searchedAreaM2: number;
}

/** The estimate that the planned survey will be compared with. */
export interface EarlierEstimate {
  readonly densityPerHa: number;
  /** Standard error over the estimate. */
  readonly cv: number;
  /** Null where not known: then the normal distribution is used for its part. */
  readonly degreesOfFreedom: number | null;
}

export interface RehearsalSpecies {
  readonly species: string;
  /** Expected density in each stratum, in the order of the strata; zeros are allowed, not everywhere. */
  readonly densitiesPerHa: readonly number[];
  /** Negative binomial clumping of station counts as seen before; null for scattered animals. */
  readonly clumpingK: number | null;
  readonly earlier: EarlierEstimate | null;
  /** Changes to be told: 0.5 a halving, 2 a doubling, 1 no change at all (how often would the report cry wolf?). */
  readonly changes: readonly number[];
}

export interface RehearsalRequest {
  readonly strata: readonly RehearsalStratum[];
  readonly species: readonly RehearsalSpecies[];
  /** 'clumped' is the default of the reports; 'lognormal' is some hundred times faster and promises too much. */
  readonly interval?: 'clumped' | 'lognormal';
  /**
   * How the report would tell a change: 'log-ratio' of the two estimates with their CVs (when not said), or 'belief' of
   * the clumped-count model, which in our simulations told a halving hardly ever and a doubling often.
   */
  readonly changeTest?: 'log-ratio' | 'belief';
  /** Simulated surveys for each species and each change; 200 when not said. */
  readonly surveys?: number;
  readonly confidence?: number;
  readonly seed: number;
}

export function checkRehearsal(request: RehearsalRequest): readonly PlanProblem[] {
  const { strata, species, surveys = 200, confidence = 0.95, seed } = request;
  if (strata.length === 0) return [planProblem('plan-no-strata')];
  if (species.length === 0) return [planProblem('plan-no-species')];
  const problems = [
    ...repeatedNames(strata.map((stratum) => stratum.name)),
    ...repeatedNames(species.map((one) => one.species)),
    ...wholeProblems('surveys', surveys, { atLeast: 10, atMost: 100_000 }),
    ...numberProblems('confidence', confidence, { atLeast: 0.5, below: 1 }),
    ...wholeProblems('seed', seed, { atLeast: 0, atMost: 2 ** 31 - 1 }),
    ...strata.flatMap(stratumProblems),
    ...species.flatMap((one) => speciesProblems(one, strata)),
  ];
  if (stops(problems)) return problems;
  const lone = strata.filter((stratum) => stratum.stations === 1);
  return [...problems, ...lone.map(({ name }) => planProblem('plan-lone-station', { stratum: name }))];
}

function stratumProblems(stratum: RehearsalStratum): readonly PlanProblem[] {
  return [
    ...numberProblems('areaHa', stratum.areaHa, { above: 0 }),
    ...wholeProblems('stations', stratum.stations, { atLeast: 1, atMost: 10_000 }),
    ...numberProblems('searchedAreaM2', stratum.searchedAreaM2, { above: 0 }),
  ];
}

function speciesProblems(
  species: RehearsalSpecies,
  strata: readonly RehearsalStratum[],
): readonly PlanProblem[] {
  const { densitiesPerHa, clumpingK, earlier, changes } = species;
  const missing = strata.filter((_, h) => densitiesPerHa[h] === undefined).map((stratum) => stratum.name);
  const isNowhere = sum(densitiesPerHa) === 0;
  return [
    ...(missing.length > 0 || isNowhere
      ? [
          planProblem('plan-density-missing', {
            species: species.species,
            strata: (isNowhere ? strata.map((stratum) => stratum.name) : missing).join(', '),
          }),
        ]
      : []),
    ...densitiesPerHa.flatMap((d) => numberProblems('densityPerHa', d, { atLeast: 0 })),
    ...densitiesPerHa.flatMap((d, h) =>
      // More than this at a station is not counted one by one, and no table of chances should be made for it.
      numberProblems('animalsPerStation', (d * (strata[h]?.searchedAreaM2 ?? 0)) / 10_000, {
        atMost: 10_000,
      }),
    ),
    ...(clumpingK === null ? [] : numberProblems('clumpingK', clumpingK, { atLeast: 0.01 })),
    ...changes.flatMap((factor) => numberProblems('change', factor, { above: 0, atMost: 100 })),
    ...(earlier === null
      ? []
      : [
          ...numberProblems('earlierDensityPerHa', earlier.densityPerHa, { above: 0 }),
          ...numberProblems('earlierCv', earlier.cv, { atLeast: 0, atMost: 5 }),
          ...(earlier.degreesOfFreedom === null
            ? []
            : numberProblems('earlierDegreesOfFreedom', earlier.degreesOfFreedom, { above: 0 })),
        ]),
  ];
}

/** Where a number comes from: every station, belt and animal behind it, so that it can be worked out again by hand. */

import type { Reason } from '../../survey/message.ts';
import type { TransectState } from '../../survey/observation.ts';
import type { DensityAnswer, LeftOut, Scope } from '../answers.ts';
import type { WeightsChosen } from '../biomass/choose-weights.ts';
import type { ClumpedPriors } from '../clumped/clumped-priors.ts';
import type { Interval } from '../shapes.ts';

export const explainedFigures = ['density', 'stock', 'size', 'biomass'] as const;
export type ExplainedFigure = (typeof explainedFigures)[number];

export interface ExplainedBelt {
  readonly transect: string;
  readonly state: TransectState;
  readonly lengthM: number | null;
  readonly widthM: number | null;
  /** In the sum only where it was searched for the species. */
  readonly areaM2: number;
  readonly animals: number;
  readonly measured: number;
}

export interface ExplainedStation {
  readonly station: string;
  readonly date: string;
  /** Outside the site or zone asked for, a station has no say in the mean, and stays in the spread. */
  readonly isMember: boolean;
  readonly animals: number;
  readonly searchedAreaM2: number;
  /** What is added up: animals; grams for the biomass; weights of animals times length for the size. */
  readonly amount: number;
  /** Animals that the lengths stand for, with the weight of their stratum; null but for the size. */
  readonly weightedAnimals: number | null;
  /** What enters mean and spread: amount over area in hectares, or the residual variate of a ratio of sums. */
  readonly valuePerHa: number | null;
  readonly belts: readonly ExplainedBelt[];
}

export interface ExplainedStratum {
  readonly stratum: string;
  readonly areaHa: number | null;
  /** Its area over that of all strata with a part in the figure. */
  readonly weight: number;
  readonly estimator: 'station mean' | 'ratio of sums';
  /** Stations that count, inside the scope or not. */
  readonly stationCount: number;
  readonly memberCount: number;
  /** Of the values of its members; null but for amounts per hectare. */
  readonly meanPerHa: number | null;
  /** Of the values of all its stations (n - 1); null with one station. */
  readonly standardDeviationPerHa: number | null;
  /** What the stratum adds to the variance of the whole. */
  readonly variance: number | null;
  readonly stations: readonly ExplainedStation[];
}

export interface Explanation {
  readonly survey: string;
  readonly species: string;
  readonly scope: Scope;
  readonly of: ExplainedFigure;
  /** "animals per ha", "animals", "mm" or "g per ha". */
  readonly unit: string;
  readonly value: number | null;
  readonly standardError: number | null;
  readonly degreesOfFreedom: number | null;
  readonly interval: Interval | null;
  readonly intervalMethod: DensityAnswer['intervalMethod'];
  readonly confidence: number;
  /** Of the scope, for the stock; estimated for a site or zone. */
  readonly areaHa: number | null;
  /** The strata are whole (survey, stratum), or the figure is that of a part of them (site, zone, station). */
  readonly isWhole: boolean;
  /** What was believed about clumping before the counts; null where the interval is another one. */
  readonly priors: ClumpedPriors | null;
  /** Where the grams come from; null but for the biomass. */
  readonly weights: WeightsChosen | null;
  readonly strata: readonly ExplainedStratum[];
  readonly leftOut: readonly LeftOut[];
  readonly cautions: readonly Reason[];
  readonly reason: Reason | null;
}

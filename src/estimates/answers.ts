/** The answers as the command line, the report and the screens receive them: one value per row of the contract. */

import type { Reason } from '../survey/message.ts';
import type { Interval, IntervalMethod } from './shapes.ts';

export type ScopeKind = 'survey' | 'stratum' | 'site' | 'zone' | 'station';

export interface Scope {
  readonly by: ScopeKind;
  readonly name: string;
}

/** A station or transect that is in neither the count nor the area, and why. */
export interface LeftOut {
  readonly station: string;
  readonly transect: string | null;
  readonly reason: Reason;
}

/** What is believed about a density, for the fading band: relative likelihood on rising densities. */
export interface Belief {
  readonly densityPerHa: readonly number[];
  /** Relative density of belief per unit of log density (for zero animals: per animal per hectare); greatest is 1. */
  readonly weight: readonly number[];
}

export interface DensityAnswer {
  readonly survey: string;
  readonly species: string;
  readonly scope: Scope;
  readonly stations: number;
  readonly stationsWithSpecies: number;
  readonly animals: number;
  readonly searchedAreaM2: number;
  readonly densityPerHa: number | null;
  readonly standardErrorPerHa: number | null;
  readonly degreesOfFreedom: number | null;
  readonly intervalPerHa: Interval | null;
  readonly intervalMethod: IntervalMethod | 'poisson' | null;
  /** For zero animals the bound if animals are scattered (Poisson); null otherwise. */
  readonly scatteredBoundPerHa: number | null;
  /** Area of the scope in hectares, where it is known. */
  readonly areaHa: number | null;
  readonly totalAnimals: number | null;
  readonly totalStandardError: number | null;
  readonly totalInterval: Interval | null;
  readonly meanWherePresentPerHa: number | null;
  readonly prevalence: number | null;
  readonly prevalenceInterval: Interval | null;
  /** How station densities were averaged in each stratum that has a part in this row. */
  readonly estimators: readonly {
    readonly stratum: string;
    readonly estimator: 'station mean' | 'ratio of sums';
  }[];
  readonly belief: Belief | null;
  readonly reason: Reason | null;
  /** Cautions that do not make anything null (few positive stations, finite population, held answer let through). */
  readonly cautions: readonly Reason[];
  readonly leftOut: readonly LeftOut[];
}

export interface LengthClass {
  readonly fromMm: number;
  readonly toMm: number;
  /** Share of all animals of the scope. */
  readonly share: number;
  /** Counted animals this class stands for (lengths raised to the counts). */
  readonly animals: number;
}

export interface SizesAnswer {
  readonly survey: string;
  readonly species: string;
  readonly scope: Scope;
  readonly animals: number;
  readonly measured: number;
  readonly meanLengthMm: number | null;
  readonly standardErrorMm: number | null;
  readonly shareAtLeast: {
    readonly limitMm: number;
    readonly share: number;
    readonly standardError: number | null;
    readonly interval: Interval | null;
  } | null;
  /** Lengths below which 10, 25, 50, 75 and 90 % of the animals lie. */
  readonly quantilesMm: Readonly<Record<'p10' | 'p25' | 'p50' | 'p75' | 'p90', number>> | null;
  readonly classes: readonly LengthClass[];
  /** Animals counted on transects where none was measured, whose lengths were borrowed. */
  readonly borrowedAnimals: number;
  readonly reason: Reason | null;
}

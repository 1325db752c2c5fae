import type { ScopeKind } from '../answers.ts';
import type { IntervalMethod } from '../shapes.ts';

/** Who lets a held answer go ahead, and why: printed with the result. */
export interface Acceptance {
  readonly who: string;
  readonly why: string;
}

export type EstimatorChoice = 'auto' | 'station mean' | 'ratio of sums';

/** Everything an officer can choose about a density; repeated in the settings of the answer. */
export interface DensitySettings {
  readonly by: ScopeKind;
  readonly interval: IntervalMethod;
  readonly confidence: number;
  readonly seed: number;
  /** Bootstrap draws, at least 999 for a published interval. */
  readonly draws: number;
  readonly estimator: EstimatorChoice;
  /** Transects as the unit are held: their number is not the number of independent places. */
  readonly unit: 'station' | 'transect';
  /** Stations that enter: all, or only those chosen in this way. */
  readonly selection: 'all' | 'random' | 'hand-picked';
  /** Strata taken together under one name, each list by name of its strata: the way out of a lone station. */
  readonly merges: readonly (readonly string[])[];
  readonly finitePopulation: boolean;
  /** For stations drawn spread over their ground; missing is the usual formula. Seen by log-normal and t intervals only. */
  readonly variance?: 'local mean';
  /** Clumping k for the bound when nothing was seen; null takes the archive's, else 0.35. */
  readonly clumpingK: number | null;
  readonly acceptance: Acceptance | null;
}

export const defaultDensitySettings: DensitySettings = {
  by: 'survey',
  interval: 'clumped',
  confidence: 0.95,
  seed: 1,
  draws: 999,
  estimator: 'auto',
  unit: 'station',
  selection: 'all',
  merges: [],
  finitePopulation: false,
  clumpingK: null,
  acceptance: null,
};

/** k of the negative binomial when no earlier survey shows one (median of the prior in INTERVALS; not published). */
export const defaultClumpingK = 0.35;

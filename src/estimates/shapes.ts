/**
 * The shapes that estimators take and return. The station is the sampling unit everywhere;
 * transects of one station are summed before they come here.
 *
 * Unknown is a value: wherever something is null, `reason` says why. Never NaN, never a silent zero.
 */

import type { Reason } from '../survey/message.ts';

/** One sampling unit of a stratum as a number: animals per hectare, or any other per-station value. */
export interface StratumValues {
  readonly name: string;
  /** Relative weight of the stratum, usually its area in hectares. */
  readonly weight: number;
  /** One value per station, zeros included. */
  readonly values: readonly number[];
  /** Number of units in the whole stratum, for the finite population correction; null when not applied. */
  readonly populationUnits: number | null;
}

/** A point estimate with its design-based spread. */
export interface MeanEstimate {
  readonly value: number | null;
  readonly standardError: number | null;
  /** Satterthwaite's effective degrees of freedom. */
  readonly degreesOfFreedom: number | null;
  readonly reason: Reason | null;
}

export type IntervalMethod = 'clumped' | 'lognormal' | 't' | 'percentile' | 'bca';

/** Lower and upper end. */
export type Interval = readonly [low: number, high: number];

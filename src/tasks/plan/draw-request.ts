/** What an officer asks of a draw. */

import type { DrawMethod } from '../../planning/draw/drawn-plan.ts';

export interface StratumNumber {
  readonly stratum: string;
  readonly n: number;
}

/** A number of stations to be divided over the strata. */
export interface DividedTotal {
  readonly stations: number;
  readonly rule: 'proportional' | 'neyman';
  /** The earlier survey that shows the spread; Neyman's split needs it. */
  readonly pilot: string | null;
  readonly species: readonly string[];
  readonly minimum: number;
}

/** Stations of an earlier survey to visit again. */
export interface PanelRequest {
  /** Empty where stations are named and nobody said of which survey: refused. */
  readonly survey: string;
  /** These; when empty, `share` of the stations of each stratum, by lot. */
  readonly codes: readonly string[];
  readonly share: number;
}

export interface PlanDrawRequest {
  readonly name: string;
  readonly survey: string;
  readonly decision: string | null;
  readonly protocol: string | null;
  /** Typed for each stratum; empty where a total is divided. */
  readonly stations: readonly StratumNumber[];
  readonly total: DividedTotal | null;
  /** The strata a total is divided over; empty for every mapped one. */
  readonly strata: readonly string[];
  /** Typed for each stratum; `sparesEach` for the rest, null for half as many as stations. */
  readonly spares: readonly StratumNumber[];
  readonly sparesEach: number | null;
  readonly method: DrawMethod;
  readonly seed: number;
  readonly minimumSpacingM: number | null;
  /** Draws with and without the spacing behind its effect; 0 leaves it unknown. */
  readonly redraws: number;
  readonly panel: PanelRequest | null;
  /** Positions as typed. */
  readonly handPicked: readonly { readonly code: string; readonly position: string }[];
  readonly acceptance: { readonly who: string; readonly why: string } | null;
  readonly dryRun: boolean;
}

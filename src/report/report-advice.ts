/** What the sections of advice are made of: answers of their own verbs, worked out before they come here. */

import type { BiomassAnswer } from '../estimates/biomass/biomass-answer.ts';
import type { FittedPair } from '../estimates/biomass/fit-length-weight.ts';
import type { ChangeAnswer } from '../estimates/change/change-answer.ts';
import type { Explanation } from '../estimates/explain/explanation.ts';
import type { HarvestAnswer } from '../estimates/harvest/harvest-answer.ts';
import type { SensitivityAnswer } from '../estimates/sensitivity/sensitivity-answer.ts';
import type { StatusAnswer } from '../estimates/status/status-answer.ts';
import type { ChangeToSay } from './change-lines.ts';
import type { TrendToSay } from './trend-lines.ts';

export interface ReportAdvice {
  /** Against the survey before; null where there is none. */
  readonly change: ChangeToSay | null;
  readonly changeByZone: readonly ChangeAnswer[];
  /** Empty where fewer than three surveys are there. */
  readonly trend: readonly TrendToSay[];
  readonly status: readonly StatusAnswer[];
  readonly statusByZone: readonly StatusAnswer[];
  readonly biomass: readonly BiomassAnswer[];
  readonly biomassByStratum: readonly BiomassAnswer[];
  readonly fits: readonly { readonly species: string; readonly fit: FittedPair }[];
  /** How many rates were given; without one nothing is worked out. */
  readonly rates: number;
  readonly harvest: readonly HarvestAnswer[];
  readonly sensitivity: readonly SensitivityAnswer[];
  /** Densities of the species that the first page speaks of. */
  readonly explanations: readonly Explanation[];
}

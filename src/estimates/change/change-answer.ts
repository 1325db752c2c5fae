/** What can be said about one species between two surveys. */

import type { Reason } from '../../survey/message.ts';
import type { Scope } from '../answers.ts';
import type { PermutationResult } from './permutation-test.ts';
import type { Contrast } from './two-means.ts';

/** The answer in one word, from the interval of the ratio; `probably`: nine tenths of the belief, not proven. */
export type Told = 'lower' | 'probably lower' | 'cannot tell' | 'probably higher' | 'higher';

export interface ChangeAnswer {
  readonly from: string;
  readonly to: string;
  readonly species: string;
  readonly scope: Scope;
  /** Strata of the part that both surveys have in common. */
  readonly strata: readonly string[];
  /** True when stations were picked by hand: the change is one at these stations and speaks for no other place. */
  readonly atTheseStations: boolean;
  readonly stations: { readonly from: number; readonly to: number };
  readonly animals: { readonly from: number; readonly to: number };
  /** Places worked in both surveys and matched. */
  readonly pairs: number;
  readonly densityPerHa: { readonly from: number; readonly to: number } | null;
  /** Later over earlier; null where the earlier is zero. */
  readonly ratio: number | null;
  readonly percent: number | null;
  /** By the clumped-count model; an open upper end where none was seen in the earlier survey. */
  readonly ratioInterval: readonly [low: number, high: number | null] | null;
  readonly told: Told | null;
  /** Belief that the density fell. */
  readonly beliefLower: number | null;
  /** The smallest fall told 8 times in 10 by surveys like these, as the share that is left. */
  readonly smallestFallTo: number | null;
  /** Stations the later survey would have needed more to tell a halving 8 times in 10; null: see `neverTold`. */
  readonly stationsMoreForHalving: number | null;
  /** The earlier survey alone is too unsure: no number of later stations would do. */
  readonly neverTold: boolean;
  /** Stations that two surveys would each need to tell a halving 8 times in 10. */
  readonly stationsEachForHalving: number | null;
  /** Design-based, beside the default: later minus earlier, and the log ratio. */
  readonly difference: Contrast | null;
  readonly logRatio: Contrast | null;
  readonly permutation: PermutationResult | null;
  /** How often the design-based log ratio of surveys like these reports a change where there is none. */
  readonly falseAlarmByDesign: number | null;
  /** For the fading band: ratios and relative weight of belief per unit of log ratio. */
  readonly belief: { readonly ratio: readonly number[]; readonly weight: readonly number[] } | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

/** What a plan page is made of: plain values, worked out before they come here. */

import type { PlanAgainstSurvey } from '../../planning/draw/plan-against-survey.ts';
import type { PlanContent } from '../../survey/plan-words.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import type { PositionDetail } from '../position-detail.ts';

export interface SpeciesPrecision {
  readonly species: string;
  readonly pilotStations: number;
  readonly densityPerHa: number;
  /** With the stations of the plan and the spread as the earlier survey saw it. */
  readonly cv: number;
  /** In 8 of 10 such earlier surveys no worse than this. */
  readonly cvAssured: number;
  /** Smallest fall and rise against the earlier survey told 8 times in 10 with the CV to count on, as shares. */
  readonly fall: number;
  readonly rise: number;
}

export type NoPrecision =
  | { readonly code: 'noEarlier' | 'unreadable' | 'noSpread' }
  | { readonly code: 'noSpreadIn'; readonly strata: readonly string[] };

export interface ExpectedPrecision {
  readonly pilot: string | null;
  /** Why nothing is known; null when something is. */
  readonly reason: NoPrecision | null;
  readonly species: readonly SpeciesPrecision[];
  /** Species that the earlier survey never met. */
  readonly unseen: readonly string[];
}

export interface PlanPageInput {
  readonly book: { readonly name: string; readonly invented: boolean };
  readonly name: string;
  readonly content: PlanContent;
  /** Strata, masks and zones of the book. */
  readonly areas: readonly MapAreaRecord[];
  readonly against: PlanAgainstSurvey | null;
  readonly precision: ExpectedPrecision;
  /** What a boat does in a day and what the day costs; null where nobody said. */
  readonly stationsPerDay: number | null;
  readonly dayCost: number | null;
  readonly positionDetail: PositionDetail;
  readonly dataVersion: string;
  readonly programVersion: string;
  /** ISO day. */
  readonly generatedOn: string;
}

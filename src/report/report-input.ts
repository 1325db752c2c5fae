/** What a report is made of: plain values, worked out before they come here. The report calculates no estimate. */

import type { DensityAnswer, SizesAnswer } from '../estimates/answers.ts';
import type { ComparedAspect } from '../estimates/change/comparability.ts';
import type { IntervalMethod } from '../estimates/shapes.ts';
import type { PlanAgainstSurvey } from '../planning/draw/plan-against-survey.ts';
import type { MapArea } from '../survey/map-area.ts';
import type { Problem } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { SizeLimit, Species, Stratum } from '../survey/words.ts';
import type { PositionDetail } from './position-detail.ts';
import type { ReportAdvice } from './report-advice.ts';

export interface ReportInput {
  readonly book: { readonly name: string; readonly invented: boolean };
  /** What somebody has to decide with these counts, as it was asked; null when nobody wrote it down. */
  readonly decision: string | null;
  /** In order of time. The last one is what the report is about; the earlier ones stand beside it. */
  readonly surveys: readonly ReportSurvey[];
  /** Each survey against the one before it: whether they were counted alike. */
  readonly comparisons?: readonly {
    readonly from: string;
    readonly to: string;
    readonly aspects: readonly ComparedAspect[];
  }[];
  /** Every species that is named in an answer, for common and scientific names. */
  readonly species: readonly Species[];
  readonly sizeLimits: readonly SizeLimit[];
  /** Strata on the map of the book, by name; none where it has no map. */
  readonly borders?: readonly { readonly name: string; readonly area: MapArea }[];
  /** The plan of the survey the report is about, and what became of it; missing where there was none. */
  readonly plan?: { readonly name: string; readonly against: PlanAgainstSurvey };
  /** Change, status, weight, options and sensitivity; missing where a paper does not ask for them. */
  readonly advice?: ReportAdvice;
  readonly settings: ReportSettings;
  readonly dataVersion: string;
  readonly programVersion: string;
  /** ISO day. */
  readonly generatedOn: string;
  /** ISO instant in UTC, where the book is shown as it stood then; null or missing for now. */
  readonly asOf?: string | null;
}

export interface ReportSurvey {
  /** Stations, transects, tallies, protocol and target species. */
  readonly inHand: SurveyInHand;
  /** Whether somebody listed the target species, or the program took every species known to the book. */
  readonly targetsMade: 'listed' | 'assumed';
  readonly strata: readonly Stratum[];
  /** One answer per species over the whole surveyed area. */
  readonly densityBySurvey: readonly DensityAnswer[];
  /** One answer per species and stratum. */
  readonly densityByStratum: readonly DensityAnswer[];
  readonly sizes: readonly SizesAnswer[];
  readonly problems: readonly Problem[];
}

interface ReportSettings {
  /** What leaves the office is rounded unless somebody chose otherwise. */
  readonly positionDetail: PositionDetail;
  /** 0.95 for 95 %. */
  readonly confidence: number;
  readonly interval: IntervalMethod;
  readonly seed: number;
}

/** What a report is made of: plain values, worked out before they come here. The report calculates no estimate. */

import type { DensityAnswer, SizesAnswer } from '../estimates/answers.ts';
import type { IntervalMethod } from '../estimates/shapes.ts';
import type { Problem } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { SizeLimit, Species, Stratum } from '../survey/words.ts';
import type { PositionDetail } from './position-detail.ts';

export interface ReportInput {
  readonly book: { readonly name: string; readonly invented: boolean };
  /** What somebody has to decide with these counts, as it was asked; null when nobody wrote it down. */
  readonly decision: string | null;
  /** In order of time. The last one is what the report is about; the earlier ones stand beside it. */
  readonly surveys: readonly ReportSurvey[];
  /** Every species that is named in an answer, for common and scientific names. */
  readonly species: readonly Species[];
  readonly sizeLimits: readonly SizeLimit[];
  readonly settings: ReportSettings;
  readonly dataVersion: string;
  readonly programVersion: string;
  /** ISO day. */
  readonly generatedOn: string;
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

/** Gathers what a report page says: every answer worked out, nothing calculated in the page itself. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { comparabilityOf } from '../estimates/change/comparability.ts';
import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import { type DensitySettings, defaultDensitySettings } from '../estimates/density/density-settings.ts';
import { estimateSizes } from '../estimates/sizes/estimate-sizes.ts';
import type { PositionDetail } from '../report/position-detail.ts';
import type { ReportInput, ReportSurvey } from '../report/report-input.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import { askedOf } from './check-survey.ts';
import { planOfSurvey } from './plan/show.ts';
import { readOnce } from './read-once.ts';
import { type AdviceChoices, reportAdvice } from './report-advice.ts';
import {
  type BookWords,
  readBookWords,
  type SurveyOpened,
  surveysAsked,
  takeInHand,
} from './take-in-hand.ts';

export interface ReportRequest {
  /** The survey the report is about; null for the latest. Earlier surveys of the book stand beside it. */
  readonly survey: string | null;
  readonly decision: string | null;
  readonly positionDetail: PositionDetail;
  readonly settings: Omit<DensitySettings, 'by'>;
  readonly classMm: number;
  /** Null leaves the sections of advice out. */
  readonly advice?: AdviceChoices | null;
  readonly programVersion: string;
  /** ISO day. */
  readonly generatedOn: string;
  /** ISO instant in UTC, where the store given is the book as it stood then. */
  readonly asOf?: string | null;
}

export const defaultReportRequest = {
  survey: null,
  decision: null,
  positionDetail: 'rounded',
  settings: defaultDensitySettings,
  classMm: 20,
  // No rate is assumed: the section on what may be taken says how to give one.
  advice: { rates: [], limitReference: null, risk: 0.1 },
} as const;

/** Every section asks the book as its own verb does; the book is read once for all of them. */
export async function reportInput(book: Store, request: ReportRequest): Promise<ReportInput> {
  const store = readOnce(book);
  const words = await readBookWords(store);
  const last = surveysAsked(words, request.survey).at(-1)!;
  const bySurvey = new DensityEstimator({ ...request.settings, by: 'survey' });
  const byStratum = new DensityEstimator({ ...request.settings, by: 'stratum' });
  const surveys: ReportSurvey[] = [];
  for (const survey of words.surveys.slice(0, words.surveys.indexOf(last) + 1)) {
    const opened = await takeInHand(store, words, survey, { lengths: true });
    surveys.push(reportSurvey(opened, words, request, { bySurvey, byStratum }));
    // The very survey that the sections of advice learn from, so that it teaches once.
    const { inHand } = await takeInHand(store, words, survey, { lengths: false });
    bySurvey.remember(inHand);
    byStratum.remember(inHand);
  }
  const { name, invented } = await store.info();
  const borders = (await store.all('mapArea'))
    .filter(({ role }) => role === 'stratum')
    .map((one) => ({ name: one.name, area: one.content.area }));
  const { confidence, interval, seed } = request.settings;
  return {
    book: { name, invented },
    decision: request.decision,
    surveys,
    comparisons: comparisonsOf(surveys),
    species: words.species,
    sizeLimits: words.limits,
    ...(await planOfSurvey(store, last)),
    borders,
    ...(await adviceFor(store, request, surveys)),
    settings: { positionDetail: request.positionDetail, confidence, interval, seed },
    dataVersion: await store.dataVersion(),
    programVersion: request.programVersion,
    generatedOn: request.generatedOn,
    asOf: request.asOf ?? null,
  };
}

/** Each survey against the one before it, so that no line is drawn between two that were counted differently. */
function comparisonsOf(surveys: readonly ReportSurvey[]) {
  return surveys.slice(1).map(({ inHand: to }, i) => {
    const from = surveys[i]!.inHand;
    return { from: from.survey.name, to: to.survey.name, aspects: comparabilityOf(from, to).aspects };
  });
}

async function adviceFor(store: Store, request: ReportRequest, surveys: readonly ReportSurvey[]) {
  const { advice, generatedOn: today } = request;
  if (advice === null || advice === undefined) return {};
  const { confidence, seed, acceptance } = request.settings;
  const names = surveys.map(({ inHand }) => inHand.survey.name);
  return {
    advice: await reportAdvice(store, {
      surveys: names,
      choices: advice,
      confidence,
      seed,
      acceptance,
      today,
    }),
  };
}

interface Estimators {
  readonly bySurvey: DensityEstimator;
  readonly byStratum: DensityEstimator;
}

function reportSurvey(
  opened: SurveyOpened,
  words: BookWords,
  request: ReportRequest,
  estimators: Estimators,
): ReportSurvey {
  const { inHand, targetList } = opened;
  const limits = new Map(words.limits.map((limit) => [limit.speciesId, limit.minimumMm]));
  const sizes = inHand.targets.flatMap((species) =>
    estimateSizes(inHand, species, {
      by: 'survey',
      limitMm: limits.get(species.id) ?? null,
      classMm: request.classMm,
      confidence: request.settings.confidence,
    }),
  );
  const visited = new Set(inHand.stations.map((station) => station.stratum.id));
  return {
    inHand,
    targetsMade: targetList.madeFrom === 'declared' ? 'listed' : 'assumed',
    strata: words.strata.filter((stratum) => visited.has(stratum.id)),
    densityBySurvey: densities(estimators.bySurvey, inHand),
    densityByStratum: densities(estimators.byStratum, inHand),
    sizes,
    problems: askedOf(opened),
  };
}

function densities(estimator: DensityEstimator, inHand: SurveyInHand): readonly DensityAnswer[] {
  return inHand.targets.flatMap((species) => estimator.answers(inHand, species));
}

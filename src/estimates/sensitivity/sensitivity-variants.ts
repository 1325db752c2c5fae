/** The same answer made otherwise: without data, with other intervals, with other priors of clumping. */

import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer } from '../answers.ts';
import type { ClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { DEFAULT_CLUMPED_PRIORS } from '../clumped/clumped-priors.ts';
import { answerScope } from '../density/answer-scope.ts';
import type { Archive } from '../density/archive.ts';
import type { DensityEstimator } from '../density/density-estimator.ts';
import { type DensitySettings, defaultDensitySettings } from '../density/density-settings.ts';
import { scopesBy } from '../density/scopes.ts';
import { type StratumSample, stratumSamples } from '../density/stratum-sample.ts';
import type { ReferenceUsed } from '../status/status-answer.ts';
import { designSaid, saidOf } from './said.ts';
import type { StationInfluence, Variant } from './sensitivity-answer.ts';
import { type DataInQuestion, withoutData } from './without-data.ts';

export interface SensitivityInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  /** With the log-normal interval, which costs least: it says whether there is an answer at all. */
  readonly estimator: Pick<DensityEstimator, 'answers'>;
  /** What it has computed once serves the default answer and every variant. */
  readonly archive: Pick<Archive, 'intervalsFor'>;
  readonly reference: ReferenceUsed | null;
  /** Stations and belts about which a question is open. */
  readonly questioned: readonly DataInQuestion[];
}

export interface SensitivitySettings {
  readonly confidence: number;
  readonly seed: number;
  readonly draws: number;
}

interface Found {
  readonly density: DensityAnswer;
  readonly most: StationInfluence | null;
}

/** Every other way of making the default answer, each with the density verb's own means. */
export function variantsOf(
  input: SensitivityInput,
  found: Found,
  settings: SensitivitySettings,
): readonly Variant[] {
  const { survey, species, archive, questioned, reference } = input;
  const intervals = archive.intervalsFor(species, survey);
  const density = found.density.densityPerHa!;
  const plain: DensitySettings = { ...defaultDensitySettings, ...settings };
  const answer = (kind: Variant['kind'], other: Other): Variant => {
    const made = answerWith(other.survey ?? survey, species, {
      settings: { ...plain, interval: other.interval ?? 'clumped' },
      intervals: other.intervals ?? intervals,
    });
    return {
      kind,
      stations: other.stations ?? [],
      densityPerHa: made.densityPerHa,
      intervalPerHa: made.intervalPerHa,
      change: made.densityPerHa === null ? null : made.densityPerHa / density - 1,
      said:
        other.interval === undefined ? saidOf(made, reference) : designSaid(made, other.interval, reference),
      reason: made.reason,
    };
  };
  const variants: Variant[] = [];
  if (found.most !== null) {
    const { station } = found.most;
    const left = withoutData(survey, [{ station, transect: null }]);
    variants.push(answer('without-station', { survey: left, stations: [station] }));
  }
  if (questioned.length > 0) {
    const stations = [...new Set(questioned.map((one) => one.station))];
    variants.push(answer('without-questioned', { survey: withoutData(survey, questioned), stations }));
  }
  if (intervals.priors.source === 'archive') {
    variants.push(answer('house-prior', { intervals: intervals.withPriors(DEFAULT_CLUMPED_PRIORS) }));
  }
  variants.push(answer('wide-prior', { intervals: intervals.withPriors(widePriors) }));
  for (const interval of ['lognormal', 't', 'percentile'] as const)
    variants.push(answer(interval, { interval }));
  return variants;
}

interface Other {
  readonly survey?: SurveyInHand;
  readonly stations?: readonly string[];
  readonly interval?: 'lognormal' | 't' | 'percentile';
  readonly intervals?: ClumpedIntervals;
}

/** Half as wide again as the prior of the house, on the logarithm: clumping that this tool would hardly expect. */
const widePriors = {
  ...DEFAULT_CLUMPED_PRIORS,
  negativeBinomialK: {
    ...DEFAULT_CLUMPED_PRIORS.negativeBinomialK,
    sdLog: 1.5 * DEFAULT_CLUMPED_PRIORS.negativeBinomialK.sdLog,
  },
  logRateSd: { ...DEFAULT_CLUMPED_PRIORS.logRateSd, sdLog: 1.5 * DEFAULT_CLUMPED_PRIORS.logRateSd.sdLog },
};

export function answerWith(
  survey: SurveyInHand,
  species: Species,
  { settings, intervals }: { readonly settings: DensitySettings; readonly intervals: ClumpedIntervals },
): DensityAnswer {
  const [scope] = scopesBy('survey', survey.survey.name, samplesOf(survey, species));
  if (scope === undefined) throw new Error('answerWith requires a survey scope');
  return answerScope(scope, { survey, species, settings, archive: { intervalsFor: () => intervals } });
}

export function samplesOf(survey: SurveyInHand, species: Species): readonly StratumSample[] {
  const observations = observeSpecies(survey, species);
  return stratumSamples(observations, survey.plannedAreaCm2, defaultDensitySettings);
}

/** Two estimators that learn from the same earlier surveys: one for each kind of lower limit. */

import { DensityEstimator } from '../../estimates/density/density-estimator.ts';
import { type DensitySettings, defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { HarvestRequest } from '../harvest.ts';

type By = 'survey' | 'zone';

export interface HarvestLearner {
  readonly remember: (survey: SurveyInHand) => void;
  readonly estimator: (by: By, interval: 'clumped' | 'lognormal') => DensityEstimator;
  /** At the confidence of every other page, for the bound of a species of which none was seen. */
  readonly bounds: DensityEstimator;
}

/** An 80 % interval leaves out 10 % below: its lower end is the one-sided 90 % limit. */
export function harvestLearner(request: HarvestRequest): HarvestLearner {
  const { confidence } = request.choices;
  const settings = {
    ...defaultDensitySettings,
    confidence: 2 * confidence - 1,
    acceptance: request.acceptance,
  };
  const estimators = new Map<string, DensityEstimator>();
  for (const by of ['survey', 'zone'] as const) {
    for (const interval of ['clumped', 'lognormal'] as const) {
      const own: DensitySettings = { ...settings, by, interval };
      estimators.set(`${by} ${interval}`, new DensityEstimator(own));
    }
  }
  const bounds = new DensityEstimator({ ...defaultDensitySettings, acceptance: request.acceptance });
  return {
    bounds,
    remember: (survey) => {
      for (const estimator of [...estimators.values(), bounds]) estimator.remember(survey);
    },
    estimator: (by, interval) => estimators.get(`${by} ${interval}`)!,
  };
}

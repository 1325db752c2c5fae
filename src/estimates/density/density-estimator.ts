/**
 * Densities of one species in one survey, scope by scope: the composition of the estimators.
 *
 * The formulas live in their own files; here it is decided which of them applies, what is held,
 * what is null and why.
 */

import type { Reason } from '../../survey/message.ts';
import { observeSpecies, type StationObservation, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer } from '../answers.ts';
import { answerScope } from './answer-scope.ts';
import { Archive } from './archive.ts';
import type { DensitySettings } from './density-settings.ts';
import { emptyAnswer } from './empty-answer.ts';
import { mergeStrata } from './merge-strata.ts';
import { scopesBy } from './scopes.ts';
import { stratumSamples } from './stratum-sample.ts';
import { splitIntoTransects, transectsAsUnit } from './transects-as-unit.ts';

export class DensityEstimator {
  readonly #settings: DensitySettings;
  readonly #archive = new Archive();

  constructor(settings: DensitySettings) {
    this.#settings = settings;
  }

  /** Keeps a survey as an earlier one: what it shows about clumping informs the surveys after it. */
  remember(survey: SurveyInHand): void {
    this.#archive.remember(survey);
  }

  /** One answer per scope; exactly one, with a reason, where the species or the method allows none. */
  answers(survey: SurveyInHand, species: Species): readonly DensityAnswer[] {
    const refusal = refusalOf(survey, species);
    if (refusal !== null) {
      const scope = { by: 'survey', name: survey.survey.name } as const;
      return [emptyAnswer(survey, species, scope, refusal)];
    }
    const merged = mergeStrata(survey, this.#settings.merges);
    if (this.#settings.unit === 'station') return this.#answersByStation(merged, species);
    return this.#answersByTransect(merged, species);
  }

  #answersByStation(survey: SurveyInHand, species: Species): readonly DensityAnswer[] {
    return this.#scoped(survey, species, observeSpecies(survey, species));
  }

  /** Transects as the unit: held, with the size of the mistake, unless somebody answers for it by name. */
  #answersByTransect(survey: SurveyInHand, species: Species): readonly DensityAnswer[] {
    const honest = this.#answersByStation(survey, species);
    const split = splitIntoTransects(survey);
    const wrong = this.#scoped(split, species, observeSpecies(split, species));
    return wrong.map((answer, i) => transectsAsUnit(answer, honest[i]!, this.#settings.acceptance));
  }

  #scoped(
    survey: SurveyInHand,
    species: Species,
    observations: readonly StationObservation[],
  ): readonly DensityAnswer[] {
    const samples = stratumSamples(observations, survey.plannedAreaCm2, this.#settings);
    const context = { survey, species, settings: this.#settings, archive: this.#archive };
    return scopesBy(this.#settings.by, survey.survey.name, samples).map((scope) =>
      answerScope(scope, context),
    );
  }
}

function refusalOf(survey: SurveyInHand, species: Species): Reason | null {
  const name = survey.survey.name;
  if (survey.stations.length === 0) return { code: 'no-station', parameters: { where: name } };
  if (survey.protocol?.layout === 'timed') return { code: 'timed-search', parameters: { survey: name } };
  if (survey.targets.some((one) => one.id === species.id)) return null;
  return { code: 'not-a-target', parameters: { species: species.name, survey: name } };
}

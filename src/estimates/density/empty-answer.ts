import type { Reason } from '../../survey/message.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer, Scope } from '../answers.ts';

/** An answer in which nothing can be known, with the reason. */
export function emptyAnswer(
  survey: Pick<SurveyInHand, 'survey'>,
  species: Species,
  scope: Scope,
  reason: Reason | null,
): DensityAnswer {
  return {
    survey: survey.survey.name,
    species: species.name,
    scope,
    stations: 0,
    stationsWithSpecies: 0,
    animals: 0,
    searchedAreaM2: 0,
    densityPerHa: null,
    standardErrorPerHa: null,
    degreesOfFreedom: null,
    intervalPerHa: null,
    intervalMethod: null,
    scatteredBoundPerHa: null,
    areaHa: null,
    totalAnimals: null,
    totalStandardError: null,
    totalInterval: null,
    meanWherePresentPerHa: null,
    prevalence: null,
    prevalenceInterval: null,
    estimators: [],
    belief: null,
    reason,
    cautions: [],
    leftOut: [],
  };
}

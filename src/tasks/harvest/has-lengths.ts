import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';

/** Was any animal of the species measured in this survey? */
export function hasLengths(survey: SurveyInHand, species: Species): boolean {
  return survey.stations.some(({ transects }) =>
    transects.some(({ tallies }) => (tallies.get(species.id)?.lengths.length ?? 0) > 0),
  );
}

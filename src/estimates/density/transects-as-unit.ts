/**
 * Transects of one station are not independent places (Hurlbert 1984): treating them as the unit makes
 * the standard error too small. The answer is held with the size of that mistake.
 */

import type { SurveyInHand } from '../../survey/observation.ts';
import type { DensityAnswer } from '../answers.ts';
import type { Acceptance } from './density-settings.ts';

/** The same survey with every transect as a station of its own. */
export function splitIntoTransects(survey: SurveyInHand): SurveyInHand {
  const stations = survey.stations.flatMap((station) =>
    station.transects.length === 0
      ? [station]
      : station.transects.map((transect) => ({ ...station, transects: [transect], laterSwims: [] })),
  );
  return { ...survey, stations, plannedAreaCm2: null };
}

/** Held, with both standard errors; let through when somebody answers for it by name and reason. */
export function transectsAsUnit(
  wrong: DensityAnswer,
  honest: DensityAnswer,
  acceptance: Acceptance | null,
): DensityAnswer {
  if (acceptance !== null) {
    const parameters = { ...acceptance, held: 'transects-as-unit' };
    return { ...wrong, cautions: [...wrong.cautions, { code: 'accepted', parameters }] };
  }
  const factor =
    wrong.standardErrorPerHa !== null && wrong.standardErrorPerHa > 0 && honest.standardErrorPerHa !== null
      ? honest.standardErrorPerHa / wrong.standardErrorPerHa
      : null;
  return {
    ...honest,
    densityPerHa: null,
    standardErrorPerHa: null,
    degreesOfFreedom: null,
    intervalPerHa: null,
    intervalMethod: null,
    totalAnimals: null,
    totalStandardError: null,
    totalInterval: null,
    meanWherePresentPerHa: null,
    belief: null,
    reason: {
      code: 'transects-as-unit',
      parameters: {
        transects: wrong.stations,
        stations: honest.stations,
        wrongStandardErrorPerHa: wrong.standardErrorPerHa ?? 'unknown',
        standardErrorPerHa: honest.standardErrorPerHa ?? 'unknown',
        factor: factor ?? 'unknown',
      },
    },
  };
}

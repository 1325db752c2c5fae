/** Belts whose measure is not the planned one, told once per station, or once for a survey where most differ. */

import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects, SurveyInHand, TransectWithTallies } from '../../survey/observation.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { isSearched, placeOfStation } from './check.ts';

export interface BeltMeasure {
  readonly code: ProblemCode;
  readonly plannedM: number;
  /** The measure when it is not believed, else null. */
  readonly differing: (belt: TransectWithTallies) => number | null;
  /** What a person probably meant, or null. */
  readonly suggestion: (measureM: number) => string | null;
}

export function measureProblems(inHand: SurveyInHand, measure: BeltMeasure): readonly Problem[] {
  const found: { station: StationWithTransects; codes: string[]; measureM: number }[] = [];
  let belts = 0;
  let differing = 0;
  for (const station of inHand.stations) {
    const here: { code: string; measureM: number }[] = [];
    for (const belt of station.transects) {
      if (!isSearched(belt)) continue;
      belts++;
      const measureM = measure.differing(belt);
      if (measureM !== null) here.push({ code: belt.record.code, measureM });
    }
    differing += here.length;
    if (here.length > 0) {
      found.push({ station, codes: here.map(({ code }) => code), measureM: here[0]!.measureM });
    }
  }
  if (found.length > 1 && 2 * differing > belts) return [aboutSurvey(inHand, measure, found[0]!.measureM)];
  return found.map(({ station, codes, measureM }) =>
    problemOf(measure.code, placeOfStation(inHand, station), {
      value: measureM,
      parameters: { belts: codes.length, where: codes.join(', '), plannedM: measure.plannedM },
      suggestion: measure.suggestion(measureM),
    }),
  );
}

/** One question instead of a hundred: then the protocol is wrong, or every slate. */
function aboutSurvey({ survey }: SurveyInHand, measure: BeltMeasure, measureM: number): Problem {
  const parameters = { where: 'most belts of the survey', plannedM: measure.plannedM };
  const suggestion = measure.suggestion(measureM);
  return problemOf(measure.code, { survey: survey.name }, { value: measureM, parameters, suggestion });
}

/** Station rows: where the boat really lay, a few metres from the plan, and what the day was like. */

import type { SeededRandom } from '../../maths/random.ts';
import type { StationRow } from '../../survey/table-rows.ts';
import type { SurveyYear } from './animal.ts';
import { between, oneOf } from './chance.ts';
import { along, type ChosenPlace, lineLengthM } from './chosen-places.ts';
import type { Visit } from './field-days.ts';
import { positionOf } from './islands.ts';
import { surveyName } from './survey-words.ts';

export interface VisitedPlace {
  readonly year: SurveyYear;
  readonly place: ChosenPlace;
  readonly visit: Visit;
  readonly aborted: boolean;
}

export function stationRow({ year, place, visit, aborted }: VisitedPlace, random: SeededRandom): StationRow {
  const { code, site, patch, zone, selection, bearingDeg } = place;
  const arrived = along(place.planned, between(0, 359, random), between(4, 18, random));
  const planned = positionOf(place.planned);
  const start = positionOf(arrived);
  // The aborted dive came up after the second belt: 40 + 10 + 40 m.
  const end = positionOf(along(arrived, bearingDeg, aborted ? 90 : lineLengthM));
  return {
    survey: surveyName(year),
    code,
    site,
    stratum: patch.name,
    zone,
    ...visit,
    latitudeDeg: start.latitudeDeg,
    longitudeDeg: start.longitudeDeg,
    endLatitudeDeg: end.latitudeDeg,
    endLongitudeDeg: end.longitudeDeg,
    plannedLatitudeDeg: planned.latitudeDeg,
    plannedLongitudeDeg: planned.longitudeDeg,
    positionSource: 'gps',
    bearingDeg,
    depthM: Math.round(10 * place.depthM) / 10,
    mode: patch.mode,
    night: false,
    visibilityM: visibilityM(place, random),
    current: aborted ? 'strong' : oneOf(['none', 'weak', 'weak', 'moderate'], random),
    selection,
    note: aborted ? 'dive ended after the second belt; both divers back on board, no injury' : null,
  };
}

function visibilityM({ patch }: ChosenPlace, random: SeededRandom): number {
  if (patch.name === 'outer terrace') return between(18, 30, random);
  return patch.name === 'lagoon seagrass' ? between(5, 10, random) : between(8, 18, random);
}

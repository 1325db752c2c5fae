/** The belt strip of one station for one species, as the report draws it. */

import { beltStrip } from '../../report/belt-strip.ts';
import { joinSurvey } from '../../survey/survey-in-hand.ts';
import type { Sheet } from '../../tasks/sheets/sheet-schemas.ts';
import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';

/** SVG text; empty where the sheet names a stratum that these words do not know yet. */
export function stripOfSpecies(
  sheet: Sheet,
  words: SurveyWords,
  { species, width, fullCount }: { species: string; width: number; fullCount: number },
): string {
  const { survey, protocol, strata } = words;
  if (!strata.some((one) => one.id === sheet.station.stratumId)) return '';
  const rows = { stations: [sheet.station], transects: sheet.transects, tallies: sheet.tallies };
  const [station] = joinSurvey({ survey, protocol, strata, targets: [] }, rows).stations;
  const found = words.species.find((one) => one.name === species) ?? null;
  return station === undefined ? '' : beltStrip(station, { width, protocol, species: found, fullCount });
}

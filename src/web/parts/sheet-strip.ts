/** The belt strip of one sheet, as the report draws it. */

import { beltStrip } from '../../report/belt-strip.ts';
import { joinSurvey } from '../../survey/survey-in-hand.ts';
import type { Sheet } from '../../tasks/sheets/sheet-schemas.ts';
import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';

/** SVG text; all species together. `fullCount` fills a belt to its top. */
export function sheetStrip(sheet: Sheet, words: SurveyWords, { width, fullCount }: StripSize): string {
  const { survey, protocol } = words;
  // A sheet without its stratum yet is drawn all the same.
  const strata = words.strata.some((one) => one.id === sheet.station.stratumId)
    ? words.strata
    : [{ ...unknownStratum, id: sheet.station.stratumId }];
  const rows = { stations: [sheet.station], transects: sheet.transects, tallies: sheet.tallies };
  const { stations } = joinSurvey({ survey, protocol, strata, targets: [] }, rows);
  return beltStrip(stations[0]!, { width, protocol, species: null, fullCount });
}

interface StripSize {
  readonly width: number;
  readonly fullCount: number;
}

/** The most animals on one belt, so that strips side by side share one height. */
export function fullestBelt(sheets: Iterable<Sheet>): number {
  let most = 1;
  for (const { tallies } of sheets) {
    const counts = new Map<string, number>();
    for (const { transectId, count } of tallies)
      counts.set(transectId, (counts.get(transectId) ?? 0) + count);
    most = Math.max(most, ...counts.values());
  }
  return most;
}

const unknownStratum = { name: '?', habitat: null, areaHa: null, depthMinM: null, depthMaxM: null };

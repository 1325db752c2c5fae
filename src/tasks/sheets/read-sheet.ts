/** One sheet as the book holds it, and the revision that says whether somebody changed it since. */

import type { SurveyRows } from '../../survey/store.ts';
import type { Sheet, SheetInBook } from './sheet-schemas.ts';
import { plainText, type SheetTools } from './sheet-tools.ts';

export interface SheetPlace {
  readonly surveyId: string;
  readonly stationId: string;
}

/** Null when the station is not in that survey. */
export async function readSheet(
  { surveyId, stationId }: SheetPlace,
  { store, digest }: Pick<SheetTools, 'store' | 'digest'>,
): Promise<SheetInBook | null> {
  const sheet = sheetOf(await store.stationRecords(stationId));
  if (sheet === null || sheet.station.surveyId !== surveyId) return null;
  return { revision: revisionOf(sheet, digest), sheet };
}

export function sheetOf({ stations, transects, tallies }: SurveyRows): Sheet | null {
  const [station] = stations;
  return station === undefined ? null : { station, transects: [...transects], tallies: [...tallies] };
}

/** A digest of what the sheet says; the order in which its belts and counts are listed says nothing. */
export function revisionOf(sheet: Sheet, digest: SheetTools['digest']): string {
  return digest(
    plainText({
      station: sheet.station,
      transects: sheet.transects.toSorted(byIdentity),
      tallies: sheet.tallies.toSorted(byIdentity),
    }),
  );
}

function byIdentity(a: { readonly id: string }, b: { readonly id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

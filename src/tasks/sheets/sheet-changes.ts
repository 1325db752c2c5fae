/** What has to be written so that the book holds a sheet as it was typed. */

import type { Change } from '../../survey/store.ts';
import type { Sheet } from './sheet-schemas.ts';
import { plainText } from './sheet-tools.ts';

export interface SheetChanges {
  readonly changes: readonly Change[];
  readonly mustBeNew: ReadonlySet<string>;
}

/** `standing` is the sheet in the book; null when the station is new. What left the sheet is withdrawn. */
export function sheetChanges(standing: Sheet | null, typed: Sheet): SheetChanges {
  const before = new Map(recordsOf(standing).map((change) => [change.recordId, change]));
  const after = recordsOf(typed);
  const kept = new Set(after.map((change) => change.recordId));
  const withdrawn = [...before.values()]
    .filter(({ recordId }) => !kept.has(recordId))
    // A tally goes before its belt.
    .reverse()
    .map((change) => ({ ...change, after: null }) as Change);
  const written = after.filter(
    (change) => plainText(change.after) !== plainText(before.get(change.recordId)?.after),
  );
  const mustBeNew = new Set(written.map(({ recordId }) => recordId).filter((id) => !before.has(id)));
  return { changes: [...withdrawn, ...written], mustBeNew };
}

function recordsOf(sheet: Sheet | null): readonly Change[] {
  if (sheet === null) return [];
  return [
    { kind: 'station', recordId: sheet.station.id, after: sheet.station },
    ...sheet.transects.map((after) => ({ kind: 'transect', recordId: after.id, after }) as const),
    ...sheet.tallies.map((after) => ({ kind: 'tally', recordId: after.id, after }) as const),
  ];
}

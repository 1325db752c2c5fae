/**
 * Makes a typed sheet ready to be written: one act, whose identity is the request's.
 *
 * Nothing is written here, because several sheets share one commit. A sheet that somebody else changed in between
 * is never overwritten: both sides come back.
 */

import type { Act } from '../../survey/acts.ts';
import { pastSheet } from './past-sheet.ts';
import { readSheet, revisionOf, type SheetPlace } from './read-sheet.ts';
import { sheetChanges } from './sheet-changes.ts';
import type { SaveSheet, Sheet, SheetInBook } from './sheet-schemas.ts';
import type { SheetTools } from './sheet-tools.ts';

export type SheetReady =
  | { readonly state: 'to write'; readonly act: Act; readonly revision: string }
  /** The book holds it already: by this very request, or because nothing differs. */
  | { readonly state: 'stands'; readonly revision: string; readonly repeated: boolean }
  | { readonly state: 'stale'; readonly theirs: SheetInBook | null; readonly base: Sheet | null };

export async function readySheet(
  place: SheetPlace,
  request: SaveSheet,
  tools: SheetTools,
): Promise<SheetReady> {
  const standing = await readSheet(place, tools);
  const revision = revisionOf(request.sheet, tools.digest);
  if (await tools.store.actWritten(request.requestId)) {
    // Withdrawn since by somebody else: what was written then is all there is to say.
    return { state: 'stands', revision: standing?.revision ?? revision, repeated: true };
  }
  if (standing?.revision === revision) return { state: 'stands', revision, repeated: false };
  if ((standing?.revision ?? null) !== request.base) return staleSheet(place, request, standing, tools);
  const { changes, mustBeNew } = sheetChanges(standing?.sheet ?? null, request.sheet);
  const signature = {
    who: request.who,
    at: tools.at,
    device: request.device ?? tools.device,
    why: request.why,
  };
  return { state: 'to write', revision, act: { id: request.requestId, signature, changes, mustBeNew } };
}

async function staleSheet(
  { stationId }: SheetPlace,
  { base, sheet }: SaveSheet,
  theirs: SheetInBook | null,
  tools: SheetTools,
): Promise<SheetReady> {
  if (base === null) return { state: 'stale', theirs, base: null };
  const both = [sheet, ...(theirs === null ? [] : [theirs.sheet])];
  const recordIds = new Set(
    both.flatMap((one) => [one.station, ...one.transects, ...one.tallies].map(({ id }) => id)),
  );
  const past = await pastSheet({ stationId, revision: base, recordIds }, tools);
  return { state: 'stale', theirs, base: past };
}

/**
 * A sheet that was typed by mistake, withdrawn whole: its station with every belt and count, in one act. The history
 * keeps all of it. Photos have to go first. Weighings stay: they name a station by its code, and an animal was on the scale.
 */

import type { Change } from '../../survey/store.ts';
import type { ReadyToWrite } from './new-survey.ts';
import { readSheet, type SheetPlace } from './read-sheet.ts';
import type { SheetAway, SheetInBook } from './sheet-schemas.ts';
import type { SheetTools } from './sheet-tools.ts';

export type SheetAwayReady =
  | ReadyToWrite
  | { readonly state: 'stale'; readonly theirs: SheetInBook }
  | { readonly state: 'photos hang'; readonly photos: number }
  | { readonly state: 'no such station' };

/** One that is withdrawn already is answered as done: both wanted the same. */
export async function readySheetAway(
  place: SheetPlace,
  { requestId, base, who, why, device }: SheetAway,
  tools: SheetTools,
): Promise<SheetAwayReady> {
  const { store } = tools;
  const standing = await readSheet(place, tools);
  const repeated = await store.actWritten(requestId);
  if (repeated || (standing === null && (await wasThere(place, tools)))) {
    return { state: 'stands', revision: standing?.revision ?? base, repeated };
  }
  if (standing === null) return { state: 'no such station' };
  if (standing.revision !== base) return { state: 'stale', theirs: standing };
  const photos = (await store.all('photo')).filter(({ stationId }) => stationId === place.stationId).length;
  if (photos > 0) return { state: 'photos hang', photos };
  const { station, transects, tallies } = standing.sheet;
  const changes: Change[] = [
    ...tallies.map(({ id }) => ({ kind: 'tally', recordId: id, after: null }) as const),
    ...transects.map(({ id }) => ({ kind: 'transect', recordId: id, after: null }) as const),
    { kind: 'station', recordId: station.id, after: null },
  ];
  const signature = { who, at: tools.at, device: device ?? tools.device, why };
  const act = { id: requestId, signature, changes, mustBeNew: new Set<string>() };
  return { state: 'to write', revision: standing.revision, act };
}

async function wasThere({ surveyId, stationId }: SheetPlace, { store }: SheetTools): Promise<boolean> {
  for await (const { kind, before, after } of store.revisions(stationId)) {
    if (kind !== 'station') continue;
    const station = (after ?? before) as { readonly surveyId: string };
    if (station.surveyId === surveyId) return true;
  }
  return false;
}

/**
 * A photo taken away (it was taken or added by mistake) and brought back. Taking away is a revision like any other:
 * the history keeps who and why, and the file stays where it lies, so that it can be brought back.
 */

import type { Act } from '../../survey/acts.ts';
import { photoIdOf } from '../../survey/photo-words.ts';
import type { Revision, Store } from '../../survey/store.ts';
import type { Photo } from '../../survey/words.ts';
import { type PhotoReady, photoInBook, stationOf } from './photo.ts';
import type { PhotoAway, PhotoBack, PhotoGone } from './photo-schemas.ts';
import type { SheetTools } from './sheet-tools.ts';

/** One that is away already is answered as done: both wanted the same. */
export async function readyPhotoAway(
  sha256: string,
  request: PhotoAway,
  tools: SheetTools,
): Promise<PhotoReady> {
  const { standing, last } = await lastOf(sha256, tools.store);
  if (last === null) return { state: 'no such photo' };
  const photo = photoInBook(last, tools.digest);
  const repeated = await tools.store.actWritten(request.requestId);
  if (repeated || standing === null) return { state: 'stands', photo, repeated };
  if (photo.revision !== request.base) return { state: 'stale', theirs: photo };
  return { state: 'to write', act: actOn(last.id, null, request, tools), photo };
}

/** As it was when it was taken away; without its station if that was withdrawn meanwhile. */
export async function readyPhotoBack(
  sha256: string,
  request: PhotoBack,
  tools: SheetTools,
): Promise<PhotoReady> {
  const { standing, last } = await lastOf(sha256, tools.store);
  if (last === null) return { state: 'no such photo' };
  const repeated = await tools.store.actWritten(request.requestId);
  if (repeated || standing !== null) {
    return { state: 'stands', photo: photoInBook(last, tools.digest), repeated };
  }
  const isLoose = (await stationOf(last.stationId, tools.store)) === null;
  const loose = { ...last, stationId: null, content: { ...last.content, matchedBy: null } };
  const after = isLoose ? loose : last;
  const act = actOn(last.id, after, request, tools);
  return { state: 'to write', act, photo: photoInBook(after, tools.digest) };
}

/** Those of a survey (and of none yet) that are away, the last one first, each with who took it away, when and why. */
export async function photosAway(
  surveyId: string | null,
  { store, digest }: Pick<SheetTools, 'digest'> & { readonly store: Store },
): Promise<readonly PhotoGone[]> {
  const latest = new Map<string, Revision>();
  for await (const revision of store.revisions(undefined, ['photo'])) {
    latest.delete(revision.recordId);
    latest.set(revision.recordId, revision);
  }
  return [...latest.values()]
    .filter(({ after }) => after === null)
    .map(({ before, signature }) => ({ photo: before as Photo, signature }))
    .filter(({ photo }) => surveyId === null || photo.surveyId === null || photo.surveyId === surveyId)
    .map(({ photo, signature: { who, why, at } }) => ({ ...photoInBook(photo, digest), who, why, at }))
    .reverse();
}

/** `standing` is null while it is away, `last` where it never was in the book. */
async function lastOf(
  sha256: string,
  store: Store,
): Promise<{ readonly standing: Photo | null; readonly last: Photo | null }> {
  let newest: Revision | null = null;
  for await (const revision of store.revisions(photoIdOf(sha256))) newest = revision;
  const standing = (newest?.after ?? null) as Photo | null;
  return { standing, last: standing ?? ((newest?.before ?? null) as Photo | null) };
}

function actOn(
  recordId: string,
  after: Photo | null,
  { requestId, who, why, device }: PhotoBack,
  tools: SheetTools,
): Act {
  const signature = { who, at: tools.at, device: device ?? tools.device, why };
  return {
    id: requestId,
    signature,
    changes: [{ kind: 'photo', recordId, after }],
    mustBeNew: new Set<string>(),
  };
}

/**
 * Photos of the book: listed, and made ready to be added, matched to a station or taken off it. Each is an act with
 * its signature; the bytes are kept by whoever calls, before the act is written.
 */

import type { Act } from '../../survey/acts.ts';
import { type PhotoContent, photoIdOf } from '../../survey/photo-words.ts';
import type { Store } from '../../survey/store.ts';
import type { Photo, Station } from '../../survey/words.ts';
import type { ChangePhoto, NewPhoto, PhotoInBook } from './photo-schemas.ts';
import { plainText, type SheetTools } from './sheet-tools.ts';

/** What was found out from the bytes. */
export type PhotoBytes = Pick<Photo, 'sha256'> & Pick<PhotoContent, 'bytes' | 'type'>;

export type PhotoReady =
  | { readonly state: 'to write'; readonly act: Act; readonly photo: PhotoInBook }
  | { readonly state: 'stands'; readonly photo: PhotoInBook; readonly repeated: boolean }
  /** Somebody said something else of it in between. */
  | { readonly state: 'stale'; readonly theirs: PhotoInBook }
  | { readonly state: 'no such station' }
  | { readonly state: 'no such photo' };

export interface PhotosAsked {
  readonly stationId: string | null;
  /** Photos that no survey has yet are anybody's, and come along. */
  readonly surveyId: string | null;
}

/** In the order in which they were taken; those of unknown time last, by name. */
export async function photoList(
  { stationId, surveyId }: PhotosAsked,
  { store, digest }: Pick<SheetTools, 'digest'> & { readonly store: Store },
): Promise<readonly PhotoInBook[]> {
  const asked = (await store.all('photo')).filter(
    (photo) =>
      (stationId === null || photo.stationId === stationId) &&
      (surveyId === null || photo.surveyId === null || photo.surveyId === surveyId),
  );
  const place = ({ content }: Photo) => `${content.takenAt ?? '~'} ${content.name}`;
  return asked.sort((a, b) => (place(a) < place(b) ? -1 : 1)).map((photo) => photoInBook(photo, digest));
}

/** The same picture sent twice stays one photo; a station given now is taken over where it had none. */
export async function readyNewPhoto(
  request: NewPhoto,
  bytes: PhotoBytes,
  tools: SheetTools,
): Promise<PhotoReady> {
  const { store, digest } = tools;
  const standing = await findPhoto(bytes.sha256, store);
  const station = await stationOf(request.stationId, store);
  if (await store.actWritten(request.requestId)) {
    const photo = photoInBook(standing ?? newPhoto(request, bytes, station), digest);
    return { state: 'stands', photo, repeated: true };
  }
  if (request.stationId !== null && station === null) return { state: 'no such station' };
  if (standing === null) return toWrite(newPhoto(request, bytes, station), request, tools);
  const isSame = station === null || station.id === standing.stationId;
  if (isSame) return { state: 'stands', photo: photoInBook(standing, digest), repeated: false };
  if (standing.stationId !== null) return { state: 'stale', theirs: photoInBook(standing, digest) };
  return toWrite(matched(standing, station, request.matchedBy ?? 'by hand'), request, tools);
}

export async function readyPhotoChange(
  sha256: string,
  request: ChangePhoto,
  tools: SheetTools,
): Promise<PhotoReady> {
  const { store, digest } = tools;
  const standing = await findPhoto(sha256, store);
  if (standing === null) return { state: 'no such photo' };
  const now = photoInBook(standing, digest);
  if (await store.actWritten(request.requestId)) return { state: 'stands', photo: now, repeated: true };
  const station = await stationOf(request.stationId ?? null, store);
  if (typeof request.stationId === 'string' && station === null) return { state: 'no such station' };
  const after = changed(standing, request, station);
  if (photoInBook(after, digest).revision === now.revision) {
    return { state: 'stands', photo: now, repeated: false };
  }
  if (now.revision !== request.base) return { state: 'stale', theirs: now };
  return toWrite(after, request, tools);
}

async function findPhoto(sha256: string, store: Store): Promise<Photo | null> {
  return (await store.all('photo')).find((photo) => photo.sha256 === sha256) ?? null;
}

export async function stationOf(id: string | null, store: SheetTools['store']): Promise<Station | null> {
  return id === null ? null : ((await store.stationRecords(id)).stations[0] ?? null);
}

function newPhoto(request: NewPhoto, { sha256, bytes, type }: PhotoBytes, station: Station | null): Photo {
  const { name, takenAt, clockOffset, orientation, note } = request;
  const timeFrom = takenAt === null ? null : (request.timeFrom ?? 'by hand');
  const content = { name, bytes, type, takenAt, timeFrom, clockOffset, orientation, matchedBy: null, note };
  const photo = { id: photoIdOf(sha256), sha256, surveyId: request.surveyId, stationId: null, content };
  return station === null ? photo : matched(photo, station, request.matchedBy ?? 'by hand');
}

function matched(photo: Photo, station: Station, matchedBy: PhotoContent['matchedBy']): Photo {
  const content = { ...photo.content, matchedBy };
  return { ...photo, surveyId: station.surveyId, stationId: station.id, content };
}

function changed(photo: Photo, request: ChangePhoto, station: Station | null): Photo {
  const { takenAt, note, stationId, matchedBy } = request;
  const said = { ...photo.content };
  if (takenAt !== undefined && takenAt !== said.takenAt) {
    said.takenAt = takenAt;
    said.timeFrom = takenAt === null ? null : 'by hand';
  }
  if (note !== undefined) said.note = note;
  const after = { ...photo, content: said };
  if (station !== null && station.id !== photo.stationId) return matched(after, station, matchedBy);
  // It stays with its survey: its people are the ones who know where it belongs.
  return stationId === null ? { ...after, stationId: null, content: { ...said, matchedBy: null } } : after;
}

function toWrite(
  after: Photo,
  { requestId, who, why, device }: Pick<NewPhoto, 'requestId' | 'who' | 'why' | 'device'>,
  tools: SheetTools,
): PhotoReady {
  const signature = { who, at: tools.at, device: device ?? tools.device, why };
  const changes = [{ kind: 'photo', recordId: after.id, after } as const];
  const act = { id: requestId, signature, changes, mustBeNew: new Set<string>() };
  return { state: 'to write', act, photo: photoInBook(after, tools.digest) };
}

export function photoInBook(photo: Photo, digest: SheetTools['digest']): PhotoInBook {
  const { sha256, surveyId, stationId, content } = photo;
  return { revision: digest(plainText(photo)), sha256, surveyId, stationId, ...content };
}

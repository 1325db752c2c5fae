/** A waiting photo as the request that brings it into the book. */

import type { ChangePhotoRequest, PhotoAway } from '../../tasks/sheets/photo-schemas.ts';
import type { Asking } from '../state/api.ts';
import type { WaitingPhoto } from './waiting-photos.ts';

export function photoRequest(photo: WaitingPhoto, base: string | null): { path: string; asking: Asking } {
  if (photo.said.away !== undefined) return awayRequest(photo, photo.said.away, base);
  return photo.picture === null ? sayingRequest(photo, base) : addingRequest(photo, photo.picture);
}

function addingRequest(photo: WaitingPhoto, picture: Blob): { path: string; asking: Asking } {
  const { requestId, who, surveyId, file, said } = photo;
  const { name, clockOffset, orientation } = file;
  const isTyped = said.takenAt !== undefined && said.takenAt !== file.takenAt;
  const takenAt = isTyped ? said.takenAt : file.takenAt;
  const timeFrom = isTyped ? 'by hand' : 'EXIF';
  const { stationId, note } = said;
  const all = {
    requestId,
    who,
    name,
    surveyId,
    stationId,
    takenAt,
    timeFrom,
    clockOffset,
    orientation,
    note,
  };
  const known = Object.entries(all).filter(([, value]) => value !== null && value !== undefined);
  const query = new URLSearchParams(known.map(([key, value]) => [key, String(value)]));
  return { path: `/api/photos?${query}`, asking: { method: 'POST', body: picture, type: file.type } };
}

function awayRequest({ requestId, who, sha256 }: WaitingPhoto, why: string, base: string | null) {
  const body: Omit<PhotoAway, 'device'> = { requestId, base, who, why };
  return { path: `/api/photos/${sha256}/away`, asking: { method: 'POST' as const, body } };
}

function sayingRequest({ requestId, who, sha256, said }: WaitingPhoto, base: string | null) {
  const why = said.stationId === null ? 'photo taken off its station' : undefined;
  const body: ChangePhotoRequest = { requestId, base, who, why, ...said };
  return { path: `/api/photos/${sha256}`, asking: { method: 'PUT' as const, body } };
}

/** Photos: bytes kept whole under their checksum, what is known of them a record with its history. */

import * as z from 'zod';
import { checksumSchema, photoContentSchema } from '../../survey/photo-words.ts';
import { pictureType } from '../../survey/picture-type.ts';
import { type PhotoReady, photoList, readyNewPhoto, readyPhotoChange } from '../../tasks/sheets/photo.ts';
import { photosAway, readyPhotoAway, readyPhotoBack } from '../../tasks/sheets/photo-away.ts';
import {
  changePhotoSchema,
  newPhotoSchema,
  type PhotoSaved,
  photoAwaySchema,
  photoBackSchema,
  photoListSchema,
  photoSavedSchema,
  photosAwaySchema,
} from '../../tasks/sheets/photo-schemas.ts';
import { optionalId, optionalText, toolsNow } from '../common-schemas.ts';
import { Refusal } from '../refusal.ts';
import { type House, route } from '../route.ts';
import type { ReadySave } from '../save-queue.ts';
import { photoPolicy } from '../security-headers.ts';

const params = z.object({ sha256: checksumSchema });
const { takenAt, timeFrom, clockOffset, matchedBy, note } = newPhotoSchema.shape;
/** In an address everything is text. */
const sentQuery = newPhotoSchema.extend({
  device: optionalText,
  surveyId: optionalId,
  stationId: optionalId,
  matchedBy: optionalText.pipe(matchedBy),
  takenAt: optionalText.pipe(takenAt),
  timeFrom: optionalText.pipe(timeFrom),
  clockOffset: optionalText.pipe(clockOffset),
  orientation: optionalText
    .transform((text) => (text === null ? null : Number(text)))
    .pipe(photoContentSchema.shape.orientation),
  note: optionalText.pipe(note),
});

export const photoRoutes = [
  route({
    method: 'get',
    path: '/api/photos',
    summary: 'photos of a station, or of a survey with those that no survey has yet; without either, all',
    query: z.object({ surveyId: optionalId, stationId: optionalId }),
    answer: photoListSchema,
    handle: async ({ query }, house) => ({ photos: await photoList(query, toolsNow(house)) }),
  }),
  route({
    method: 'post',
    path: '/api/photos',
    summary: 'keeps a photo; the body is its bytes',
    query: sentQuery,
    bytes: { accepts: ['image/*', 'application/octet-stream'], limitMb: 40 },
    answer: photoSavedSchema,
    handle: async ({ query, bytes }, house) => {
      const type = pictureType(bytes);
      if (type === null) throw new Refusal('not-a-picture');
      const picture = { sha256: house.sha256(bytes), bytes: bytes.length, type };
      // First the bytes: a record never names a file that is not there.
      await house.photos.keep(picture, bytes);
      return savePhoto(picture.sha256, () => readyNewPhoto(query, picture, toolsNow(house)), house);
    },
  }),
  route({
    method: 'put',
    path: '/api/photos/{sha256}',
    summary: 'to which station it belongs, when it was taken, a note',
    params,
    body: changePhotoSchema,
    answer: photoSavedSchema,
    handle: async ({ params: { sha256 }, body }, house) =>
      savePhoto(sha256, () => readyPhotoChange(sha256, body, toolsNow(house)), house),
  }),
  route({
    method: 'post',
    path: '/api/photos/{sha256}/away',
    summary: 'takes it away, with a reason: the history keeps it and its file stays; answers it as it was',
    params,
    body: photoAwaySchema,
    answer: photoSavedSchema,
    handle: async ({ params: { sha256 }, body }, house) =>
      savePhoto(sha256, () => readyPhotoAway(sha256, body, toolsNow(house)), house),
  }),
  route({
    method: 'post',
    path: '/api/photos/{sha256}/back',
    summary: 'brings back one that was taken away, as it was',
    params,
    body: photoBackSchema,
    answer: photoSavedSchema,
    handle: async ({ params: { sha256 }, body }, house) =>
      savePhoto(sha256, () => readyPhotoBack(sha256, body, toolsNow(house)), house),
  }),
  route({
    method: 'get',
    path: '/api/photos-away',
    summary: 'photos that were taken away: of a survey with those that no survey had; without one, all',
    query: z.object({ surveyId: optionalId }),
    answer: photosAwaySchema,
    handle: async ({ query }, house) => ({ photos: await photosAway(query.surveyId, toolsNow(house)) }),
  }),
  route({
    method: 'get',
    path: '/api/photos/{sha256}',
    summary: 'the bytes as they came',
    params,
    answer: null,
    handle: async ({ params: { sha256 } }, { photos }) => {
      const picture = await photos.read(sha256);
      if (picture === null) throw new Refusal('no-such-photo');
      return new Response(picture.bytes, {
        headers: {
          'content-type': picture.type,
          'content-security-policy': photoPolicy,
          // Its address is its checksum: it never changes.
          'cache-control': 'private, max-age=31536000, immutable',
        },
      });
    },
  }),
];

function savePhoto(sha256: string, ready: () => Promise<PhotoReady>, house: House): Promise<PhotoSaved> {
  return house.queue.save({
    thing: `photo ${sha256}`,
    ready: async (): Promise<ReadySave<PhotoSaved>> => {
      const found = await ready();
      if (found.state === 'stale') throw new Refusal('photo-changed', {}, { theirs: found.theirs });
      if (found.state === 'no such station') throw new Refusal('no-such-station');
      if (found.state === 'no such photo') throw new Refusal('no-such-photo');
      const { photo } = found;
      if (found.state === 'to write') {
        return { act: found.act, answer: (dataVersion) => ({ ...photo, dataVersion, repeated: false }) };
      }
      const dataVersion = await house.store.dataVersion();
      return { act: null, answer: { ...photo, dataVersion, repeated: found.repeated } };
    },
  });
}

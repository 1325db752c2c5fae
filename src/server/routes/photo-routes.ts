/** Photos: kept whole under their checksum, matched to a station by hand. */

import * as z from 'zod';
import {
  matchPhotoSchema,
  type Photo,
  photoListSchema,
  photoSchema,
} from '../../tasks/sheets/answer-schemas.ts';
import { optionalId, optionalText } from '../common-schemas.ts';
import { pictureType } from '../picture-type.ts';
import { Refusal } from '../refusal.ts';
import { type House, route } from '../route.ts';
import { photoPolicy } from '../security-headers.ts';

const params = z.object({ sha256: photoSchema.shape.sha256 });
const sentQuery = z.object({
  name: z.string().min(1).max(300),
  surveyId: optionalId,
  stationId: optionalId,
  takenAt: optionalText.pipe(
    z
      .string()
      .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/)
      .nullable(),
  ),
});

export const photoRoutes = [
  route({
    method: 'get',
    path: '/api/photos',
    summary: 'photos of the book, of a survey or of a station',
    query: z.object({ surveyId: optionalId, stationId: optionalId }),
    answer: photoListSchema,
    handle: async ({ query }, { photos }) => ({
      photos: (await photos.all()).filter((photo) => belongs(photo, query)),
    }),
  }),
  route({
    method: 'post',
    path: '/api/photos',
    summary: 'keeps a photo; the body is its bytes',
    query: sentQuery,
    bytes: { accepts: ['image/*', 'application/octet-stream'], limitMb: 40 },
    answer: photoSchema,
    handle: async ({ query, bytes }, { photos, sha256 }) => {
      const type = pictureType(bytes);
      if (type === null) throw new Refusal('not-a-picture');
      const checksum = sha256(bytes);
      const standing = await photos.find(checksum);
      const photo: Photo = { ...query, ...known(standing), sha256: checksum, type, bytes: bytes.length };
      // Sent twice it stays one photo; a station given now is taken over.
      const matched = query.stationId === null ? photo : { ...photo, ...matchOf(query) };
      await photos.keep(matched, bytes);
      return matched;
    },
  }),
  route({
    method: 'put',
    path: '/api/photos/{sha256}/match',
    summary: 'to which station it belongs',
    params,
    body: matchPhotoSchema,
    answer: photoSchema,
    handle: async ({ params: { sha256 }, body }, house) => {
      const photo = { ...(await photoOf(sha256, house)), ...body };
      await house.photos.keep(photo, null);
      return photo;
    },
  }),
  route({
    method: 'get',
    path: '/api/photos/{sha256}',
    summary: 'the bytes as they came',
    params,
    answer: null,
    handle: async ({ params: { sha256 } }, house) => {
      const photo = await photoOf(sha256, house);
      const bytes = await house.photos.bytes(photo);
      if (bytes === null) throw new Refusal('no-such-photo');
      return new Response(bytes, {
        headers: {
          'content-type': photo.type,
          'content-security-policy': photoPolicy,
          // Its address is its checksum: it never changes.
          'cache-control': 'private, max-age=31536000, immutable',
        },
      });
    },
  }),
];

type Match = Pick<Photo, 'surveyId' | 'stationId'>;

function belongs(photo: Photo, { surveyId, stationId }: Match): boolean {
  return (
    (stationId === null || photo.stationId === stationId) &&
    (surveyId === null || photo.surveyId === surveyId)
  );
}

function known(standing: Photo | null): Partial<Photo> {
  return standing ?? {};
}

function matchOf({ surveyId, stationId }: Match): Match {
  return { surveyId, stationId };
}

async function photoOf(sha256: string, { photos }: House): Promise<Photo> {
  const photo = await photos.find(sha256);
  if (photo === null) throw new Refusal('no-such-photo');
  return photo;
}

/** Photos as they travel between the screen and the book: added with their bytes, matched to a station, taken off it. */

import * as z from 'zod';
import {
  checksumSchema,
  clockOffsetSchema,
  photoContentSchema,
  wallClockSchema,
} from '../../survey/photo-words.ts';
import { savedBy, shortText, uuid } from './sheet-schemas.ts';

const { matchedBy, orientation, timeFrom, note } = photoContentSchema.shape;

export const photoInBookSchema = z.object({
  /** To be sent as `base` with the next change. */
  revision: z.string(),
  /** Of the bytes as they came; also its address: /api/photos/SHA256. */
  sha256: checksumSchema,
  surveyId: uuid.nullable(),
  stationId: uuid.nullable(),
  ...photoContentSchema.shape,
});
export type PhotoInBook = z.infer<typeof photoInBookSchema>;
export const photoListSchema = z.object({ photos: z.array(photoInBookSchema) });

/** Sent only after it is on disk. */
export const photoSavedSchema = photoInBookSchema.extend({
  dataVersion: z.string(),
  /** True when this request had been written before: nothing changed now. */
  repeated: z.boolean(),
});
export type PhotoSaved = z.infer<typeof photoSavedSchema>;

/** What is said of a photo that comes with its bytes. */
export const newPhotoSchema = z.object({
  requestId: uuid,
  who: savedBy.who,
  why: savedBy.why.unwrap().default('photo added'),
  device: savedBy.device,
  name: photoContentSchema.shape.name,
  surveyId: uuid.nullable(),
  stationId: uuid.nullable(),
  matchedBy,
  takenAt: wallClockSchema.nullable(),
  timeFrom,
  clockOffset: clockOffsetSchema.nullable(),
  orientation,
  note,
});
export type NewPhoto = z.infer<typeof newPhotoSchema>;

/** What is left out stays as it is; a station of null takes the photo off its station. */
export const changePhotoSchema = z.object({
  ...savedBy,
  why: savedBy.why.unwrap().default('photo matched'),
  stationId: uuid.nullable().optional(),
  matchedBy: matchedBy.unwrap().default('by hand'),
  /** Typed by a person: the camera had none, or a wrong one. */
  takenAt: wallClockSchema.nullable().optional(),
  note: note.optional(),
});
export type ChangePhoto = z.infer<typeof changePhotoSchema>;
export type ChangePhotoRequest = z.input<typeof changePhotoSchema>;

/** Taken or added by mistake: the reason is asked for. */
export const photoAwaySchema = z.object({ ...savedBy, why: shortText });
export type PhotoAway = z.infer<typeof photoAwaySchema>;

export const photoBackSchema = z.object({
  requestId: uuid,
  who: savedBy.who,
  why: savedBy.why.unwrap().default('photo brought back'),
  device: savedBy.device,
});
export type PhotoBack = z.infer<typeof photoBackSchema>;

/** A photo that is away, as it was, with who took it away, why, and when (ISO instant). */
const photoGoneSchema = photoInBookSchema.extend({ who: z.string(), why: z.string(), at: z.string() });
export type PhotoGone = z.infer<typeof photoGoneSchema>;
export const photosAwaySchema = z.object({ photos: z.array(photoGoneSchema) });

export const stalePhotoSchema = z.object({
  code: z.literal('photo-changed'),
  message: z.string(),
  theirs: photoInBookSchema,
});

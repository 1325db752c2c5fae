/**
 * A photo as the book knows it: what it is, when it was taken, and to which station it belongs. Its bytes lie in
 * the folder `photos` of the book under their checksum; see `store/photo-files.ts`.
 */

import * as z from 'zod';

const text = z.string().min(1);

/** SHA-256 of the bytes as they came, in small hexadecimal digits. */
export const checksumSchema = z.string().regex(/^[0-9a-f]{64}$/);

export const photoTypes = [
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/heic',
  'image/gif',
  'image/tiff',
] as const;

/** How the files of each type end. */
export const photoEndings: Readonly<Record<(typeof photoTypes)[number], string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'image/gif': 'gif',
  'image/tiff': 'tif',
};

/** Wall-clock time without a zone, ISO form: the team's own time, like every time of the book. */
export const wallClockSchema = z
  .string()
  .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/);
/** Hours from UTC as the camera wrote them: "+12:00". */
export const clockOffsetSchema = z.string().regex(/^[+-]\d\d:\d\d$/);

export const photoContentSchema = z.object({
  /** As the camera or the folder called it. */
  name: text.max(300),
  bytes: z.number().int().positive(),
  type: z.enum(photoTypes),
  takenAt: wallClockSchema.nullable(),
  /** Who said so; null with a photo of unknown time. */
  timeFrom: z.enum(['EXIF', 'by hand']).nullable(),
  /** Null where the camera wrote none. The time is never moved by it: whether the camera was set right, only people know. */
  clockOffset: clockOffsetSchema.nullable(),
  /** How the camera was held: 1 upright to 8, as EXIF numbers it; null where it does not say. */
  orientation: z.number().int().min(1).max(8).nullable(),
  /** By what its station was found; null while it has none. */
  matchedBy: z.enum(['by hand', 'QR']).nullable(),
  note: text.max(1000).nullable(),
});
export type PhotoContent = z.infer<typeof photoContentSchema>;

/**
 * The identity of a photo: a UUIDv8 (RFC 9562, 5.8) made of its checksum, so that one picture added on two laptops
 * is one record on both.
 */
export function photoIdOf(sha256: string): string {
  const variant = ((Number.parseInt(sha256[16]!, 16) & 3) | 8).toString(16);
  const digits = `${sha256.slice(0, 12)}8${sha256.slice(13, 16)}${variant}${sha256.slice(17, 32)}`;
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

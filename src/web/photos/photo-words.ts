/** What is said under a photo. */

import type { Words } from '../words/en.ts';
import type { ShownPhoto } from './shown-photos.ts';

type PhotoWords = Words['photos'];

export function takenInWords(
  { takenAt, timeFrom, clockOffset }: Pick<ShownPhoto, 'takenAt' | 'timeFrom' | 'clockOffset'>,
  w: PhotoWords,
): string {
  if (takenAt === null) return w.noTime;
  const time = takenAt.slice(0, 16).replace('T', ' ');
  if (timeFrom === 'by hand') return w.takenByHand(time);
  return clockOffset === null ? w.taken(time) : w.takenZone(time, clockOffset);
}

/** Why a picture is not to be seen. */
export function unseenInWords({ type }: Pick<ShownPhoto, 'type'>, w: PhotoWords): string {
  if (type === 'image/heic') return w.heic;
  return type === 'image/tiff' ? w.tiff : w.broken;
}

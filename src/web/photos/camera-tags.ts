/** What a camera wrote into its picture (EXIF): when, by which clock, and how it was held. Anything that is not as the standard says is not said. */

import { clockOffsetSchema, wallClockSchema } from '../../survey/photo-words.ts';

export interface CameraTags {
  /** Wall-clock time of the camera, without a zone: the team's own time. */
  readonly takenAt: string | null;
  readonly clockOffset: string | null;
  readonly orientation: number | null;
}

/** Never throws: a picture with damaged tags is a picture without them. */
export async function cameraTags(bytes: ArrayBuffer): Promise<CameraTags> {
  const { parse } = await import('exifr/dist/lite.esm.mjs');
  // Its own choosing of tags ("pick") needs dictionaries that the light build leaves out, and throws without them.
  const options = { gps: false, reviveValues: false, translateValues: false };
  // Called inside: the library throws at once for some files, later for others.
  const tags = await Promise.resolve()
    .then(() => parse(bytes, options))
    .catch(() => undefined);
  return {
    takenAt: takenAtOf(tags?.['DateTimeOriginal']),
    clockOffset: clockOffsetSchema.safeParse(plain(tags?.['OffsetTimeOriginal'])).data ?? null,
    orientation: orientationOf(tags?.['Orientation']),
  };
}

/** "YYYY:MM:DD HH:MM:SS" (EXIF 2.32, tag 36867); blanks or zeros where the camera does not know. */
function takenAtOf(value: unknown): string | null {
  const match = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)$/.exec(plain(value));
  if (match === null) return null;
  const [, year, month, day, time] = match;
  return wallClockSchema.safeParse(`${year}-${month}-${day}T${time}`).data ?? null;
}

function orientationOf(value: unknown): number | null {
  return typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= 8 ? value : null;
}

/** Texts end with a zero byte there, and some cameras pad them. */
function plain(value: unknown): string {
  return typeof value === 'string' ? value.replace(/\0.*$/s, '').trim() : '';
}

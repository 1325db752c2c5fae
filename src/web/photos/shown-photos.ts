/** The photos of a survey as a person sees them: what the book says, with what waits on this laptop over it. */

import type { PhotoInBook } from '../../tasks/sheets/photo-schemas.ts';
import type { WaitingPhoto } from './waiting-photos.ts';

export interface ShownPhoto extends Omit<PhotoInBook, 'revision'> {
  /** Null while the book does not have it. */
  readonly revision: string | null;
  /** The bytes, where only this laptop has them. */
  readonly picture: Blob | null;
  /** Something of it is not in the book yet. */
  readonly waits: boolean;
}

export function shownPhotos(
  inBook: readonly PhotoInBook[],
  waiting: readonly WaitingPhoto[],
): readonly ShownPhoto[] {
  const shown = new Map<string, ShownPhoto>(
    inBook.map((photo) => [photo.sha256, { ...photo, picture: null, waits: false }]),
  );
  const away = new Set<string>();
  for (const one of waiting) {
    // What the book said against it stands until a person has looked.
    if (one.state === 'conflict') continue;
    if (one.said.away !== undefined && one.state === 'waiting') away.add(one.sha256);
    const standing = shown.get(one.sha256) ?? asAdded(one);
    shown.set(one.sha256, {
      ...standing,
      ...saidOf(one),
      picture: one.picture ?? standing.picture,
      waits: true,
    });
  }
  const place = ({ takenAt, name }: ShownPhoto) => `${takenAt ?? '~'} ${name}`;
  return [...shown.values()]
    .filter(({ sha256 }) => !away.has(sha256))
    .toSorted((a, b) => (place(a) < place(b) ? -1 : 1));
}

function asAdded({ sha256, surveyId, file }: WaitingPhoto): ShownPhoto {
  const timeFrom = file.takenAt === null ? null : 'EXIF';
  const unknown = { revision: null, stationId: null, matchedBy: null, note: null, picture: null } as const;
  return { sha256, surveyId, ...file, timeFrom, ...unknown, waits: true };
}

function saidOf({ said, surveyId }: WaitingPhoto): Partial<ShownPhoto> {
  const { stationId, takenAt, note } = said;
  return {
    ...(stationId === undefined ? {} : { stationId, matchedBy: stationId === null ? null : 'by hand' }),
    ...(typeof stationId === 'string' ? { surveyId } : {}),
    ...(takenAt === undefined ? {} : { takenAt, timeFrom: takenAt === null ? null : 'by hand' }),
    ...(note === undefined ? {} : { note }),
  };
}

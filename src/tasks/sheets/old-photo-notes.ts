/**
 * Before version 6 of the book, what was known of a photo stood in a note beside it (`photos/SHA256.json`), without
 * history. They are brought in as records, one act for all, the first time such a book is served.
 */

import * as z from 'zod';
import { checksumSchema, photoIdOf, photoTypes, wallClockSchema } from '../../survey/photo-words.ts';
import type { Signature, Store } from '../../survey/store.ts';
import type { Photo } from '../../survey/words.ts';

export const oldPhotoNoteSchema = z.object({
  sha256: checksumSchema,
  type: z.enum(photoTypes),
  bytes: z.number().int().positive(),
  name: z.string().min(1),
  takenAt: wallClockSchema.nullable().catch(null),
  surveyId: z.uuid().nullable().catch(null),
  stationId: z.uuid().nullable().catch(null),
});
export type OldPhotoNote = z.infer<typeof oldPhotoNoteSchema>;

/** How many came in. A photo that was in the book at any time is left as people left it. */
export async function bringInPhotoNotes(
  notes: readonly OldPhotoNote[],
  store: Store,
  { who, at, device, newId }: Omit<Signature, 'why'> & { readonly newId: () => string },
): Promise<number> {
  const known = new Set<string>();
  for await (const { recordId } of store.revisions(undefined, ['photo'])) known.add(recordId);
  const fresh = notes.filter(({ sha256 }) => !known.has(photoIdOf(sha256)));
  if (fresh.length === 0) return 0;
  const surveys = new Set((await store.all('survey')).map(({ id }) => id));
  const stations = new Map((await store.all('station')).map((one) => [one.id, one.surveyId]));
  const changes = fresh.map((note) => {
    const after = photoOf(note, { surveys, stations });
    return { kind: 'photo', recordId: after.id, after } as const;
  });
  await store.apply(changes, { who, at, device, why: 'photos kept before they had a history' }, newId);
  return changes.length;
}

interface Known {
  readonly surveys: ReadonlySet<string>;
  /** The survey of each station. */
  readonly stations: ReadonlyMap<string, string>;
}

/** A station that is not in the book was a sheet that nobody saved: the photo waits for a hand. */
function photoOf(note: OldPhotoNote, { surveys, stations }: Known): Photo {
  const { sha256, name, bytes, type, takenAt } = note;
  const ofStation = stations.get(note.stationId ?? '') ?? null;
  const ofNote = note.surveyId !== null && surveys.has(note.surveyId) ? note.surveyId : null;
  return {
    id: photoIdOf(sha256),
    sha256,
    surveyId: ofStation ?? ofNote,
    stationId: ofStation === null ? null : note.stationId,
    content: {
      name: name.slice(0, 300),
      bytes,
      type,
      takenAt,
      // Until then only cameras gave a time.
      timeFrom: takenAt === null ? null : 'EXIF',
      clockOffset: null,
      orientation: null,
      matchedBy: ofStation === null ? null : 'by hand',
      note: null,
    },
  };
}

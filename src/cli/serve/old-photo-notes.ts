/** Notes of photos as earlier versions kept them, read from the folder. They stay where they are. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isPlainFile, photoFilePath, photosName } from '../../store/photo-files.ts';
import { type OldPhotoNote, oldPhotoNoteSchema } from '../../tasks/sheets/old-photo-notes.ts';

/** A note without its picture, and a file that is no note, are nobody's photo. */
export function oldPhotoNotes(folder: string): readonly OldPhotoNote[] {
  const photos = join(folder, photosName);
  if (!existsSync(photos)) return [];
  return readdirSync(photos)
    .filter((name) => /^[0-9a-f]{64}\.json$/.test(name))
    .flatMap((name) => readNote(join(photos, name)) ?? [])
    .filter((note) => isPlainFile(photoFilePath(folder, note)));
}

function readNote(path: string): OldPhotoNote | null {
  if (!isPlainFile(path)) return null;
  try {
    return oldPhotoNoteSchema.safeParse(JSON.parse(readFileSync(path, 'utf8'))).data ?? null;
  } catch {
    return null;
  }
}

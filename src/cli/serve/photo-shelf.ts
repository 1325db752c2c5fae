/**
 * Photos in the book: `photos/SHA256.jpg` as it came, and `photos/SHA256.json` with what is known of it.
 * Both are written whole or not at all, and are on disk before anybody is told.
 */

import { existsSync, lstatSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoShelf } from '../../server/dependencies.ts';
import { type Photo, photoSchema } from '../../tasks/sheets/answer-schemas.ts';
import { writeWhole } from '../write-whole.ts';

export function photoShelf(book: string): PhotoShelf {
  const folder = join(book, 'photos');
  return {
    all: async () => noted(folder),
    find: async (sha256) => readNote(join(folder, `${sha256}.json`)),
    bytes: async (photo) => {
      const path = pictureOf(folder, photo);
      return isPlainFile(path) ? new Uint8Array(await readFile(path)) : null;
    },
    keep: async (photo, bytes) => {
      mkdirSync(folder, { recursive: true });
      const path = pictureOf(folder, photo);
      if (bytes !== null && !isPlainFile(path)) writeWhole(path, bytes);
      // The note comes last: a photo without its note was never acknowledged.
      writeWhole(join(folder, `${photo.sha256}.json`), `${JSON.stringify(photo, null, 2)}\n`);
    },
  };
}

function pictureOf(folder: string, { sha256, type }: Photo): string {
  return join(folder, `${sha256}.${endings[type]}`);
}

const endings: Readonly<Record<Photo['type'], string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'image/heic': 'heic',
  'image/gif': 'gif',
  'image/tiff': 'tif',
};

function noted(folder: string): readonly Photo[] {
  if (!existsSync(folder)) return [];
  const notes = readdirSync(folder).filter((name) => /^[0-9a-f]{64}\.json$/.test(name));
  return notes
    .map((name) => readNote(join(folder, name)))
    .filter((photo) => photo !== null)
    .sort((a, b) => (`${a.takenAt} ${a.name}` < `${b.takenAt} ${b.name}` ? -1 : 1));
}

/** Null where there is none, or where somebody wrote something else into it. */
function readNote(path: string): Photo | null {
  if (!isPlainFile(path)) return null;
  try {
    return photoSchema.safeParse(JSON.parse(readFileSync(path, 'utf8'))).data ?? null;
  } catch {
    return null;
  }
}

/** What a link points at is not the book's. */
function isPlainFile(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isFile() === true;
}

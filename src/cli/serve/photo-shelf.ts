/** The bytes of the photos of a book: `photos/SHA256.jpg` as they came, on disk whole before anybody is told. */

import { readFile } from 'node:fs/promises';
import type { PhotoShelf } from '../../server/dependencies.ts';
import { isPlainFile, photoFilePath } from '../../store/photo-files.ts';
import { photoTypes } from '../../survey/photo-words.ts';
import { writeWhole } from '../write-whole.ts';

export function photoShelf(book: string): PhotoShelf {
  return {
    read: async (sha256) => {
      for (const type of photoTypes) {
        const path = photoFilePath(book, { sha256, type });
        if (isPlainFile(path)) return { type, bytes: new Uint8Array(await readFile(path)) };
      }
      return null;
    },
    keep: async (photo, bytes) => {
      const path = photoFilePath(book, photo);
      if (!isPlainFile(path)) writeWhole(path, bytes);
    },
  };
}

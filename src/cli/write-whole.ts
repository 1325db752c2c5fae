import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { Failure } from '../survey/failure.ts';

/**
 * Writes a file under another name, makes sure it is on disk, then gives it its name: a reader sees the
 * old file or the new one, never half of one. Throws a Failure with the path when the disk refuses.
 */
export function writeWhole(path: string, content: string | Uint8Array): void {
  const draft = `${path}.draft`;
  try {
    mkdirSync(dirname(path), { recursive: true });
    const file = openSync(draft, 'w');
    try {
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      let written = 0;
      while (written < bytes.length) written += writeSync(file, bytes, written);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    throw new Failure('cannot-write', { path, detail: (error as Error).message });
  }
}

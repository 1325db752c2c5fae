/** Files of a command line, read whole; what cannot be read is a problem, never an exception. */

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { Failure } from '../survey/failure.ts';
import type { Problem } from '../survey/message.ts';
import { problemOf } from '../survey/problem-of.ts';

export interface FileBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const tableFile = /\.(csv|tsv|txt|xlsx)$/i;

/** The files named, and the table files of the folders named (not of folders within). */
export function collectFiles(
  paths: readonly string[],
  cwd: string,
): { readonly files: readonly FileBytes[]; readonly problems: readonly Problem[] } {
  const files: FileBytes[] = [];
  const problems: Problem[] = [];
  for (const path of paths) {
    const full = resolve(cwd, path);
    try {
      if (statSync(full).isDirectory()) {
        const names = readdirSync(full).filter((name) => tableFile.test(name) && !name.startsWith('~$'));
        if (names.length === 0) {
          problems.push(problemOf('nothing-to-read', { file: path }, { value: path }));
        }
        for (const name of names.sort()) files.push({ name, bytes: readFileSync(join(full, name)) });
      } else {
        files.push({ name: basename(full), bytes: readFileSync(full) });
      }
    } catch (error) {
      const isThere = (error as NodeJS.ErrnoException).code !== 'ENOENT';
      const why = (error as Error).message;
      const code = isThere ? 'file-unreadable' : 'no-such-file';
      problems.push(problemOf(code, { file: path }, { value: path, parameters: isThere ? { why } : {} }));
    }
  }
  return { files, problems };
}

/** One file that has to be there. Throws a Failure when it is not. */
export function readOneFile(path: string, cwd: string): FileBytes {
  try {
    return { name: basename(path), bytes: readFileSync(resolve(cwd, path)) };
  } catch {
    throw new Failure('path-not-found', { path });
  }
}

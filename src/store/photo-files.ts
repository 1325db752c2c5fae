/** The photographs of a book as files: listed, copied with their checksums, compared. */

import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  writeSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { photoEndings } from '../survey/photo-words.ts';
import type { Photo } from '../survey/words.ts';

export interface PhotoFile {
  /** Path within `photos/`, with `/` between. */
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

export const photosName = 'photos';

type PhotoName = Pick<Photo, 'sha256'> & Pick<Photo['content'], 'type'>;

/** How the file of a photo is called within `photos/`. */
export function photoFileName({ sha256, type }: PhotoName): string {
  return `${sha256}.${photoEndings[type]}`;
}

export function photoFilePath(folder: string, photo: PhotoName): string {
  return join(folder, photosName, photoFileName(photo));
}

/** What a link points at is not the book's. */
export function isPlainFile(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isFile() === true;
}

/** Paths within `photos/`, in order. Links are left alone: what they point at is not the book's. */
export function photoPaths(folder: string): readonly string[] {
  return pathsIn(join(folder, photosName), '').sort();
}

/** Folder by folder: Node's own recursive reading goes through links to folders. */
function pathsIn(root: string, inside: string): string[] {
  const here = join(root, inside);
  if (!existsSync(here)) return [];
  return readdirSync(here, { withFileTypes: true }).flatMap((entry) => {
    const path = inside === '' ? entry.name : `${inside}/${entry.name}`;
    if (entry.isDirectory()) return pathsIn(root, path);
    return entry.isFile() ? [path] : [];
  });
}

/** Copies one photo and reads the copy again. Throws when it is not what was read. */
export function copyPhoto(path: string, from: string, to: string): PhotoFile {
  const bytes = readFileSync(join(from, photosName, path));
  const target = join(to, photosName, path);
  mkdirSync(dirname(target), { recursive: true });
  const file = openSync(target, 'w');
  try {
    for (let written = 0; written < bytes.length; ) written += writeSync(file, bytes, written);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  const photo = { path, bytes: bytes.length, sha256: sha256(bytes) };
  if (photoState(to, photo) !== 'same') throw new Error(`the copy of the photo ${path} is not like it`);
  return photo;
}

export function photoState(
  folder: string,
  photo: Pick<PhotoFile, 'path' | 'sha256'>,
): 'same' | 'changed' | 'missing' {
  const path = join(folder, photosName, photo.path);
  if (!existsSync(path)) return 'missing';
  return sha256(readFileSync(path)) === photo.sha256 ? 'same' : 'changed';
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/**
 * The built screens as a list of addresses. An address is looked up in the list and never put together with a
 * path, so that no address leads out of the folder; links are not followed.
 */

import { existsSync, lstatSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { ScreenFile } from '../../server/dependencies.ts';

export function screenFiles(folder: string): (address: string) => Promise<ScreenFile | null> {
  let files = listed(folder);
  return async (address) => {
    // Built again while the server runs: looked through again only when something is missed.
    if (!files.has(address)) files = listed(folder);
    const path = files.get(address);
    if (path === undefined || !lstatSync(path, { throwIfNoEntry: false })?.isFile()) return null;
    return { bytes: new Uint8Array(await readFile(path)), type: typeOf(path) };
  };
}

function listed(folder: string): ReadonlyMap<string, string> {
  const paths = existsSync(folder) ? filesWithin(folder) : [];
  return new Map(paths.map((path) => [`/${relative(folder, path).split(sep).join('/')}`, path]));
}

/** By hand, because the recursive reading of Node goes through links to folders. */
function filesWithin(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesWithin(path) : entry.isFile() ? [path] : [];
  });
}

function typeOf(path: string): string {
  return contentTypes[extname(path).toLowerCase()] ?? 'application/octet-stream';
}

const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};

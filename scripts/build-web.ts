/**
 * Builds the screens into dist/web, and their service worker with the list of files it keeps.
 * A worker of our own of forty lines: the usual plugin brings some 350 packages for building.
 * `--if-needed` does nothing when no source is newer than what was built.
 */

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build } from 'vite';

const root = resolve(import.meta.dirname, '..');
const source = join(root, 'src');
const built = join(root, 'dist/web');
const worker = join(built, 'sw.js');
/** Built beside the old ones and put in their place at the end: a server that runs always has whole screens. */
const next = `${built}-next`;

if (process.argv.includes('--if-needed') && isFresh()) process.exit(0);
// Started by a test runner it would else build the libraries' slow, talkative form, and leave it to whoever comes next.
process.env['NODE_ENV'] = 'production';
process.stderr.write('building the screens (once, and after every change of the program) …\n');
await build({
  root: join(source, 'web'),
  configFile: false,
  logLevel: 'warn',
  plugins: [svelte({ configFile: false, compilerOptions: { runes: true } })],
  // The thread that works numbers out loads sentences when they are needed, as the screens do.
  worker: { format: 'es' },
  build: {
    outDir: next,
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
writeFileSync(join(next, 'sw.js'), workerText(next));
rmSync(built, { recursive: true, force: true });
renameSync(next, built);
if (process.argv.includes('--sizes')) printSizes();

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

/** Rooms that the screens import as well: a changed sentence is a changed screen. */
function isFresh(): boolean {
  if (!existsSync(worker)) return false;
  const sources = [...filesIn(source), import.meta.filename, join(root, 'package-lock.json')];
  return Math.max(...sources.map((file) => statSync(file).mtimeMs)) < statSync(worker).mtimeMs;
}

function workerText(folder: string): string {
  const files = filesIn(folder).filter((file) => !file.endsWith('sw.js') && !file.endsWith('.map'));
  const addresses = files.map((file) => `/${relative(folder, file).split(sep).join('/')}`).sort();
  const digest = createHash('sha256');
  for (const file of files.sort()) digest.update(relative(folder, file)).update(readFileSync(file));
  const list = addresses.filter((address) => address !== '/index.html');
  return readFileSync(join(source, 'web/offline/worker.js'), 'utf8')
    .replace("'FILES'", JSON.stringify(['/', ...list]))
    .replace('VERSION', digest.digest('hex').slice(0, 16));
}

function printSizes(): void {
  for (const file of filesIn(built).filter((name) => name.endsWith('.js'))) {
    const bytes = readFileSync(file);
    const kB = (gzipSync(bytes).length / 1000).toFixed(1);
    process.stdout.write(`${kB.padStart(8)} kB gzip  ${relative(built, file)}\n`);
  }
}

/**
 * Works on a book until somebody kills it: `FOLDER imports|saves FIRST`.
 * Says "begin N" before and "done N" after each piece of work, so that the killer knows what was acknowledged.
 */

import { mkdtempSync, writeFileSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { identityMaker } from '../../src/cli/identity.ts';
import { openBook } from '../../src/store/book-folder.ts';
import { importTables, sheetOf } from './pieces-of-work.ts';

const [folder, kind, first] = process.argv.slice(2);
const newId = identityMaker(Date.now);
const say = (text: string) => writeSync(1, `${text}\n`);

if (kind === 'imports') await importForever(folder!, Number(first));
else await saveForever(folder!, Number(first));

async function importForever(book: string, from: number): Promise<never> {
  // Loaded only here: a save needs a tenth of it, and 200 programs are started.
  const { run } = await import('../../src/cli/run.ts');
  for (let n = from; ; n++) {
    const tables = mkdtempSync(join(dirname(book), 'evening-'));
    for (const [name, text] of Object.entries(importTables(n))) writeFileSync(join(tables, name), text);
    say(`begin ${n}`);
    const exitCode = await run(['import', tables, '--book', book], io());
    if (exitCode !== 0) throw new Error(`import ${n} ended with ${exitCode}`);
    say(`done ${n}`);
  }
}

async function saveForever(book: string, from: number): Promise<never> {
  const store = await openBook(book);
  const frame = {
    survey: (await store.all('survey'))[0]!,
    stratum: (await store.all('stratum'))[0]!,
    species: await store.all('species'),
  };
  const signature = { who: 'Recorder A', device: 'laptop', why: 'sheet' };
  for (let n = from; ; n++) {
    say(`begin ${n}`);
    const at = new Date().toISOString();
    await store.apply(sheetOf(n, frame, newId), { ...signature, at }, newId);
    say(`done ${n}`);
    // The killer must get a word in between.
    await new Promise((next) => setImmediate(next));
  }
}

function io() {
  return {
    stdout: () => {},
    stderr: () => {},
    env: {},
    cwd: '/',
    now: () => new Date(),
    newId,
    continueAfter: newId.continueAfter,
    device: 'laptop',
    user: 'Recorder A',
    isTerminal: false,
  };
}

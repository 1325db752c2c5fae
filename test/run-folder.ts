/**
 * One temporary folder for a whole run of the tests, and for every program they start: what a test leaves there, also
 * one that failed, goes with it at the end. What a run that was killed left behind goes at the next one.
 */

import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const name = 'slateline-run-';

export default function setup(): () => void {
  const shared = tmpdir();
  for (const left of readdirSync(shared).filter((one) => one.startsWith(name) && !isRunning(one)))
    remove(join(shared, left));
  const own = join(shared, `${name}${process.pid}`);
  mkdirSync(own, { recursive: true });
  // The first is asked for on Linux and macOS, the others on Windows; workers and their programs inherit them.
  for (const variable of ['TMPDIR', 'TEMP', 'TMP']) process.env[variable] = own;
  return () => remove(own);
}

function isRunning(folder: string): boolean {
  try {
    process.kill(Number(folder.slice(name.length)), 0);
    return true;
  } catch {
    return false;
  }
}

/** A browser may still write its last words. */
function remove(folder: string): void {
  rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}

/** What many tests begin with is made by the first that asks in a run of the tests; the others wait for it. */

import { cpSync, existsSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

/** The temporary folder is the run's own: run-folder.ts. */
export async function onceInARun(name: string, work: () => unknown): Promise<void> {
  const begun = join(tmpdir(), `begun-${name}`);
  const ended = join(tmpdir(), `ended-${name}`);
  if (!isFirst(begun)) {
    while (!existsSync(ended)) await sleep(100);
    return;
  }
  try {
    await work();
  } finally {
    // Also when it failed: the others then fail at what is missing, and do not wait for ever.
    mkdirSync(ended);
  }
}

/** A folder, copied for each. */
export async function copyOfMadeOnce(
  name: string,
  { make, to }: { readonly make: (folder: string) => unknown; readonly to: string },
): Promise<void> {
  const made = join(tmpdir(), `made-${name}`);
  await onceInARun(name, () => make(made));
  cpSync(made, to, { recursive: true });
}

function isFirst(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

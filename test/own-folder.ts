import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folders: string[] = [];

/** A new temporary folder for a program that is no test: gone when it ends, also when it fails. Tests: run-folder.ts. */
export function ownFolder(what: string): string {
  if (folders.length === 0) process.once('exit', removeAll);
  const folder = mkdtempSync(join(tmpdir(), `slateline-${what}-`));
  folders.push(folder);
  return folder;
}

function removeAll(): void {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
}

import { closeSync, fsyncSync, openSync } from 'node:fs';

/** Waits until a file that another hand wrote is on disk. */
export function syncFile(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Waits until the names in a folder are on disk; where folders cannot be opened (Windows) the system does it. */
export function syncFolder(path: string): void {
  if (process.platform === 'win32') return;
  const folder = openSync(path, 'r');
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}

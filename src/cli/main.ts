/**
 * Room `cli`: the only one that knows the store, the files and (later) the server, and joins them.
 * `main` handles the process; everything else is `run(args, io)`, which tests call directly.
 */

import { userInfo } from 'node:os';
import { deviceName } from '../store/device.ts';
import { identityMaker } from './identity.ts';
import type { Io } from './io.ts';
import { run } from './run.ts';

export async function main(): Promise<void> {
  process.stdout.on('error', endQuietlyWhenTheReaderLeft);
  process.exitCode = await run(process.argv.slice(2), processIo());
}

function processIo(): Io {
  const newId = identityMaker(Date.now);
  return {
    stdout: (text) => void process.stdout.write(text),
    stderr: (text) => void process.stderr.write(text),
    env: process.env,
    cwd: process.cwd(),
    now: () => new Date(),
    newId,
    continueAfter: newId.continueAfter,
    device: deviceName(),
    user: userName(),
    isTerminal: process.stderr.isTTY === true,
  };
}

/** A laptop without an account name (some containers) still has a person before it. */
function userName(): string {
  try {
    return userInfo().username;
  } catch {
    return 'unnamed';
  }
}

/** `slateline density | head` closes our output early; that is the reader's right, not a fault. */
function endQuietlyWhenTheReaderLeft(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
}

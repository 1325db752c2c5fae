/** Turns what SQLite says into a failure a person can act on. Anything unknown stays as it was thrown. */

import { Failure } from '../survey/failure.ts';

export function asFailure(error: unknown, folder: string): unknown {
  const code = primaryResultCode(error);
  if (code === null) return error;
  const detail = (error as Error).message;
  if (resultCode(error) === databaseMoved) return new Failure('folder-gone', { folder }, error);
  switch (code) {
    case busy:
    case locked:
      return new Failure('book-locked', { folder }, error);
    case readOnly:
    case permission:
      return new Failure('read-only', { folder }, error);
    case full:
      return new Failure('disk-full', { folder }, error);
    case ioError:
    case cannotOpen:
      return new Failure('disk-fault', { folder, detail }, error);
    case corrupt:
    case notADatabase:
      return new Failure('book-damaged', { folder, detail }, error);
    default:
      return error;
  }
}

/** True when a row would have repeated an identity or a natural key. */
export function isRepeatedKey(error: unknown): boolean {
  const code = resultCode(error);
  return code === uniqueKey || code === primaryKey;
}

/** True when a row refers to a row that is not there. */
export function isMissingReference(error: unknown): boolean {
  return resultCode(error) === foreignKey;
}

function primaryResultCode(error: unknown): number | null {
  const code = resultCode(error);
  // The extended code carries the primary one in its low byte.
  return code === null ? null : code & 0xff;
}

function resultCode(error: unknown): number | null {
  if (!(error instanceof Error) || !('errcode' in error)) return null;
  return typeof error.errcode === 'number' ? error.errcode : null;
}

// Result codes of SQLite (sqlite.org/rescode.html, from memory; the tests meet most of them).
const permission = 3;
const busy = 5;
const locked = 6;
const readOnly = 8;
const ioError = 10;
const corrupt = 11;
const full = 13;
const cannotOpen = 14;
const notADatabase = 26;
const foreignKey = 787;
/** The file is not any more where it was opened. */
const databaseMoved = 1032;
const primaryKey = 1555;
const uniqueKey = 2067;

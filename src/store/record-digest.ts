/**
 * The digest of all current records: the exclusive-or of one SHA-256 (its first 128 bits) for each record.
 *
 * Adding a record and taking it away are the same step, and order does not matter, so the digest is kept
 * with every write and never asks for a second reading of a large book.
 * It guards against accidents and old copies, not against a person who wants to deceive.
 */

import { hash } from 'node:crypto';
import type { RecordKind } from '../survey/words.ts';

export type RecordDigest = Uint32Array<ArrayBuffer>;

export function emptyDigest(): RecordDigest {
  return new Uint32Array(4);
}

/** Puts a record into the digest, or takes it out again. */
export function toggleRecord(digest: RecordDigest, kind: RecordKind, row: string): void {
  // One sign for each byte: the digits of a number would have to be read again.
  const bytes = hash('sha256', `${kind} ${row}`, 'binary');
  for (let i = 0; i < digest.length; i++) digest[i]! ^= wordAt(bytes, 4 * i);
}

function wordAt(bytes: string, i: number): number {
  const high = (bytes.charCodeAt(i) << 24) | (bytes.charCodeAt(i + 1) << 16);
  return high | (bytes.charCodeAt(i + 2) << 8) | bytes.charCodeAt(i + 3);
}

export function digestText(digest: RecordDigest): string {
  return Array.from(digest, (word) => word.toString(16).padStart(8, '0')).join('');
}

export function digestOf(text: string): RecordDigest {
  return Uint32Array.from({ length: 4 }, (_, i) => Number.parseInt(text.slice(8 * i, 8 * i + 8), 16));
}

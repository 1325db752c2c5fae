/** Answers of the server, kept for when it is gone. A browser that refuses to keep anything still works online. */

import { database } from './database.ts';

export async function keep(address: string, value: unknown): Promise<void> {
  try {
    await (await database()).put('seen', value, address);
  } catch {
    // Nothing is lost: this is a copy of what the book holds.
  }
}

export async function kept(address: string): Promise<unknown> {
  try {
    return await (await database()).get('seen', address);
  } catch {
    return undefined;
  }
}

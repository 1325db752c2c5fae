import { randomFillSync } from 'node:crypto';
import { v7 } from 'uuid';

export interface IdentityMaker {
  (): string;
  /** From now on greater than this one, which a laptop with another clock may have made. */
  continueAfter(identity: string): void;
}

/**
 * Makes identities: UUIDv7, each greater than the last, also when many are made in one millisecond.
 * Random bytes are fetched by the page: one at a time they cost more than the rest of an identity.
 */
export function identityMaker(now: () => number): IdentityMaker {
  const page = new Uint8Array(16 * 1024);
  let used = page.length;
  let lastMs = 0;
  let inMs = 0;
  const make = () => {
    if (used === page.length) {
      randomFillSync(page);
      used = 0;
    }
    const random = page.subarray(used, used + 16);
    used += 16;
    // A clock that jumps back must not make identities that sort before older ones.
    const ms = Math.max(now(), lastMs);
    inMs = ms === lastMs ? inMs + 1 : 0;
    lastMs = ms;
    return v7({ random, msecs: ms, seq: inMs });
  };
  const continueAfter = (identity: string) => {
    // One millisecond on, whatever stood in the rest of it.
    lastMs = Math.max(lastMs, millisecondsOf(identity) + 1);
  };
  return Object.assign(make, { continueAfter });
}

/** The first 48 bits of a UUIDv7 (RFC 9562, 5.7). */
function millisecondsOf(identity: string): number {
  return Number.parseInt(identity.replace('-', '').slice(0, 12), 16);
}

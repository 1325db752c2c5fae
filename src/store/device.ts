/** The name of this machine, as it stands in a signature: which laptop on which boat wrote this. */

import { hostname } from 'node:os';

export function deviceName(): string {
  return hostname() || 'unnamed device';
}

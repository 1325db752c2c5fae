/**
 * What was compiled once is read the next time, in half of the time. It lies beside the packages, where nobody writes
 * who could not change the program itself; where it cannot be written, the program goes without.
 */

import { enableCompileCache } from 'node:module';
import { join } from 'node:path';

export function keepCompiled(): void {
  enableCompileCache(join(import.meta.dirname, '../../node_modules/.cache/slateline'));
}

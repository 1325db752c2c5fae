/**
 * Kills itself, as a laptop dies, in the middle of one act of 2000 new strata: `FOLDER DEADLINE`.
 * DEADLINE is the change before which it dies; 2000 means just after the write has returned.
 */

import { openBook } from '../src/store/book-folder.ts';
import type { Change } from '../src/survey/store.ts';
import { identityFrom, record, sign } from './store-records.ts';

const [folder, deadline] = process.argv.slice(2);
const newId = identityFrom(9);
const store = await openBook(folder!);
await store.apply(strata(Number(deadline)), sign('cut short'), newId);
process.kill(process.pid, 'SIGKILL');

function* strata(dieBefore: number): Generator<Change> {
  for (let i = 0; i < 2000; i++) {
    if (i === dieBefore) process.kill(process.pid, 'SIGKILL');
    const after = record('stratum', { id: newId(), name: `late stratum ${i}` });
    yield { kind: 'stratum', recordId: after.id, after };
  }
}

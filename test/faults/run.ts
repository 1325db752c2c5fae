/** The full run: `node test/faults/run.ts [KILLS] [SEED]` kills 200 imports and 200 saves at random moments. */

import { join } from 'node:path';
import { ownFolder } from '../own-folder.ts';
import { killAtRandom } from './kill-at-random.ts';

const [kills = '200', seed = '1'] = process.argv.slice(2);
const home = ownFolder('kills');
let wrong = 0;
for (const kind of ['imports', 'saves'] as const) {
  const order = { folder: join(home, kind), kind, kills: Number(kills), seed: Number(seed) };
  const tally = await killAtRandom(order, (done) => {
    if (done % 20 === 0) process.stderr.write(`${kind}: ${done} killed\n`);
  });
  process.stdout.write(`${kind}: ${JSON.stringify(tally)}\n`);
  wrong += tally.wrong.length;
}
process.exitCode = wrong === 0 ? 0 : 1;

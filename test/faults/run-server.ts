/** The full run: `node test/faults/run-server.ts [KILLS] [SEED]` kills the server 100 times in the middle of saves. */

import { join } from 'node:path';
import { ownFolder } from '../own-folder.ts';
import { killServer } from './kill-server.ts';

const [kills = '100', seed = '1'] = process.argv.slice(2);
const home = ownFolder('kills');
const order = { folder: join(home, 'book'), kills: Number(kills), seed: Number(seed) };
const tally = await killServer(order, (done) => {
  if (done % 10 === 0) process.stderr.write(`${done} killed\n`);
});
process.stdout.write(`${JSON.stringify(tally)}\n`);
process.exitCode = tally.wrong.length === 0 ? 0 : 1;

/**
 * Runs scripts of package.json two at a time: `node scripts/side-by-side.ts NAME...`, the longest first.
 * Each says what it has to say when it has ended, in one piece; all are run, also after one that failed, so that one
 * look shows everything there is to mend.
 */

import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { delimiter, resolve } from 'node:path';

const atOnce = 2;
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };
const waiting = process.argv.slice(2);
const failed: string[] = [];
await Promise.all(Array.from({ length: atOnce }, runNext));
if (failed.length > 0) {
  process.stdout.write(`\nfailed: ${failed.join(', ')}\n`);
  process.exitCode = 1;
}

async function runNext(): Promise<void> {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
    const begun = performance.now();
    const { isGood, said } = await run(name);
    if (!isGood) failed.push(name);
    const seconds = ((performance.now() - begun) / 1000).toFixed(1);
    process.stdout.write(`${isGood ? 'good' : 'FAILED'}: ${name}, ${seconds} s\n${said}`);
  }
}

function run(name: string): Promise<{ readonly isGood: boolean; readonly said: string }> {
  const command = scripts[name];
  if (command === undefined) return Promise.resolve({ isGood: false, said: `no script is called ${name}\n` });
  const env = { ...process.env, PATH: [resolve('node_modules/.bin'), process.env['PATH']].join(delimiter) };
  const child = spawn(command, { shell: true, env, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (part: string) => {
      said += part;
    });
  }
  return new Promise((done) => child.on('close', (code) => done({ isGood: code === 0, said })));
}

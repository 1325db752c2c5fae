import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { copyOfMadeOnce, onceInARun } from './made-once.ts';

it('two that ask for a folder at once get a copy each of one that was made once, and whole', async () => {
  const name = randomUUID();
  let times = 0;
  const make = async (folder: string) => {
    times += 1;
    mkdirSync(folder);
    await sleep(20);
    writeFileSync(join(folder, 'book'), 'whole');
  };
  const home = mkdtempSync(join(tmpdir(), 'made-once-'));
  const copies = ['one', 'two'].map((copy) => join(home, copy));
  await Promise.all(copies.map((to) => copyOfMadeOnce(name, { make, to })));
  expect(times).toBe(1);
  for (const copy of copies) expect(readFileSync(join(copy, 'book'), 'utf8')).toBe('whole');
});

it('work that failed does not keep the others waiting', async () => {
  const name = randomUUID();
  const fail = () => Promise.reject(new Error('no disk'));
  const [first, second] = await Promise.allSettled([onceInARun(name, fail), onceInARun(name, fail)]);
  expect([first.status, second.status]).toEqual(['rejected', 'fulfilled']);
});

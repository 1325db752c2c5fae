import { describe, expect, it } from 'vitest';
import { allCommands, commandsFor } from './commands.ts';

const namesFor = async (...args: string[]) => (await commandsFor(args)).map(({ name }) => name);

describe('the verbs that are loaded', () => {
  it('are the one that is called and no other, each under its own name', async () => {
    for (const { name } of await allCommands()) expect(await namesFor(name, '--json')).toEqual([name]);
  });

  it('are all of them where a help or a refusal has to list them', async () => {
    const all = (await allCommands()).map(({ name }) => name);
    for (const first of ['--help', 'help', 'denisty', '', 'toString'])
      expect(await namesFor(first)).toEqual(all);
    expect(await namesFor()).toEqual(all);
    expect(await namesFor('--version')).toEqual([]);
  });
});

/** Verbs and the words that call them, as deep as they go: `density`, `plan size`. */

import type { CliCommand } from './commands.ts';

/** A verb with the words that call it: `density`, `plan size`. */
export interface CalledVerb {
  readonly words: readonly string[];
  readonly verb: CliCommand;
}

/** Every verb that does something alone, in order. */
export function everyVerb(among: readonly CliCommand[]): readonly CalledVerb[] {
  return among.flatMap((verb) =>
    verb.verbs === undefined
      ? [{ words: [verb.name], verb }]
      : everyVerb(verb.verbs).map((called) => ({ ...called, words: [verb.name, ...called.words] })),
  );
}

/** The verb that arguments call, as deep as their words lead; null when the first names none. */
export function verbCalled(args: readonly string[], commands: readonly CliCommand[]): CalledVerb | null {
  const words: string[] = [];
  let called: CliCommand | null = null;
  for (const word of args) {
    const among: readonly CliCommand[] = called === null ? commands : (called.verbs ?? []);
    const verb = among.find((one) => one.name === word);
    if (verb === undefined) break;
    words.push(word);
    called = verb;
  }
  return called === null ? null : { words, verb: called };
}

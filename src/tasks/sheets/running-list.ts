/**
 * The running list that divers really write: species and lengths in the order seen.
 *
 * "sandfish 182 190 lolly 150 sandfish 240 +3" is three sandfish measured and three more counted, and one lollyfish.
 * A length belongs to the species written last. What cannot be read is given back and never dropped.
 */

import { type LengthUnit, readLength, readLengthStream, type TypedLength, wordsOf } from './length-stream.ts';
import { type MatchKind, plain, type SpeciesIndex, speciesMeant } from './species-ranking.ts';

export interface SpeciesGroup {
  /** Null when nothing in the book is called so. */
  readonly speciesId: string | null;
  /** As typed the first time. */
  readonly written: string;
  readonly match: MatchKind | null;
  readonly lengths: readonly TypedLength[];
  readonly more: number | null;
  readonly writtenZero: boolean;
  readonly unread: readonly string[];
}

export interface RunningList {
  /** In the order first seen, one for each species. */
  readonly groups: readonly SpeciesGroup[];
  readonly noneSeen: boolean;
  /** Before any species: whose length it is cannot be known. */
  readonly unread: readonly string[];
}

export function readRunningList(text: string, index: SpeciesIndex, unit: LengthUnit): RunningList {
  if (meansNone(text)) return { groups: [], noneSeen: true, unread: [] };
  const runs = runsOf(wordsOf(text, unit), index, unit);
  const orphans = runs.filter((run) => run.name === null).flatMap((run) => run.numbers);
  const groups = new Map<string, { name: string; numbers: string[] }>();
  for (const { name, numbers } of runs) {
    if (name === null) continue;
    const speciesId = speciesMeant(name, index)?.species.id;
    const key = speciesId ?? `?${plain(name)}`;
    const group = groups.get(key) ?? { name, numbers: [] };
    group.numbers.push(...numbers);
    groups.set(key, group);
  }
  return {
    groups: [...groups.values()].map((group) => groupOf(group, index, unit)),
    noneSeen: false,
    unread: orphans,
  };
}

/** The marks of the trade for a searched belt without an animal; "rien" and "néant" in French. */
export function meansNone(text: string): boolean {
  return /^(0|-|none|none seen|nil|rien|neant)$/.test(text.trim() === '-' ? '-' : plain(text));
}

interface Run {
  readonly name: string | null;
  readonly numbers: string[];
}

/** Names of several words stand together until a number comes; then the longest that is known is taken first. */
function runsOf(words: readonly string[], index: SpeciesIndex, unit: LengthUnit): Run[] {
  const runs: Run[] = [];
  let name: string[] = [];
  const closeName = () => {
    for (const one of namesIn(name, index)) runs.push({ name: one, numbers: [] });
    name = [];
  };
  for (const word of words) {
    if (!isNumber(word, unit)) {
      name.push(word);
      continue;
    }
    closeName();
    if (runs.length === 0) runs.push({ name: null, numbers: [] });
    runs.at(-1)!.numbers.push(word);
  }
  closeName();
  return runs;
}

function namesIn(words: readonly string[], index: SpeciesIndex): string[] {
  const names: string[] = [];
  for (let from = 0; from < words.length; ) {
    const to = endOfName(words, from, index);
    names.push(words.slice(from, to).join(' '));
    from = to;
  }
  return names;
}

function endOfName(words: readonly string[], from: number, index: SpeciesIndex): number {
  const longest = Math.min(words.length, from + index.longestNameInWords);
  for (let to = longest; to > from; to -= 1) {
    if (speciesMeant(words.slice(from, to).join(' '), index) !== null) return to;
  }
  // Nothing known begins here: all that follows is one unknown name, up to the next that is known.
  let to = from + 1;
  while (to < words.length && speciesMeant(words[to]!, index)?.kind !== 'exact') to += 1;
  return to;
}

function isNumber(word: string, unit: LengthUnit): boolean {
  return readLength(word, unit) !== null || /^\+?\d+$/.test(word);
}

function groupOf(
  { name, numbers }: { readonly name: string; readonly numbers: readonly string[] },
  index: SpeciesIndex,
  unit: LengthUnit,
): SpeciesGroup {
  const found = speciesMeant(name, index);
  const stream = readLengthStream(numbers.join(' '), unit);
  return { speciesId: found?.species.id ?? null, written: name, match: found?.kind ?? null, ...stream };
}

/** A typed sheet as it is read aloud: one saying for each press of the space bar. */

import { animalsIn, type ReadingTools, readBelt, type TypedSheet } from '../../tasks/sheets/typed-sheet.ts';

interface Saying {
  readonly nameOf: (speciesId: string) => string;
  readonly words: {
    readonly sheetOf: (code: string) => string;
    readonly belt: (code: string) => string;
    readonly noneSeen: string;
    readonly blank: (code: string) => string;
    readonly statuses: Readonly<Record<string, string>>;
    readonly readMore: (n: number) => string;
    readonly readZero: string;
    readonly readBackEnd: string;
  };
}

/** Two lengths at a time: as many as the eye finds on the paper while the ear still holds them. */
const lengthsAtOnce = 2;

export function sayings(
  typed: TypedSheet,
  tools: ReadingTools,
  { nameOf, words }: Saying,
): readonly string[] {
  const list = [words.sheetOf(typed.station.code)];
  for (const belt of typed.belts) {
    const { groups, noneSeen } = readBelt(belt, tools);
    const searched = belt.status === 'done' || belt.status === 'partial';
    const state = searched ? (noneSeen ? words.noneSeen : '') : words.statuses[belt.status]!;
    list.push([words.belt(belt.code), state].filter(Boolean).join(', '));
    for (const group of groups) {
      const name = group.speciesId === null ? group.written : nameOf(group.speciesId);
      list.push(animalsIn(group) === 0 ? `${name}, ${words.readZero}` : name);
      const lengths = group.lengths.flatMap(({ lengthMm, n }) => Array<string>(n).fill(String(lengthMm)));
      for (let from = 0; from < lengths.length; from += lengthsAtOnce) {
        list.push(lengths.slice(from, from + lengthsAtOnce).join(', '));
      }
      if (group.more) list.push(words.readMore(group.more));
    }
    if (searched && !noneSeen && groups.length === 0) list.push(words.blank(belt.code));
  }
  return [...list, words.readBackEnd];
}

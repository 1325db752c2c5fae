import type { Picker } from '../../maths/random.ts';

/** Simple random sample without replacement: `size` different indices below `count`, rising. Partial Fisher-Yates. */
export function simpleRandomDraw(
  from: { readonly count: number; readonly size: number },
  random: Picker,
): readonly number[] {
  if (!(from.size <= from.count)) throw new Error('simpleRandomDraw requires no more than there are');
  return shuffled(from.count, random)
    .slice(0, from.size)
    .sort((a, b) => a - b);
}

/** Indices below `count` in random order. */
export function shuffled(count: number, random: Picker): number[] {
  const all = Array.from({ length: count }, (_, i) => i);
  for (let i = 0; i < count - 1; i++) {
    const j = i + random.below(count - i);
    [all[i], all[j]] = [all[j]!, all[i]!];
  }
  return all;
}

/**
 * Beginnings of station codes, short enough for a slate, a handheld and a label: the first letters of the words of the
 * stratum (north flat: NF), or the beginning of its one word (lagoon: LAG). Equal ones get a number.
 */
export function codePrefixes(names: readonly string[]): ReadonlyMap<string, string> {
  const prefixes = new Map<string, string>();
  for (const name of names) {
    const words = name
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .toUpperCase()
      .split(/[^\p{L}\p{N}]+/u)
      .filter((word) => word !== '');
    const short =
      words.length > 1 ? words.map((word) => [...word][0]).join('') : (words[0] ?? 'S').slice(0, 3);
    const taken = new Set(prefixes.values());
    let prefix = short.slice(0, 3);
    for (let n = 2; taken.has(prefix); n++) prefix = `${short.slice(0, 2)}${n}`;
    prefixes.set(name, prefix);
  }
  return prefixes;
}

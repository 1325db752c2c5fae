/**
 * Short names a handheld receiver accepts: capitals and figures only, at most `length` of them, each once.
 *
 * A code that fits keeps its letters. A longer one keeps its beginning and the figures at its end, because stations of
 * one site differ there (LAGOON NORTH 12 becomes LAGO12 in six places). What would still be double gets a number at
 * its end. Codes that fit as they are go first, so that no other takes their name. The same list gives the same names.
 * Old handhelds take 6 letters, newer ones 10 and more (common practice).
 */
export function shortNames(codes: readonly string[], length: number): ReadonlyMap<string, string> {
  if (length < 3) throw new Error(`shortNames requires at least 3 places, got ${length}`);
  const names = new Map<string, string>();
  const taken = new Set<string>();
  const give = (code: string, name: string) => {
    names.set(code, name);
    taken.add(name);
  };
  const unique = [...new Set(codes)];
  for (const code of unique) {
    if (bare(code) === code && code.length <= length && code !== '') give(code, code);
  }
  for (const code of unique) {
    if (!names.has(code)) give(code, freeName(shortened(bare(code), length), length, taken));
  }
  return names;
}

function bare(code: string): string {
  return code
    .normalize('NFKD')
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '');
}

function shortened(name: string, length: number): string {
  if (name.length <= length) return name;
  const figures = /\d*$/.exec(name)![0].slice(-(length - 1));
  return name.slice(0, length - figures.length) + figures;
}

function freeName(name: string, length: number, taken: ReadonlySet<string>): string {
  if (name !== '' && !taken.has(name)) return name;
  for (let number = 1; ; number++) {
    const tail = number.toString(36).toUpperCase();
    const candidate = name.slice(0, length - tail.length) + tail;
    if (candidate.length <= length && !taken.has(candidate)) return candidate;
    if (tail.length > length) throw new Error(`shortNames has no name left in ${length} places`);
  }
}

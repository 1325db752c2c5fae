/** Which species a few letters mean: by code, local name, common name, scientific name, and in that order. */

import { nearestName } from '../../survey/nearest-name.ts';
import type { Species } from '../../survey/words.ts';

/** How sure the reading is: written whole, begun, or only near to a name. */
export type MatchKind = 'exact' | 'start' | 'near';

export interface SpeciesMatch {
  readonly species: Species;
  readonly kind: MatchKind;
}

/** The species of a book made ready for looking up while somebody types. */
export interface SpeciesIndex {
  readonly entries: readonly Entry[];
  readonly exact: ReadonlyMap<string, Species>;
  readonly longestNameInWords: number;
}

interface Entry {
  readonly species: Species;
  readonly names: readonly string[];
  readonly isTarget: boolean;
}

/** Of two species that bear one name, the target of the survey is meant, then the one listed first. */
export function speciesIndex(species: readonly Species[], targets: ReadonlySet<string>): SpeciesIndex {
  const entries = species
    .map((one) => ({ species: one, names: namesOf(one).map(plain), isTarget: targets.has(one.id) }))
    .sort((a, b) => Number(b.isTarget) - Number(a.isTarget));
  const exact = new Map<string, Species>();
  // Codes first: a code may be the local name of another animal.
  for (let rank = 0; rank < 4; rank += 1) {
    for (const entry of entries) {
      for (const name of rank < 3 ? [entry.names[rank]!] : entry.names.slice(3)) {
        if (name !== '' && !exact.has(name)) exact.set(name, entry.species);
      }
    }
  }
  const words = [...exact.keys()].map((name) => name.split(' ').length);
  return { entries, exact, longestNameInWords: Math.max(1, ...words) };
}

/** The likeliest first; none when nothing begins like it and no name is near. */
export function rankSpecies(text: string, index: SpeciesIndex): readonly SpeciesMatch[] {
  const written = plain(text);
  if (written === '') return [];
  const ranked = index.entries
    .map((entry) => ({ entry, rank: rankOf(written, entry, index) }))
    .filter((one): one is { entry: Entry; rank: number } => one.rank !== null)
    .sort((a, b) => a.rank - b.rank || Number(b.entry.isTarget) - Number(a.entry.isTarget));
  if (ranked.length > 0) {
    return ranked.map(({ entry, rank }) => ({
      species: entry.species,
      kind: rank === 0 ? 'exact' : 'start',
    }));
  }
  const near = nearestName(written, index.exact.keys());
  return near === null ? [] : [{ species: index.exact.get(near)!, kind: 'near' }];
}

/** Written whole, the only one that begins so, or the only one that is near; null where it could be several. */
export function speciesMeant(text: string, index: SpeciesIndex): SpeciesMatch | null {
  const exact = index.exact.get(plain(text));
  if (exact !== undefined) return { species: exact, kind: 'exact' };
  const [first, second] = rankSpecies(text, index);
  if (first === undefined) return null;
  return second === undefined ? first : null;
}

/** The name people say that means this species and no other of the book. */
export function spokenName(species: Species, { exact }: SpeciesIndex): string {
  const names = [species.localName, species.commonName, species.name, species.code];
  return names.find((name) => name !== null && exact.get(plain(name))?.id === species.id) ?? species.name;
}

/** Code, local name, common name, scientific name, aliases; empty where there is none. */
function namesOf({ code, localName, commonName, name, aliases }: Species): readonly string[] {
  return [code ?? '', localName ?? '', commonName ?? '', name, ...aliases];
}

function rankOf(written: string, { species, names }: Entry, index: SpeciesIndex): number | null {
  const exact = index.exact.get(written);
  if (exact?.id === species.id) return 0;
  for (let i = 0; i < names.length; i += 1) {
    if (names[i]!.startsWith(written)) return 1 + i / 100;
  }
  // "hol sca" for Holothuria scabra; "teat" for black teatfish.
  const parts = written.split(' ');
  if (names.some((name) => beginsWordByWord(parts, name.split(' ')))) return 2;
  if (written.length >= 2 && names.some((name) => name.split(' ').some((word) => word.startsWith(written))))
    return 3;
  return written.length >= 3 && names.some((name) => name.includes(written)) ? 4 : null;
}

function beginsWordByWord(parts: readonly string[], words: readonly string[]): boolean {
  return (
    parts.length > 1 && parts.length <= words.length && parts.every((part, i) => words[i]!.startsWith(part))
  );
}

/** Small letters without accents; punctuation is a space. */
export function plain(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Finds the species of the built-in lists that a species of the book is, however the book writes it. */

import { taxa } from './built-in-values/taxa.ts';
import type { Species } from './words.ts';

/**
 * The scientific name of the built-in lists for a species of the book; null where it is none of them.
 *
 * Scientific names and synonyms decide, also where they stand in brackets ("sandfish (Holothuria scabra)") or hold a
 * subgenus. Only a species without any known scientific name is found by its common name, and only where one species
 * alone bears it: "black teatfish" is one animal in the Pacific and another in the Indian Ocean.
 */
export function scientificNameOf(species: Pick<Species, 'name' | 'commonName' | 'aliases'>): string | null {
  const written = [species.name, ...species.aliases].flatMap(readings);
  for (const name of written) {
    const found = byScientificName.get(name);
    if (found !== undefined) return found;
  }
  if (species.commonName !== null) written.push(...readings(species.commonName));
  for (const name of written) {
    const found = byCommonName.get(name);
    if (found?.length === 1) return found[0]!;
  }
  return null;
}

/** "Sandfish (Holothuria scabra)" is read whole, without the brackets, before them and within them. */
function readings(name: string): string[] {
  const bare = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();
  const within = [...name.matchAll(/\(([^()]*)\)/g)].map((match) => bare(match[1]!));
  return [bare(name), bare(name.replace(/\([^()]*\)/g, ' ')), ...within].filter((text) => text !== '');
}

const byScientificName = new Map(
  taxa.flatMap((taxon) => [taxon.name, ...taxon.synonyms].map((name) => [name.toLowerCase(), taxon.name])),
);

const byCommonName = new Map<string, string[]>();
for (const taxon of taxa) {
  for (const name of taxon.commonNames.map((one) => one.toLowerCase())) {
    byCommonName.set(name, [...(byCommonName.get(name) ?? []), taxon.name]);
  }
}

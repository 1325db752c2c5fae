/** Finds the species a person meant by a name, a code, a local name or an alias, whatever the case. */

import { nearestName } from '../../survey/nearest-name.ts';
import type { Species } from '../../survey/words.ts';

export class SpeciesNames {
  readonly #byName = new Map<string, Species | 'ambiguous'>();
  readonly #written = new Map<string, Species>();
  /** Every name as somebody wrote it in the list, for suggestions that can be copied. */
  readonly #asListed = new Set<string>();

  constructor(species: readonly Species[]) {
    for (const one of species) this.add(one);
  }

  /** The scientific name wins over every other; a code or alias that two species share means neither. */
  add(species: Species): void {
    this.#byName.set(fold(species.name), species);
    this.#asListed.add(species.name);
    for (const other of [species.code, species.commonName, species.localName, ...species.aliases]) {
      if (other === null) continue;
      this.#asListed.add(other);
      const key = fold(other);
      const standing = this.#byName.get(key);
      if (standing === undefined || (standing !== 'ambiguous' && standing.id === species.id)) {
        this.#byName.set(key, species);
      } else if (standing === 'ambiguous' || fold(standing.name) !== key) {
        this.#byName.set(key, 'ambiguous');
      }
    }
    this.#written.clear();
  }

  /** The species meant, or undefined when no name or more than one species answers to it. */
  find(written: string): Species | undefined {
    const known = this.#written.get(written);
    if (known !== undefined) return known;
    const found = this.#byName.get(fold(written));
    if (found === undefined || found === 'ambiguous') return undefined;
    this.#written.set(written, found);
    return found;
  }

  nearest(written: string): string | null {
    return nearestName(written, this.#asListed);
  }
}

function fold(name: string): string {
  return name.trim().replaceAll(/\s+/g, ' ').toLowerCase();
}

/** A species of which nothing is known but its name: everything else is unknown, not empty. */

import type { Species } from './words.ts';

export function speciesByName(name: string): Omit<Species, 'id'> {
  return {
    name,
    group: null,
    code: null,
    commonName: null,
    localName: null,
    aliases: [],
    minLengthMm: null,
    maxLengthMm: null,
    depthMinM: null,
    depthMaxM: null,
    habitats: [],
  };
}

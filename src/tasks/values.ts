/** Values from outside the survey, listed with their source. */

import { builtInValues } from '../survey/built-in-values/built-in-values.ts';
import { speciesByName } from '../survey/species-by-name.ts';
import { scientificNameOf } from '../survey/species-match.ts';
import type { Store } from '../survey/store.ts';
import type { ValueKind, ValueOf } from '../survey/value-words.ts';
import { type ChosenValue, everyValueOf } from '../survey/values-lookup.ts';
import type { SizeLimit, Species } from '../survey/words.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';

export interface ListedValue {
  /** As the book writes it, or the scientific name where the book does not hold the species. */
  readonly species: string;
  readonly inBook: boolean;
  readonly value: ChosenValue;
}

export interface ValuesResult {
  readonly values: readonly ListedValue[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

/** Every value of the book's species, own ones first; then, where no species was asked for, those of other species. */
export async function listValues(
  store: Store,
  request: { readonly species: string | null; readonly what: ValueKind | null },
): Promise<ValuesResult> {
  const words = await readBookWords(store);
  const own = await store.all('ownValue');
  const asked = request.species === null ? words.species : [speciesAsked(words, request.species)];
  const ofBook = asked.flatMap((species) =>
    [...limitsOf(species, words.limits), ...everyValueOf(species, own)].map((value) => ({
      species: species.name,
      inBook: true,
      value,
    })),
  );
  const others = request.species === null ? valuesOfOthers(words.species) : [];
  const values = [...ofBook, ...others].filter(
    ({ value }) => request.what === null || value.content.what === request.what,
  );
  return { values, species: words.species, dataVersion: await store.dataVersion() };
}

/** The book's own size limits, beside the examples. */
function limitsOf(species: Species, limits: readonly SizeLimit[]): readonly ChosenValue[] {
  return limits
    .filter((limit) => limit.speciesId === species.id)
    .map(({ minimumMm, source }) => {
      const content: ValueOf<'size-limit'> = {
        what: 'size-limit',
        minimumMm,
        minimumDriedMm: null,
        maximumMm: null,
        place: 'this book',
      };
      const standing = { code: 'value-own', parameters: { source } } as const;
      return { content, source, status: 'own', own: true, replaced: false, note: null, standing };
    });
}

/** Built-in values of species that the book does not hold. */
function valuesOfOthers(inBook: readonly Species[]): readonly ListedValue[] {
  const known = new Set(inBook.map(scientificNameOf));
  const names = [...new Set(builtInValues.flatMap(({ species }) => species))].filter(
    (name) => !known.has(name),
  );
  return names.sort().flatMap((name) =>
    everyValueOf({ id: '', ...speciesByName(name) }, []).map((value) => ({
      species: name,
      inBook: false,
      value,
    })),
  );
}

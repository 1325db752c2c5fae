/**
 * Values for one species: the officer's own before the built-in ones, each with its source and its standing.
 * The lists are data; whether a value may be used for an answer is decided by those who ask for it.
 */

import { builtInValues } from './built-in-values/built-in-values.ts';
import type { Reason } from './message.ts';
import { scientificNameOf } from './species-match.ts';
import {
  type ValueContent,
  type ValueKind,
  type ValueOf,
  type ValueStatus,
  valueKinds,
} from './value-words.ts';
import type { OwnValue, Species } from './words.ts';

export interface ChosenValue<Kind extends ValueKind = ValueKind> {
  readonly content: ValueOf<Kind>;
  /** Author, year and title; for an own value whatever the officer named. */
  readonly source: string;
  readonly status: ValueStatus;
  /** True for what the officer brought, false for the built-in list. */
  readonly own: boolean;
  /** An own value for the same thing stands before this one. */
  readonly replaced: boolean;
  /** What the number is and is not, in one line; null where the content says it all. */
  readonly note: string | null;
  /** How sure the number is, as a sentence of the catalogue: `value-own`, `value-read`, `value-memory`, `value-derived`. */
  readonly standing: Reason;
}

/**
 * Every value of one kind for a species that stands, own ones first; built-in ones that an own value replaces are
 * left out. Empty where none is known. The species is found by its scientific name, by a synonym, or by a common
 * name that only one species bears. Legal sizes cannot be asked for: the built-in ones are examples, and the limits that
 * count are records of the book.
 */
export function valuesFor<Kind extends Exclude<ValueKind, 'size-limit'>>(
  species: Species,
  what: Kind,
  ownValues: readonly OwnValue[],
): readonly ChosenValue<Kind>[] {
  const found = everyValueOf(species, ownValues).filter(
    (value) => value.content.what === what && !value.replaced,
  );
  return found as unknown as readonly ChosenValue<Kind>[];
}

/** The same with the built-in values that are replaced, for lists; kind by kind. */
export function everyValueOf(species: Species, ownValues: readonly OwnValue[]): readonly ChosenValue[] {
  const own = ownValues.filter((value) => value.speciesId === species.id).map(ownChosen);
  const replaced = new Set(own.map(({ content }) => replacesKey(content)));
  const name = scientificNameOf(species);
  const builtIn = builtInValues
    .filter((value) => name !== null && value.species.includes(name))
    .map(({ content, source, status, note }) => ({
      content,
      source,
      status,
      own: false,
      replaced: replaced.has(replacesKey(content)),
      note: note ?? null,
      standing: standingOf(status, source),
    }));
  return [...own, ...builtIn].toSorted(
    (a, b) => valueKinds.indexOf(a.content.what) - valueKinds.indexOf(b.content.what),
  );
}

function ownChosen({ content, source }: OwnValue): ChosenValue {
  const standing = standingOf('own', source);
  return { content, source, status: 'own', own: true, replaced: false, note: null, standing };
}

function standingOf(status: ValueStatus, source: string): Reason {
  return { code: `value-${status}`, parameters: { source } };
}

/** An own value stands before built-in ones of its kind; a weight or a conversion only for its own states. */
function replacesKey(content: ValueContent): string {
  if (content.what === 'length-weight' || content.what === 'mean-weight') {
    return `${content.what} ${content.weightState}`;
  }
  if (content.what === 'conversion') return `${content.basis} ${content.from} ${content.to}`;
  return content.what;
}

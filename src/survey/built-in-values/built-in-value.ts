import type { ValueContent, ValueStatus } from '../value-words.ts';

/** One value of the built-in list: a fact in our own words with where it stands and how far it was checked. */
export interface BuiltInValue {
  /** Scientific names of the species it speaks for. */
  readonly species: readonly string[];
  readonly status: Exclude<ValueStatus, 'own'>;
  /** Author, year, title; the page where it is known. */
  readonly source: string;
  readonly note?: string;
  readonly content: ValueContent;
}

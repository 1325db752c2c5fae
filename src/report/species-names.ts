/** What people call a species, with its scientific name beside it. */

import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import type { ReportInput } from './report-input.ts';

export interface SpeciesName {
  readonly label: string;
  /** The scientific name, where the label is not already that. */
  readonly scientific: string;
}

/** Looks a species up by the name that answers carry. */
export function speciesNames(species: readonly Species[]): (name: string) => SpeciesName {
  const byName = new Map(species.map((each) => [each.name, each]));
  return (name) => {
    const common = byName.get(name)?.commonName ?? null;
    return common === null
      ? { label: name, scientific: '' }
      : { label: common.charAt(0).toUpperCase() + common.slice(1), scientific: name };
  };
}

/** "Lollyfish (Holothuria atra)". */
export function fullName({ label, scientific }: SpeciesName): string {
  return scientific === '' ? label : `${label} (${scientific})`;
}

/** As it stands inside a sentence: "large giant clam"; a scientific name keeps its capital. */
export function nameInSentence({ label, scientific }: SpeciesName): string {
  return scientific === '' ? label : label.charAt(0).toLowerCase() + label.slice(1);
}

/** The reason with the names that people use, as in the row it stands beside; several stand as "a, b". */
export function inPeoplesWords(reason: Reason, nameOf: (name: string) => SpeciesName): Reason {
  const { species } = reason.parameters;
  if (typeof species !== 'string') return reason;
  const names = species.split(', ').map((one) => nameInSentence(nameOf(one)));
  return { ...reason, parameters: { ...reason.parameters, species: names.join(', ') } };
}

/** The same for an answer that may have no reason. */
export function reasonInPeoplesWords(
  reason: Reason | null,
  nameOf: (name: string) => SpeciesName,
): Reason | null {
  return reason === null ? null : inPeoplesWords(reason, nameOf);
}

/** Answers in the order of the names people use. */
export function sortBySpecies<Answer extends { readonly species: string }>(
  answers: readonly Answer[],
  input: Pick<ReportInput, 'species'>,
): Answer[] {
  const nameOf = speciesNames(input.species);
  return answers.toSorted((a, b) => {
    const left = nameOf(a.species).label.toLowerCase();
    const right = nameOf(b.species).label.toLowerCase();
    return left < right ? -1 : left > right ? 1 : 0;
  });
}

/**
 * What the divers looked for. Declared targets count; what was seen without being declared becomes a
 * target, with a question. Without a declaration, every species ever seen in this book under the same
 * protocol is one, so that a collapsed stock shows as zero and never vanishes.
 */

import type { Species, Survey } from '../survey/words.ts';
import type { BookWords } from './take-in-hand.ts';

export interface TargetList {
  readonly species: readonly Species[];
  readonly madeFrom: 'declared' | 'seen under this protocol' | 'species list';
  /** Counted in this survey though it was no declared target. */
  readonly undeclared: readonly Species[];
}

export function targetsOf(words: BookWords, survey: Survey): TargetList {
  const declared = new Set(
    words.targets.filter((one) => one.surveyId === survey.id).map((one) => one.speciesId),
  );
  const seenHere = words.seen.get(survey.id) ?? new Set<string>();
  if (declared.size > 0) {
    const undeclared = pick(words, new Set([...seenHere].filter((speciesId) => !declared.has(speciesId))));
    return { species: pick(words, union([declared, seenHere])), madeFrom: 'declared', undeclared };
  }
  const alike = words.surveys.filter((one) => one.protocolId === survey.protocolId);
  const seen = union(alike.map((one) => words.seen.get(one.id) ?? new Set<string>()));
  if (seen.size > 0)
    return { species: pick(words, seen), madeFrom: 'seen under this protocol', undeclared: [] };
  // Nothing was ever seen and nothing declared: the programme's species list is all there is to go by.
  return { species: byName(words.species), madeFrom: 'species list', undeclared: [] };
}

function union(sets: readonly ReadonlySet<string>[]): ReadonlySet<string> {
  const all = new Set<string>();
  for (const set of sets) for (const one of set) all.add(one);
  return all;
}

function pick(words: BookWords, ids: ReadonlySet<string>): readonly Species[] {
  return byName(words.species.filter((one) => ids.has(one.id)));
}

function byName(species: readonly Species[]): readonly Species[] {
  return species.toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

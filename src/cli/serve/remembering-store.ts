/**
 * A book that remembers what it has read. Saves come in all evening and touch one survey; the others are not read
 * again to learn from them. What is given is always what the book holds at the moment of the reading: each reading
 * begins by asking the store which surveys have changed, and forgets those, or all of them when it cannot be told.
 */

import type { SqliteStore } from '../../store/sqlite-store.ts';
import type { Store } from '../../survey/store.ts';
import { keptSurveys } from './kept-surveys.ts';

export interface RememberingStore {
  /** Work that only reads, all of it of one moment. One after the other: one connection has one moment. */
  reading<Value>(work: (store: Store) => Promise<Value>): Promise<Value>;
}

/** More counts take more memory than a small laptop has to spare: of a larger book, the surveys read first stay. */
const mostCounts = 1_000_000;
/** With their lengths, the surveys that were looked at last. */
const mostCountsAndLengths = 300_000;

type BookRead = Pick<SqliteStore, 'atOneMoment' | 'standing' | 'surveysChangedSince'> & Store;

export function rememberingStore(
  store: BookRead,
  limits = { counts: mostCounts, countsAndLengths: mostCountsAndLengths },
): RememberingStore {
  const counts = keptSurveys(limits.counts, 'first');
  const withLengths = keptSurveys(limits.countsAndLengths, 'last');
  const seen = keptSpecies();
  let standing: Awaited<ReturnType<BookRead['standing']>> | null = null;

  async function forgetChanged(): Promise<void> {
    const changed = standing === null ? null : await store.surveysChangedSince(standing);
    for (const kept of [counts, withLengths, seen]) {
      if (changed === null) kept.forgetAll();
      else for (const surveyId of changed) kept.forget(surveyId);
    }
    standing = await store.standing();
  }

  const surveyRecords: Store['surveyRecords'] = async (surveyId, options = { lengths: true }) => {
    const kept = options.lengths ? withLengths : counts;
    return kept.find(surveyId) ?? kept.keep(surveyId, await store.surveyRecords(surveyId, options));
  };
  const remembering: Store = {
    ...store,
    surveyRecords,
    speciesSeen: () =>
      seen.all(
        () => store.speciesSeen(),
        async (surveyId) => (await surveyRecords(surveyId, { lengths: false })).tallies,
      ),
  };
  return {
    reading: (work) =>
      store.atOneMoment(async () => {
        await forgetChanged();
        return work(remembering);
      }),
  };
}

/** The species seen in each survey; a survey that has changed is looked through alone. */
function keptSpecies() {
  let known: Map<string, ReadonlySet<string>> | null = null;
  const changed = new Set<string>();
  return {
    forget: (surveyId: string) => void changed.add(surveyId),
    forgetAll: () => {
      known = null;
      changed.clear();
    },
    all: async (
      readAll: Store['speciesSeen'],
      talliesOf: (surveyId: string) => Promise<readonly { readonly speciesId: string }[]>,
    ): Promise<ReadonlyMap<string, ReadonlySet<string>>> => {
      const found = known ?? new Map(await readAll());
      for (const surveyId of changed) {
        const species = new Set((await talliesOf(surveyId)).map((tally) => tally.speciesId));
        if (species.size > 0) found.set(surveyId, species);
        else found.delete(surveyId);
      }
      changed.clear();
      known = found;
      return new Map(found);
    },
  };
}

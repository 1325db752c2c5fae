/**
 * A book read once for one piece of work of many parts: each part asks as if it were alone, and what one has read
 * is there for the next. For as long as the work lasts only: what changes meanwhile is not seen.
 */

import type { Store, SurveyRows } from '../survey/store.ts';

export function readOnce(store: Store): Store {
  const kinds = new Map<string, Promise<unknown>>();
  const withLengths = new Map<string, Promise<SurveyRows>>();
  const counts = new Map<string, Promise<SurveyRows>>();
  return {
    ...store,
    all: (kind) => once(kinds, kind, () => store.all(kind)) as ReturnType<typeof store.all<typeof kind>>,
    speciesSeen: () =>
      once(kinds, 'species seen', () => store.speciesSeen()) as ReturnType<Store['speciesSeen']>,
    surveyRecords: (surveyId, options = { lengths: true }) => {
      if (options.lengths) return once(withLengths, surveyId, () => store.surveyRecords(surveyId, options));
      return once(counts, surveyId, () => {
        const known = withLengths.get(surveyId);
        return known === undefined ? store.surveyRecords(surveyId, options) : known.then(withoutLengths);
      });
    },
  };
}

function once<Value>(
  known: Map<string, Promise<Value>>,
  key: string,
  read: () => Promise<Value>,
): Promise<Value> {
  const before = known.get(key);
  if (before !== undefined) return before;
  const value = read();
  known.set(key, value);
  return value;
}

function withoutLengths(rows: SurveyRows): SurveyRows {
  return { ...rows, tallies: rows.tallies.map((tally) => ({ ...tally, lengths: none })) };
}

const none: [] = [];

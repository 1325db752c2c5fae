/** Surveys in memory up to a size: either those that came first, or those that were asked for last. */

import type { SurveyRows } from '../../survey/store.ts';

export interface KeptSurveys {
  find(surveyId: string): SurveyRows | undefined;
  /** Gives the rows back, kept or not. */
  keep(surveyId: string, rows: SurveyRows): SurveyRows;
  forget(surveyId: string): void;
  forgetAll(): void;
}

/**
 * `most` counts tallies and lengths. Who goes through all surveys again and again is served by those that came
 * `first`: of a book too large for memory, the ones asked for `last` would always be those just let go.
 */
export function keptSurveys(most: number, which: 'first' | 'last'): KeptSurveys {
  const kept = new Map<string, { readonly rows: SurveyRows; readonly size: number }>();
  let size = 0;
  const forget = (surveyId: string) => {
    size -= kept.get(surveyId)?.size ?? 0;
    kept.delete(surveyId);
  };
  return {
    find: (surveyId) => {
      const found = kept.get(surveyId);
      if (found === undefined || which === 'first') return found?.rows;
      kept.delete(surveyId);
      kept.set(surveyId, found);
      return found.rows;
    },
    keep: (surveyId, rows) => {
      const own = sizeOf(rows);
      if (which === 'last') {
        for (const oldest of kept.keys()) {
          if (size + own <= most || own > most) break;
          forget(oldest);
        }
      }
      if (size + own > most) return rows;
      kept.set(surveyId, { rows, size: own });
      size += own;
      return rows;
    },
    forget,
    forgetAll: () => {
      kept.clear();
      size = 0;
    },
  };
}

function sizeOf({ tallies }: SurveyRows): number {
  return tallies.reduce((total, tally) => total + 1 + tally.lengths.length, 0);
}

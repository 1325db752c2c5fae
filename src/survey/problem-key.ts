import type { Problem } from './message.ts';

/**
 * What makes a problem the same problem when it is found again: its code and its place in the survey, not
 * the row of a file that has since been sorted. An answer is kept under this key.
 */
export function problemKeyOf({ code, place }: Pick<Problem, 'code' | 'place'>): string {
  const { survey = '', station = '', transect = '', swim = 1, species = '' } = place;
  return JSON.stringify([code, survey, station, transect, swim, species]);
}

/** The value of a problem as it is kept beside its answer; null when the question was about something missing. */
export function problemValueOf({ value }: Pick<Problem, 'value'>): string | null {
  return value === null || value === '' ? null : String(value);
}

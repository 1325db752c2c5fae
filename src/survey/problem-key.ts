import type { Problem } from './message.ts';

/**
 * What makes a problem the same problem when it is found again: its code and its place in the survey, not
 * the row of a file that has since been sorted. An answer is kept under this key.
 * Questions about a whole survey are told apart by their stratum or recorder, where they have one.
 */
export function problemKeyOf({
  code,
  place,
  parameters = {},
}: Pick<Problem, 'code' | 'place'> & Partial<Pick<Problem, 'parameters'>>): string {
  const { survey = '', station = '', transect = '', swim = 1, species = '' } = place;
  const key: (string | number)[] = [code, survey, station, transect, swim, species];
  const { stratum, recorder } = parameters;
  if (station === '' && stratum !== undefined) key.push(stratum);
  if (station === '' && recorder !== undefined) key.push(recorder);
  return JSON.stringify(key);
}

/** The value of a problem as it is kept beside its answer; null when the question was about something missing. */
export function problemValueOf({ value }: Pick<Problem, 'value'>): string | null {
  return value === null || value === '' ? null : String(value);
}

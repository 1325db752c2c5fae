/** Lengths estimated of pieces of known length: a small CSV with observer, known_mm, estimated_mm. */

import type { Place, Problem, WithProblems } from '../survey/message.ts';
import { problemOf } from '../survey/problem-of.ts';
import { eachCsvRow } from './csv-text.ts';
import { likelyDecimal, readDecimal } from './decimal.ts';
import { decodedText } from './text-encoding.ts';

export interface KnownLength {
  readonly observer: string;
  readonly knownMm: number;
  readonly estimatedMm: number;
}

const columns = ['observer', 'known_mm', 'estimated_mm'] as const;

/** Every row that can be read, and a problem with row and column for every cell that cannot. */
export function readKnownLengths(bytes: Uint8Array, file: string): WithProblems<readonly KnownLength[]> {
  const text = decodedText(bytes);
  const problems: Problem[] = [];
  const value: KnownLength[] = [];
  let at: readonly number[] = [];
  const broken = eachCsvRow(text, (cells, row) => {
    if (row === 1) {
      const heads = cells.map((cell) => cell.trim().toLowerCase());
      at = columns.map((column) => heads.indexOf(column));
      for (const [i, column] of columns.entries()) {
        if (at[i] === -1) problems.push(problemOf('missing-column', { file, column }));
      }
    } else if (!at.includes(-1) && cells.some((cell) => cell.trim() !== '')) {
      const read = rowOf(
        at.map((i) => (cells[i] ?? '').trim()),
        { file, row },
        problems,
      );
      if (read !== null) value.push(read);
    }
  });
  if (at.length === 0) problems.push(problemOf('missing-column', { file, column: 'observer' }));
  for (const row of broken) problems.push(problemOf('broken-quotes', { file, row }));
  return { value, problems };
}

function rowOf(
  [observer = '', known = '', estimated = '']: readonly string[],
  place: Place,
  problems: Problem[],
): KnownLength | null {
  if (observer === '') problems.push(problemOf('missing-value', { ...place, column: 'observer' }));
  const knownMm = lengthOf(known, { ...place, column: 'known_mm' }, problems);
  const estimatedMm = lengthOf(estimated, { ...place, column: 'estimated_mm' }, problems);
  return observer === '' || knownMm === null || estimatedMm === null
    ? null
    : { observer, knownMm, estimatedMm };
}

function lengthOf(text: string, place: Place, problems: Problem[]): number | null {
  const value = readDecimal(text);
  if (text === '') problems.push(problemOf('missing-value', place));
  else if (value === null)
    problems.push(problemOf('not-a-number', place, { value: text, suggestion: likelyDecimal(text) }));
  else if (value > 0) return value;
  else
    problems.push(problemOf('number-out-of-range', place, { value: text, parameters: { range: 'above 0' } }));
  return null;
}

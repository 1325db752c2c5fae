/** One cell of a table of own values. */

import { likelyDecimal, readDecimal } from '../exchange/decimal.ts';
import type { Problem } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { problemOf } from '../survey/problem-of.ts';
import type { ValueColumn } from './value-columns.ts';

/** Tells a problem of a column of the row in hand. */
export type Tell = (code: Problem['code'], column: string, details?: Parameters<typeof problemOf>[2]) => void;

/** What the cell holds, or null after its problem was told. */
export function readCell(
  text: string,
  column: string,
  definition: ValueColumn,
  tell: Tell,
): string | number | null {
  if (definition.is === 'text') return text;
  if (definition.is === 'one of') {
    const found = definition.options.find((option) => option === text.toLowerCase());
    if (found !== undefined) return found;
    const options = definition.options.join(', ');
    tell('not-one-of', column, {
      value: text,
      suggestion: nearestName(text, definition.options),
      parameters: { options },
    });
    return null;
  }
  const value = readDecimal(withPoint(text));
  if (value === null) {
    tell('not-a-number', column, { value: text, suggestion: likelyDecimal(text) });
    return null;
  }
  const { above, atMost, whole } = definition;
  if ((above !== undefined && value <= above) || (atMost !== undefined && value > atMost)) {
    const range = `${above === undefined ? '' : `> ${above}`}${atMost === undefined ? '' : `, at most ${atMost}`}`;
    tell('number-out-of-range', column, { value: text, parameters: { range } });
    return null;
  }
  if (whole === true && !Number.isInteger(value)) tell('not-a-whole-number', column, { value: text });
  return value;
}

/** A decimal comma, where it cannot be one between thousands: 0,08 is read, 1,887 is asked about. */
function withPoint(text: string): string {
  return /^[+-]?\d+,\d+$/.test(text) && !/^[+-]?[1-9]\d{0,2},\d{3}$/.test(text)
    ? text.replace(',', '.')
    : text;
}

/**
 * A quick yes for the record that is written by the hundred thousand. The schema of the tally decides;
 * this only recognises the plain ones that it accepts, at a tenth of the cost. A test holds the two together.
 */

import { type Length, lengthMeasures, type Tally } from '../survey/words.ts';

/** True only for a tally that its schema accepts. False says nothing: ask the schema. */
export function isPlainTally(tally: Tally): boolean {
  return (
    plainIdentity.test(tally.id) &&
    plainIdentity.test(tally.transectId) &&
    plainIdentity.test(tally.speciesId) &&
    Number.isSafeInteger(tally.count) &&
    tally.count >= 0 &&
    Array.isArray(tally.lengths) &&
    tally.lengths.every(isPlainLength)
  );
}

function isPlainLength({ lengthMm, n, measure, photo }: Length): boolean {
  return (
    Number.isFinite(lengthMm) &&
    lengthMm > 0 &&
    Number.isSafeInteger(n) &&
    n > 0 &&
    (measure === null || lengthMeasures.includes(measure)) &&
    (photo === null || (typeof photo === 'string' && photo !== ''))
  );
}

/** A UUID of version 7 in small letters, as this program makes them. */
const plainIdentity = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

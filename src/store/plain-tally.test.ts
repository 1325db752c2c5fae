import fc from 'fast-check';
import { expect, test } from 'vitest';
import { record } from '../../test/store-records.ts';
import { lengthMeasures, type Tally, tallySchema } from '../survey/words.ts';
import { isPlainTally } from './plain-tally.ts';

const identity = '00000001-0000-7000-8000-00000000000a';
const odd = fc.constantFrom<unknown>(
  ...[undefined, null, '', 'x', Number.NaN, Infinity, -1, 0, -0, 0.5, 1e300, 2 ** 53, '7', true, [], {}],
);
const often = <Value>(usual: fc.Arbitrary<Value>) =>
  fc.oneof({ weight: 12, arbitrary: usual as fc.Arbitrary<unknown> }, odd);
const anyIdentity = often(
  fc.constantFrom(
    identity,
    identity.toUpperCase(),
    `${identity}\n`,
    identity.slice(1),
    identity.replace('7', 'f'),
  ),
);
const anyLength = fc.record({
  lengthMm: often(fc.double({ min: 0, max: 500, noNaN: true })),
  n: often(fc.integer({ min: 1, max: 9 })),
  measure: often(fc.constantFrom(null, ...lengthMeasures)),
  photo: often(fc.constantFrom(null, 'photos/1.jpg')),
});
const anyTally = fc.record({
  id: fc.oneof({ weight: 4, arbitrary: fc.constant<unknown>(identity) }, anyIdentity),
  transectId: fc.oneof({ weight: 4, arbitrary: fc.constant<unknown>(identity) }, anyIdentity),
  speciesId: fc.oneof({ weight: 4, arbitrary: fc.constant<unknown>(identity) }, anyIdentity),
  count: often(fc.nat()),
  lengths: often(fc.array(anyLength, { maxLength: 3 })),
});

// A second authority: the schema itself.
test('whatever is called plain, the schema of the tally accepts', () => {
  let plain = 0;
  const sample = fc.sample(anyTally, { numRuns: 5000, seed: 1 }) as Tally[];
  for (const tally of sample) {
    if (!isPlainTally(tally)) continue;
    plain += 1;
    expect(tallySchema.safeParse(tally).success, JSON.stringify(tally)).toBe(true);
  }
  // The test would say nothing if the quick way were never taken, or always.
  expect(plain).toBeGreaterThan(500);
  expect(plain).toBeLessThan(4500);
});

test('a tally as an import makes it goes the quick way', () => {
  const lengths = [{ lengthMm: 182.5, n: 2, measure: null, photo: null }];
  expect(
    isPlainTally(record('tally', { transectId: identity, speciesId: identity, count: 7, lengths })),
  ).toBe(true);
});

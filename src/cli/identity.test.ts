import { validate, version } from 'uuid';
import { expect, it } from 'vitest';
import { identityMaker } from './identity.ts';

it('makes valid UUIDv7 that are all different and rise, also within one millisecond and when the clock jumps back', () => {
  const clock = [1000, 1000, 1000, 1001, 900, 1002];
  let tick = 0;
  const newId = identityMaker(() => clock[Math.min(tick++, clock.length - 1)]!);
  const ids = Array.from({ length: 5000 }, newId);
  expect(new Set(ids).size).toBe(5000);
  expect(ids.toSorted()).toEqual(ids);
  for (const id of ids.slice(0, 20)) {
    // RFC 9562 section 5.7, as checked by the uuid package
    expect(validate(id)).toBe(true);
    expect(version(id)).toBe(7);
  }
});

it('goes on after an identity that a laptop with a later clock has made', () => {
  const ahead = identityMaker(() => Date.parse('2026-11-01T08:00:00Z'))();
  const newId = identityMaker(() => 0);
  newId.continueAfter(ahead);
  const ids = Array.from({ length: 100 }, newId);
  expect([ahead, ...ids].toSorted()).toEqual([ahead, ...ids]);
  expect(new Set(ids).size).toBe(100);
  expect(ids.every(validate)).toBe(true);
});

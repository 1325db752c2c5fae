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

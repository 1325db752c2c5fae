import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { lengthFrequencies, sizesInWords } from './length-frequencies.ts';
import { fixtureReport } from './report-fixture.ts';

const sizes = fixtureReport().surveys[1]!.sizes;
const { document } = parseHTML('<!doctype html><html></html>');
const frame = { width: 328, inWords: 'lengths', measure: 'body length, relaxed', document };

test('length frequencies look as they were looked at, with the limit as a line', async () => {
  await expect(lengthFrequencies(sizes[0]!, frame)).toMatchFileSnapshot(
    '../../test/golden/lengths-limit.svg',
  );
  await expect(lengthFrequencies(sizes[2]!, frame)).toMatchFileSnapshot(
    '../../test/golden/lengths-no-limit.svg',
  );
});

test('a limit that no animal reaches is still inside the picture', () => {
  const far = { ...sizes[0]!, shareAtLeast: { limitMm: 500, share: 0, standardError: null, interval: null } };
  const drawn = lengthFrequencies(far, frame)!;
  expect(drawn).toContain('limit 500 mm');
  const x = Number(/stroke-dasharray="6 3"[^>]*><line[^>]*x1="([\d.]+)"/.exec(drawn)![1]);
  expect(x).toBeLessThanOrEqual(328);
});

test('where none was measured there is no picture and a reason', () => {
  expect(lengthFrequencies(sizes[3]!, frame)).toBeNull();
  expect(sizesInWords(sizes[3]!, 'en')).toContain('No Holothuria fuscogilva was measured');
});

test('how many were measured stands beside how many were counted', () => {
  expect(sizesInWords({ ...sizes[0]!, animals: 1412, measured: 188 }, 'en')).toBe(
    '1\u202f412 animals counted, 188 measured',
  );
});

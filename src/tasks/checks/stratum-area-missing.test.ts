import { expect, test } from 'vitest';
import { check } from './stratum-area-missing.ts';
import { foundBy } from './survey-sketch.ts';

test('a stratum without hectares is asked for them', () => {
  const found = foundBy(check, (sketch) => {
    sketch.strata[1]!.areaHa = null;
  });
  expect(found).toMatchObject([{ value: 'slope', parameters: { stratum: 'slope' } }]);
  expect(foundBy(check)).toEqual([]);
});

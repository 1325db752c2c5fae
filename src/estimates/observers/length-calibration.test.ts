import { expect, test } from 'vitest';
import { allNear, near } from '../../maths/nearness.ts';
import { lengthCalibration } from './length-calibration.ts';

// By hand: estimated − known = 10, 0, −10: bias 0, sd 10, limits ±19.6; slope 1 − 20/200 = 0.9.
const pieces = [
  { knownMm: 100, estimatedMm: 110 },
  { knownMm: 200, estimatedMm: 200 },
  { knownMm: 300, estimatedMm: 290 },
];

test('a diver who draws lengths to the middle has a slope under 1 and no bias', () => {
  const found = lengthCalibration(pieces, 20)!;
  near(found.biasMm + 1, 1, 1e-12);
  near(found.standardDeviationMm, 10, 1e-12);
  allNear(found.limitsMm, [-19.6, 19.6], 1e-9);
  near(found.slope!, 0.9, 1e-12);
  expect(found).toMatchObject({ pieces: 3, passes: true, shareWithin: 1 });
});

test('the pass mark is the officer’s: at 15 mm the same diver does not pass', () => {
  expect(lengthCalibration(pieces, 15)!.passes).toBe(false);
  expect(lengthCalibration(pieces, null)).toMatchObject({ passes: null, shareWithin: null });
});

test('two pieces are too few, and one length gives no slope', () => {
  expect(lengthCalibration(pieces.slice(1), 20)).toBeNull();
  expect(
    lengthCalibration(
      pieces.map((piece) => ({ ...piece, knownMm: 150 })),
      20,
    )!.slope,
  ).toBeNull();
});

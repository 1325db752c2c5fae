import { expect, test } from 'vitest';
import { check } from './boat-too-fast.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const next = (latitudeDeg: number) =>
  foundBy(check, (sketch) =>
    Object.assign(stationAt(sketch, 'S3'), {
      latitudeDeg,
      plannedLatitudeDeg: latitudeDeg,
      timeStart: '09:20',
      timeEnd: '09:50',
    }),
  );

test('33 km in ten minutes are too fast for any boat', () => {
  expect(next(-18.05)).toMatchObject([
    { place: { station: 'S3' }, value: 'S1', parameters: { minutes: 10 } },
  ]);
});

test('ten kilometres in ten minutes are 32 knots: let pass', () => {
  expect(next(-17.84)).toEqual([]);
});

import { expect, test } from 'vitest';
import { planRecord } from './map-sketch.ts';
import { check } from './station-not-in-plan.ts';
import { foundBy, type SurveySketch, stationAt } from './survey-sketch.ts';

const planned =
  (change: Parameters<typeof planRecord>[1] = () => ({})) =>
  (sketch: SurveySketch) => {
    sketch.plans.push(planRecord(sketch, change));
  };

test('stations of the plan are left in peace, and so is a survey without one', () => {
  expect(foundBy(check, planned())).toEqual([]);
  expect(foundBy(check)).toEqual([]);
});

test('a spare that nobody called up and a dropped station are asked about', () => {
  const found = foundBy(
    check,
    planned((_, i) => (i === 2 ? { role: 'spare' } : i === 3 ? { role: 'dropped' } : {})),
  );
  expect(found).toMatchObject([
    { place: { station: 'S3' }, value: 'a spare that nobody called up', parameters: { plan: 'spring draw' } },
    { place: { station: 'S4' }, value: 'dropped' },
  ]);
});

test('a fixed station the plan does not have is asked about; one marked hand-picked says so itself', () => {
  const found = (selection: 'fixed' | 'hand-picked') =>
    foundBy(check, (sketch) => {
      planned()(sketch);
      Object.assign(stationAt(sketch, 'S4'), { code: 'X4', selection });
    });
  expect(found('fixed')).toMatchObject([{ place: { station: 'X4' }, value: 'not' }]);
  expect(found('hand-picked')).toEqual([]);
});

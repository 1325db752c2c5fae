import { expect, test } from 'vitest';
import { check } from './hand-picked-marked-random.ts';
import { planRecord } from './map-sketch.ts';
import { check as randomWithoutPlan } from './random-without-plan.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

test('a station that was drawn is left in peace', () => {
  expect(foundBy(check, (sketch) => sketch.plans.push(planRecord(sketch, () => ({}))))).toEqual([]);
});

test('a random station that no plan drew is asked about, once', () => {
  const spoil: Parameters<typeof foundBy>[1] = (sketch) => {
    sketch.plans.push(planRecord(sketch, () => ({})));
    Object.assign(stationAt(sketch, 'S4'), {
      code: 'X4',
      plannedLatitudeDeg: null,
      plannedLongitudeDeg: null,
    });
  };
  expect(foundBy(check, spoil)).toMatchObject([
    {
      place: { station: 'X4' },
      value: 'random',
      suggestion: 'hand-picked',
      parameters: { why: 'plan spring draw did not draw it' },
    },
  ]);
  expect(foundBy(randomWithoutPlan, spoil)).toEqual([]);
});

test('a station picked by hand in the plan is hand-picked', () => {
  const found = foundBy(check, (sketch) =>
    sketch.plans.push(planRecord(sketch, (_, i) => (i === 0 ? { selection: 'hand-picked' } : {}))),
  );
  expect(found).toMatchObject([{ place: { station: 'S1' } }]);
});

test('picked by hand once is picked by hand for life, at the same place', () => {
  const found = (northDeg: number) =>
    foundBy(check, (sketch) => {
      const { latitudeDeg, longitudeDeg } = stationAt(sketch, 'S2');
      const spot = { latitudeDeg: latitudeDeg! + northDeg, longitudeDeg: longitudeDeg! };
      sketch.handPicked.push({ where: 'North 2024', surveyId: 'other', code: 'S2', spot });
    });
  // 0.0005 degree is 55 m, 0.005 half a kilometre: another place under a code that was used again.
  expect(found(0.0005)).toMatchObject([{ parameters: { why: 'it was picked by hand in North 2024' } }]);
  expect(found(0.005)).toEqual([]);
});

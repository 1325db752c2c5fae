import { expect, test } from 'vitest';
import { planRecord } from './map-sketch.ts';
import { check } from './planned-not-visited.ts';
import { foundBy, type SurveySketch } from './survey-sketch.ts';

/** The twelve stations planned, of which only the first `visited` are in the book; the survey ends on 12 September. */
const visited =
  (count: number, today: string, change: Parameters<typeof planRecord>[1] = () => ({})) =>
  (sketch: SurveySketch) => {
    sketch.plans.push(planRecord(sketch, change));
    sketch.stations.splice(count);
    sketch.today = today;
  };

test('a survey without a plan, or with every planned station visited, is left in peace', () => {
  expect(foundBy(check)).toEqual([]);
  expect(foundBy(check, visited(12, '2026-09-30'))).toEqual([]);
});

test('what is missing is said once, when the last day is past or more than half was visited', () => {
  expect(foundBy(check, visited(6, '2026-09-12'))).toEqual([]);
  expect(foundBy(check, visited(6, '2026-09-13'))).toMatchObject([
    { place: { survey: 'S' }, value: 'S7, S8, S9, S10, S11, S12', parameters: { missed: 6, of: 12 } },
  ]);
  expect(foundBy(check, visited(10, '2026-09-05'))).toMatchObject([
    { severity: 'note', value: 'S11, S12', parameters: { plan: 'spring draw', missed: 2, of: 12 } },
  ]);
});

test('before the first station of a survey is in the book nothing is missing', () => {
  expect(foundBy(check, visited(0, '2026-09-30'))).toEqual([]);
});

test('dropped stations and spares are not waited for, and a called spare is', () => {
  const found = foundBy(
    check,
    visited(9, '2026-09-05', (_, i) =>
      i === 9 ? { role: 'dropped' } : i === 10 ? { role: 'spare' } : i === 11 ? { replaces: 'S10' } : {},
    ),
  );
  expect(found).toMatchObject([{ value: 'S12', parameters: { missed: 1, of: 10 } }]);
});

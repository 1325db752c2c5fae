import { expect, test } from 'vitest';
import { check } from './far-from-plan.ts';
import { planRecord, withMap } from './map-sketch.ts';
import { check as positionSameAsPlan } from './position-same-as-plan.ts';
import { foundBy, type SurveySketch, stationAt } from './survey-sketch.ts';

const moved = (northDeg: number) =>
  foundBy(check, (sketch) => {
    stationAt(sketch, 'S1').latitudeDeg! += northDeg;
  });

test('a station 400 m from its plan, with no slip to explain it, is asked about', () => {
  // By hand: 0.0035 degrees and the 0.0001 of the clean survey, of 110.66 km each: 398 m.
  expect(moved(0.0035)).toMatchObject([
    { place: { station: 'S1' }, suggestion: null, parameters: { distance: '398 m' } },
  ]);
});

test('50 m are let pass, and so is what three decimals cannot tell', () => {
  expect(moved(0.0003)).toEqual([]);
  const coarse = foundBy(check, (sketch) => {
    for (const one of sketch.stations) {
      one.latitudeDeg = Number((one.plannedLatitudeDeg! + 0.0004).toFixed(3));
      one.longitudeDeg = Number(one.plannedLongitudeDeg!.toFixed(3));
      one.plannedLatitudeDeg = Number(one.plannedLatitudeDeg!.toFixed(3));
      one.plannedLongitudeDeg = Number(one.plannedLongitudeDeg!.toFixed(3));
    }
  });
  expect(coarse).toEqual([]);
});

test('the plan of the book stands in for planned positions that the sheets do not carry', () => {
  const unplanned = (spoil: (sketch: SurveySketch) => void) => (sketch: SurveySketch) => {
    for (const one of sketch.stations)
      Object.assign(one, { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
    sketch.plans.push(planRecord(sketch, () => ({})));
    spoil(sketch);
  };
  const found = foundBy(
    check,
    unplanned((sketch) => {
      stationAt(sketch, 'S1').latitudeDeg! += 0.0035;
    }),
  );
  expect(found).toMatchObject([{ place: { station: 'S1' }, parameters: { distance: '398 m' } }]);
  const copied = unplanned((sketch) => {
    Object.assign(stationAt(sketch, 'S4'), { latitudeDeg: -17.759, longitudeDeg: 177.412 });
  });
  expect(foundBy(positionSameAsPlan, copied)).toMatchObject([{ place: { station: 'S4' } }]);
});

test('what lies outside its stratum and zone is said with it', () => {
  const found = foundBy(check, (sketch) => {
    withMap(sketch);
    // 2 km north of everything, and no exchange of figures leads there.
    stationAt(sketch, 'S1').latitudeDeg = -17.7299;
  });
  expect(found).toMatchObject([{ parameters: { outside: 'outside stratum flat' } }]);
});

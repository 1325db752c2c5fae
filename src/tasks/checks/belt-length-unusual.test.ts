import { expect, test } from 'vitest';
import { check } from './belt-length-unusual.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

const lengthM = (metres: number) =>
  foundBy(check, (sketch) => {
    transectAt(sketch, 'S2', '1').lengthM = metres;
  });

test('400 m for 40 is asked about, with the zero taken away', () => {
  expect(lengthM(400)).toMatchObject([
    { place: { station: 'S2' }, value: 400, suggestion: '40', parameters: { where: '1', plannedM: 40 } },
  ]);
  expect(lengthM(42)).toEqual([]);
});

test('without a protocol the belts that nearly all are set the plan', () => {
  const found = foundBy(check, (sketch) => {
    Object.assign(sketch.protocol, { lengthM: null });
    transectAt(sketch, 'S2', '1').lengthM = 400;
  });
  // A protocol that says nothing of the length plans none.
  expect(found).toEqual([]);
});

test('a survey of 50 m belts under a protocol of 40 is asked about once', () => {
  const found = foundBy(check, (sketch) => {
    for (const one of sketch.transects) one.lengthM = 50;
  });
  expect(found).toMatchObject([{ value: 50, suggestion: null }]);
  expect(found[0]!.place.station).toBeUndefined();
});

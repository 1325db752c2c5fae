import { expect, test } from 'vitest';
import { check } from './stations-alike.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const moved = (offDeg: number) =>
  foundBy(check, (sketch) => {
    const { latitudeDeg, longitudeDeg } = stationAt(sketch, 'S2');
    Object.assign(stationAt(sketch, 'S5'), { latitudeDeg: latitudeDeg! + offDeg, longitudeDeg });
  });

test('the same position to the last digit under two codes is asked about', () => {
  expect(moved(0)).toMatchObject([
    { place: { station: 'S5' }, value: 'S2', parameters: { when: '2026-09-02' } },
  ]);
  expect(moved(0.00002)).toEqual([]);
});

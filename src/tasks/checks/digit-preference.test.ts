import { expect, test } from 'vitest';
import { seededRandom } from '../../maths/random.ts';
import { check } from './digit-preference.ts';
import { foundBy, lengthsOf } from './survey-sketch.ts';

const round = (recorder: string, toMm: number) =>
  foundBy(check, (sketch) => {
    const stations = new Set(sketch.stations.filter((one) => one.recorder === recorder).map(({ id }) => id));
    const belts = new Set(sketch.transects.filter((one) => stations.has(one.stationId)).map(({ id }) => id));
    sketch.tallies.forEach((tally, i) => {
      const random = seededRandom(i);
      const walk = Array.from({ length: 10 }, () => 140 + random.below(100));
      const lengthsMm = belts.has(tally.transectId) ? walk.map((mm) => toMm * Math.round(mm / toMm)) : walk;
      Object.assign(tally, { count: 10, lengths: lengthsOf(...lengthsMm) });
    });
  });

test('a recorder who rounds to five is asked about, the other is not', () => {
  expect(round('Recorder B', 5)).toMatchObject([
    { place: { survey: 'S' }, value: '100 %', parameters: { recorder: 'Recorder B', lengths: 180 } },
  ]);
});

test('a recorder who reads the rule is left in peace', () => {
  expect(round('Recorder B', 1)).toEqual([]);
});

test('whole centimetres throughout are a coarse rule, judged by the digit of the centimetres', () => {
  const found = foundBy(check, (sketch) => {
    sketch.protocol.lengthUnit = 'cm';
    sketch.tallies.forEach((tally, i) => {
      const random = seededRandom(i);
      const lengthsMm = Array.from({ length: 10 }, () => 10 * (12 + random.below(20)));
      Object.assign(tally, { count: 10, lengths: lengthsOf(...lengthsMm) });
    });
  });
  expect(found).toEqual([]);
});

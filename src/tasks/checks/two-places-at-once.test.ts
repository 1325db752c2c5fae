import { expect, test } from 'vitest';
import { foundBy, stationAt } from './survey-sketch.ts';
import { check } from './two-places-at-once.ts';

const shift = (timeStart: string, timeEnd: string, date = '2026-09-02') =>
  foundBy(check, (sketch) => Object.assign(stationAt(sketch, 'S3'), { timeStart, timeEnd, date }));

test('a recorder at two stations whose times overlap is asked about, once', () => {
  // S1 of the same recorder goes from 08:00 to 09:10.
  expect(shift('08:50', '09:40')).toMatchObject([
    {
      place: { station: 'S3' },
      value: 'S1',
      parameters: { person: 'Recorder A', from: '08:00', to: '09:10' },
    },
  ]);
});

test('the next station may start the minute the last one ends, and any time on another day', () => {
  expect(shift('09:10', '10:00')).toEqual([]);
  expect(shift('08:50', '09:40', '2026-09-09')).toEqual([]);
});

test('one pair is one question, in whichever roles the two divers met', () => {
  const found = foundBy(check, (sketch) => {
    Object.assign(stationAt(sketch, 'S1'), { navigator: 'Diver B' });
    Object.assign(stationAt(sketch, 'S2'), {
      recorder: 'Diver B',
      navigator: 'Recorder A',
      timeStart: '08:30',
    });
  });
  expect(found).toMatchObject([{ place: { station: 'S2' }, value: 'S1' }]);
});

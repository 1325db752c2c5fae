import { describe, expect, it } from 'vitest';
import { minutesFromVisit, nearestPhotos, suggestStations } from './photo-times.ts';

const visit = (code: string, date: string, timeStart: string | null, timeEnd: string | null) => ({
  code,
  date,
  timeStart,
  timeEnd,
});
const morning = visit('S2', '2026-09-30', '08:40', '09:25');
const afternoon = visit('S10', '2026-09-30', '15:10', '16:05');

describe('a photo and the visits of a day', () => {
  // By hand: 16:20 is 15 minutes after 16:05 and 415 after 09:25; 15:30 lies within the visit.
  it.each([
    ['2026-09-30T16:20', afternoon, 15],
    ['2026-09-30T16:20:30', afternoon, 15.5],
    ['2026-09-30T16:20', morning, 415],
    ['2026-09-30T15:30', afternoon, 0],
    ['2026-09-30T15:00', afternoon, 10],
    [null, afternoon, null],
    ['2026-09-30T16:20', visit('S3', '2026-09-30', null, null), null],
    // Only the end was written: 16:20 is 5 minutes after it.
    ['2026-09-30T16:20', visit('S3', '2026-09-30', null, '16:15'), 5],
    // A night visit of 23:30 to 00:20: ten past midnight lies within it, half past is 10 minutes after.
    ['2026-10-01T00:10', visit('N1', '2026-09-30', '23:30', '00:20'), 0],
    ['2026-10-01T00:30', visit('N1', '2026-09-30', '23:30', '00:20'), 10],
  ] as const)('taken %s', (takenAt, station, minutes) => {
    expect(minutesFromVisit(takenAt, station)).toBe(minutes);
  });

  it('taken at 16:20 suggests the stations of that day, the nearest time first', () => {
    const untimed = visit('S1', '2026-09-30', null, null);
    const nextDay = visit('S4', '2026-10-01', '07:00', '08:00');
    const dayBefore = visit('S3', '2026-09-29', '16:00', '16:20');
    const { thatDay, others } = suggestStations('2026-09-30T16:20', [
      nextDay,
      untimed,
      morning,
      dayBefore,
      afternoon,
    ]);
    expect(thatDay.map(({ code }) => code)).toEqual(['S10', 'S2', 'S1']);
    expect(others.map(({ code }) => code)).toEqual(['S3', 'S4']);
  });

  it('of unknown time suggests no day: all stations, by code', () => {
    const { thatDay, others } = suggestStations(null, [afternoon, morning]);
    expect([thatDay, others.map(({ code }) => code)]).toEqual([[], ['S2', 'S10']]);
  });
});

describe('a station and the photos that wait for one', () => {
  const photo = (name: string, takenAt: string | null) => ({ name, takenAt });
  const photos = [photo('a', null), photo('b', '2026-09-30T16:20'), photo('c', '2026-09-30T09:30')];
  it('comes with the nearest first, those without a time last', () => {
    expect(nearestPhotos(photos, morning).map(({ name }) => name)).toEqual(['c', 'b', 'a']);
    expect(nearestPhotos(photos, afternoon).map(({ name }) => name)).toEqual(['b', 'c', 'a']);
  });

  it('without a time still comes with the photos of its day first', () => {
    const other = photo('d', '2026-09-28T12:00');
    const station = visit('S1', '2026-09-30', null, null);
    expect(nearestPhotos([other, ...photos], station).map(({ name }) => name)).toEqual(['c', 'b', 'd', 'a']);
  });
});

import { describe, expect, it } from 'vitest';
import type { StationRow } from '../../survey/table-rows.ts';
import { demoRows } from './demo-rows.ts';

const days = daysOf(
  [1, 2, 3].flatMap((seed) => demoRows(seed).stations.map((one) => ({ ...one.row, seed }))),
);

describe('the field days', () => {
  it('never put the team at two stations at once, and leave time to move', () => {
    for (const day of days) {
      for (let i = 1; i < day.length; i++) {
        expect(minutes(day[i]!.timeStart!) - minutes(day[i - 1]!.timeEnd!)).toBeGreaterThanOrEqual(12);
      }
    }
  });

  it('hold 4 to 6 snorkel stations or 3 to 4 scuba stations', () => {
    for (const day of days) {
      const modes = new Set(day.map((station) => station.mode));
      expect(modes.size).toBe(1);
      const [least, most] = modes.has('scuba') ? [3, 4] : [4, 6];
      expect(day.length).toBeGreaterThanOrEqual(least!);
      expect(day.length).toBeLessThanOrEqual(most!);
    }
  });

  it('dive the deepest station first', () => {
    for (const day of days.filter((one) => one[0]!.mode === 'scuba')) {
      const depths = day.map((station) => station.depthM!);
      expect(depths).toEqual(depths.toSorted((a, b) => b - a));
    }
  });

  it('take 40 to 90 minutes a station, less only where the dive was aborted', () => {
    for (const station of days.flat()) {
      const took = minutes(station.timeEnd!) - minutes(station.timeStart!);
      expect(took).toBeLessThanOrEqual(90);
      expect(took).toBeGreaterThanOrEqual(station.note === null ? 40 : 20);
    }
  });

  it('are weekdays between dawn and late afternoon', () => {
    for (const day of days) {
      expect([0, 6]).not.toContain(new Date(`${day[0]!.date}T12:00:00Z`).getUTCDay());
      expect(minutes(day[0]!.timeStart!)).toBeGreaterThanOrEqual(7 * 60);
      expect(minutes(day[day.length - 1]!.timeEnd!)).toBeLessThan(16 * 60 + 30);
    }
  });

  it('let both recorders work in every stratum', () => {
    const pairs = new Set(
      days.flat().map((one) => `${one.seed} ${one.survey} ${one.stratum} ${one.recorder}`),
    );
    expect(pairs.size).toBe(3 * 3 * 4 * 2);
  });
});

type Seeded = StationRow & { readonly seed: number };

function daysOf(stations: readonly Seeded[]): Seeded[][] {
  const byDay = Map.groupBy(stations, (station) => `${station.seed} ${station.date}`);
  return [...byDay.values()].map((day) =>
    day.toSorted((a, b) => minutes(a.timeStart!) - minutes(b.timeStart!)),
  );
}

function minutes(clock: string): number {
  return 60 * Number(clock.slice(0, 2)) + Number(clock.slice(3));
}

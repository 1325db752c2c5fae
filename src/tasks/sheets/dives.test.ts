import { describe, expect, it } from 'vitest';
import type { DayContent } from '../../survey/day-words.ts';
import { diversOf } from './dives.ts';

const noLimits = { divesPerDay: null, minutesPerDay: null, surfaceIntervalMin: null, maxDepthM: null };
const empty = { sea: null, visibilityM: null, habitat: null, notes: null, incidents: [], fuelUsedL: null };

function day(dives: DayContent['dives'], limits: Partial<DayContent['limits']> = {}): DayContent {
  return { ...empty, dives, limits: { ...noLimits, ...limits } };
}

const dive = (diver: string, entry: string, exit: string, maxDepthM: number | null = null) => ({
  diver,
  entry,
  exit,
  maxDepthM,
});

describe('the dives of a day', () => {
  // By hand: 50 + 40 = 90 minutes; from 08:50 to 10:00 are 70 minutes, whatever the order of the rows.
  it('are added up for each diver, in whatever order they were typed', () => {
    const typed = [
      dive('A', '10:00', '10:40', 9),
      dive('B', '08:00', '08:30'),
      dive('A', '08:00', '08:50', 12),
    ];
    const [a, b] = diversOf(day(typed), 'en');
    expect(a).toMatchObject({ diver: 'A', dives: 2, minutes: 90, shortestIntervalMin: 70, maxDepthM: 12 });
    expect(b).toMatchObject({
      diver: 'B',
      dives: 1,
      minutes: 30,
      shortestIntervalMin: null,
      maxDepthM: null,
    });
  });

  it('exactly at a typed limit are not over it, one beyond is', () => {
    const limits = { divesPerDay: 1, minutesPerDay: 30, maxDepthM: 18 };
    expect(diversOf(day([dive('A', '08:00', '08:30', 18)], limits), 'en')[0]!.over).toEqual([]);
    const over = diversOf(day([dive('A', '08:00', '08:31', 18.1)], limits), 'en')[0]!.over;
    expect(over.map(({ message }) => message)).toEqual([
      '31 minutes under water; the limit typed is 30 a day',
      '18.1 m deep; the limit typed is 18 m',
    ]);
  });

  it('with no typed limit are compared with nothing: the program has no limits of its own', () => {
    const many = Array.from({ length: 12 }, (_, i) =>
      dive('A', `${String(i + 8).padStart(2, '0')}:00`, `${String(i + 8).padStart(2, '0')}:59`, 60),
    );
    expect(diversOf(day(many), 'en')[0]!.over).toEqual([]);
  });

  it('over midnight last until after it', () => {
    expect(diversOf(day([dive('A', '23:40', '00:20')]), 'en')[0]!.minutes).toBe(40);
  });
});

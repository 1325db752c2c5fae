import { describe, expect, it } from 'vitest';
import { type DaysAround, readWrittenDay } from './written-day.ts';

/** A survey in the second week of September 2026; by the calendar, no source beyond it. */
const around: DaysAround = { present: '2026-09-07', first: '2026-09-07', last: '2026-09-15' };
const dayOf = (text: string, days = around) => readWrittenDay(text, days).day;

describe('a day as it is written on a slate', () => {
  it('is read in every form that means one day', () => {
    const forms = ['2026-09-09', '2026/9/9', '9 sept', '9 Sep 2026', 'Sept. 9, 2026', '9 septembre 2026'];
    expect(forms.map((text) => dayOf(text))).toEqual(forms.map(() => '2026-09-09'));
  });

  it('is filled up from the day that stands in the cell', () => {
    expect(['9', '09', '9/9', '9.9', '9-9'].map((text) => dayOf(text))).toEqual(Array(5).fill('2026-09-09'));
  });

  it('in French with its accents', () => {
    expect(['12 août 2026', '12 déc 2026', '12 fév 2026'].map((text) => dayOf(text))).toEqual([
      '2026-08-12',
      '2026-12-12',
      '2026-02-12',
    ]);
  });

  it('that could be two days is the one within the survey', () => {
    // 9 October or 10 September: only the second lies within 7 to 15 September.
    expect(dayOf('9/10/2026')).toBe('2026-09-10');
    expect(dayOf('10/9/2026')).toBe('2026-09-10');
  });

  it('that could be two days and the survey does not tell is none, and both are named', () => {
    const open = { present: '2026-09-07', first: null, last: null };
    expect(readWrittenDay('3/4/2026', open)).toEqual({ day: null, readings: ['2026-04-03', '2026-03-04'] });
    // A survey that holds both.
    const long = { ...open, first: '2026-01-01', last: '2026-12-31' };
    expect(dayOf('3/4/2026', long)).toBeNull();
    expect(dayOf('13/4/2026', open)).toBe('2026-04-13');
  });

  it('that the calendar does not have, a month that could be two, two figures for a year: none', () => {
    const none = ['31/9/2026', '30 feb', '5 ju 2026', '5 ma', '9/9/26', '', 'Tuesday', '45', '0'];
    expect(none.map((text) => dayOf(text))).toEqual(none.map(() => null));
  });
});

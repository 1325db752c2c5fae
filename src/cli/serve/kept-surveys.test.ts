import { describe, expect, it } from 'vitest';
import { record } from '../../../test/store-records.ts';
import type { SurveyRows } from '../../survey/store.ts';
import { keptSurveys } from './kept-surveys.ts';

function rowsOf(tallies: number, lengthsEach = 0): SurveyRows {
  const length = { lengthMm: 200, n: 1, measure: null, photo: null };
  const tally = { lengths: Array(lengthsEach).fill(length) };
  return {
    stations: [],
    transects: [],
    tallies: Array.from({ length: tallies }, () => record('tally', tally)),
  };
}

describe('surveys in memory', () => {
  const [a, b, c] = [rowsOf(4), rowsOf(3), rowsOf(3)];

  it('are those that came first, for who goes through them all again and again', () => {
    const kept = keptSurveys(8, 'first');
    for (const [id, rows] of Object.entries({ a, b, c })) expect(kept.keep(id, rows)).toBe(rows);
    expect(['a', 'b', 'c'].map((id) => kept.find(id))).toEqual([a, b, undefined]);
  });

  it('are those that were asked for last, for who looks at one after the other', () => {
    const kept = keptSurveys(8, 'last');
    kept.keep('a', a);
    kept.keep('b', b);
    kept.find('a');
    kept.keep('c', c);
    expect(['a', 'b', 'c'].map((id) => kept.find(id))).toEqual([a, undefined, c]);
  });

  it('take the room of their lengths too, and one that is too large drives no other out', () => {
    const kept = keptSurveys(8, 'last');
    kept.keep('a', a);
    // By hand: 2 tallies and 2 x 4 lengths are 10.
    kept.keep('large', rowsOf(2, 4));
    expect([kept.find('a'), kept.find('large')]).toEqual([a, undefined]);
  });

  it('leave their room when they are forgotten', () => {
    const kept = keptSurveys(8, 'first');
    kept.keep('a', a);
    kept.keep('b', b);
    kept.forget('a');
    kept.keep('c', c);
    expect(['a', 'b', 'c'].map((id) => kept.find(id))).toEqual([undefined, b, c]);
    kept.forgetAll();
    kept.keep('a', a);
    kept.keep('b', b);
    expect(['a', 'b', 'c'].map((id) => kept.find(id))).toEqual([a, b, undefined]);
  });
});

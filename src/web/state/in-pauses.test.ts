import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { inPauses } from './in-pauses.ts';

describe('work that may wait', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('begins when the keyboard rests, with what was asked for last', () => {
    const done: string[] = [];
    const pauses = inPauses();
    for (const letter of ['a', 'b', 'c']) {
      pauses.run([() => done.push(letter)], 250);
      vi.advanceTimersByTime(100);
    }
    expect(done).toEqual([]);
    vi.advanceTimersByTime(250);
    expect(done).toEqual(['c']);
  });

  it('lets a key come between two pieces, and drops the rest when that key asks anew', () => {
    const done: string[] = [];
    const pauses = inPauses();
    const asksAnew = () => {
      done.push('read');
      pauses.run([() => done.push('read again')], 250);
    };
    pauses.run([asksAnew, () => done.push('draw')], 0);
    vi.advanceTimersByTime(1000);
    expect(done).toEqual(['read', 'read again']);
  });

  it('stops when the sheet is left', () => {
    const done: string[] = [];
    const pauses = inPauses();
    pauses.run([() => done.push('read')], 100);
    pauses.stop();
    vi.advanceTimersByTime(1000);
    expect(done).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import type { ChangeAnswer } from '../../estimates/change/change-answer.ts';
import { changeInNumbers } from './change-sentences.ts';

const said = (ratio: number | null, ratioInterval: ChangeAnswer['ratioInterval']) =>
  changeInNumbers({ ratio, ratioInterval } as ChangeAnswer);

describe('a change in numbers', () => {
  it('never prints an end beyond no change as no change', () => {
    expect(said(3.7, [1.0042, 13.4])).toBe('3.7 times (1.004 to 13 times)');
    expect(said(0.6, [0.3, 0.997])).toBe('−40\u00a0% (−70 to −0.3\u00a0%)');
    expect(said(1, [0.4, 2])).toBe('±0\u00a0% (−60 to +100\u00a0%)');
  });

  it('gives no bound that lies on the other side of no change', () => {
    expect(said(0, [0, 0.2])).toContain('at most 20\u00a0%');
    expect(said(0, [0, 4.4])).toBe('none seen later, which does not prove a fall');
    expect(said(null, [0.014, null])).toBe('none seen before, which does not prove a rise');
    expect(said(null, [2.1, null])).toContain('at least 2.1 times');
  });
});

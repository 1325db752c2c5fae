import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { redraw } from './redraw.ts';

function boxWith(text: string) {
  const { document } = parseHTML('<html><body><div></div></body></html>');
  const box = document.querySelector('div') as unknown as HTMLElement;
  redraw(box, text);
  return box;
}

const strip = (...belts: string[]) =>
  `<svg aria-label="${belts.length} belts">${belts.map((one) => `<text>${one}</text>`).join('')}</svg>`;

describe('a figure drawn again', () => {
  it('looks as if it had been drawn anew', () => {
    for (const [before, after] of [
      [strip('1', '2', '3'), strip('1', '25', '3')],
      [strip('1'), strip('1', '2', '3')],
      [strip('1', '2', '3'), strip('3')],
      [strip('1', '1', '1'), strip('1', '1')],
      ['', strip('1')],
      [strip('1'), ''],
    ] as const) {
      const box = boxWith(before);
      redraw(box, after);
      expect(box.innerHTML).toBe(boxWith(after).innerHTML);
    }
  });

  it('leaves what did not change as it stands', () => {
    const box = boxWith(strip('1', '2', '3'));
    const [first, second, third] = box.querySelectorAll('text');
    redraw(box, strip('1', '25', '3'));
    const now = [...box.querySelectorAll('text')];
    expect(now[0]).toBe(first);
    expect(now[1]).not.toBe(second);
    expect(now[2]).toBe(third);
  });
});

/** Shares of animals as filled boxes of one length, with hair lines at the ends of their intervals. */

import { colours } from './colours.ts';
import { formatShare } from './numbers.ts';
import { drawing, element, line, write } from './svg.ts';

export interface ShareRow {
  readonly label: string;
  readonly share: number;
  readonly interval: readonly [number, number] | null;
}

const width = 328;
const rowHeight = 38;

/** Narrow enough for a phone, so that it is drawn once. */
export function shareStrip(rows: readonly ShareRow[], inWords: string): string {
  const reach = width - 50;
  const drawn = rows.flatMap(({ label, share, interval }, i) => {
    const y = i * rowHeight;
    const ends = (interval ?? []).map((end) =>
      line(end * reach, y + 16, end * reach, y + 32, { 'stroke-width': 1.2 }),
    );
    return [
      write(0, y + 12, label, { 'font-size': 13 }),
      element('rect', { x: 0.5, y: y + 18, width: reach, height: 12, fill: 'none', stroke: colours.ink }),
      element('rect', { x: 0.5, y: y + 18, width: share * reach, height: 12, fill: colours.rule }),
      ...ends,
      write(reach + 8, y + 28, formatShare(share), { 'font-size': 13 }),
    ];
  });
  return `<div class="shares">${drawing({ width, height: rows.length * rowHeight }, inWords, drawn)}</div>`;
}

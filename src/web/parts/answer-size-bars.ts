/** Shares of length classes as filled heights on one axis of millimetres, for all rows that are read together. */

import { colours } from '../../report/colours.ts';
import { drawing, element, line, write } from '../../report/svg.ts';
import type { SizesRow } from '../../tasks/sheets/answer-schemas.ts';

export interface SizeAxis {
  readonly fromMm: number;
  readonly toMm: number;
  /** The fullest class of all rows; its bar reaches the top. */
  readonly fullShare: number;
}

const height = 56;
const foot = 15;

export function sizeAxis(rows: readonly Pick<SizesRow, 'classes'>[]): SizeAxis {
  const classes = rows.flatMap((row) => row.classes).filter((one) => one.share > 0);
  if (classes.length === 0) return { fromMm: 0, toMm: 100, fullShare: 1 };
  return {
    fromMm: Math.min(...classes.map((one) => one.fromMm)),
    toMm: Math.max(...classes.map((one) => one.toMm)),
    fullShare: Math.max(...classes.map((one) => one.share)),
  };
}

/** `limitMm` is drawn as a dotted line where one was asked for. */
export function sizeBars(
  classes: SizesRow['classes'],
  axis: SizeAxis,
  frame: { readonly width: number; readonly limitMm: number | null; readonly inWords: string },
): string {
  const { width, limitMm, inWords } = frame;
  const perMm = (width - 2) / (axis.toMm - axis.fromMm);
  const x = (mm: number) => 1 + (mm - axis.fromMm) * perMm;
  const full = height - foot - 2;
  const children = classes
    .filter((one) => one.share > 0)
    .map((one) => {
      const tall = Math.max(1, (full * one.share) / axis.fullShare);
      const box = {
        x: x(one.fromMm),
        y: height - foot - tall,
        width: x(one.toMm) - x(one.fromMm),
        height: tall,
      };
      return element('rect', { ...box, fill: colours.softInk, stroke: colours.paper, 'stroke-width': 0.8 });
    });
  children.push(line(1, height - foot, width - 1, height - foot));
  children.push(write(1, height - 2, `${axis.fromMm}`, { 'font-size': 12 }));
  children.push(write(width - 1, height - 2, `${axis.toMm} mm`, { 'font-size': 12, 'text-anchor': 'end' }));
  if (limitMm !== null && limitMm > axis.fromMm && limitMm < axis.toMm) {
    children.push(
      line(x(limitMm), 0, x(limitMm), height - foot, { 'stroke-dasharray': '3 2', stroke: colours.question }),
    );
  }
  return drawing({ width, height }, inWords, children);
}

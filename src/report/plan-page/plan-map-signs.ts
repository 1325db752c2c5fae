/** The signs of planned stations, the same on the map and in its legend. */

import type * as Plot from '@observablehq/plot';
import type { PlannedStation } from '../../survey/plan-words.ts';
import { colours } from '../colours.ts';

export const stationKinds = ['random', 'fixed', 'hand-picked', 'spare', 'dropped'] as const;
export type StationKind = (typeof stationKinds)[number];

export function stationKind({ role, selection }: PlannedStation): StationKind {
  return role === 'planned' ? selection : role;
}

export function signOf(kind: StationKind, colour: string): Plot.DotOptions {
  const ink = { stroke: colours.ink, strokeWidth: 1, fill: colour };
  switch (kind) {
    case 'random':
      return { symbol: 'circle', r: 5, ...ink };
    case 'fixed':
      return { symbol: 'square', r: 5.5, ...ink };
    case 'hand-picked':
      return { symbol: 'triangle', r: 5.5, ...ink };
    case 'spare':
      return { symbol: 'circle', r: 3, stroke: colours.ink, strokeWidth: 1, fill: colours.paper };
    case 'dropped':
      return { symbol: 'times', r: 4.5, stroke: colours.ink, strokeWidth: 1.6 };
  }
}

/** Two maps of one page must not share a pattern: one inside a hidden drawing is not painted. */
export function maskPattern(width: number) {
  const id = `masked-${width}`;
  const markup =
    `<defs><pattern id="${id}" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">` +
    `<rect width="6" height="6" fill="${colours.paper}"/><line x1="0" y1="0" x2="0" y2="6" stroke="${colours.softInk}" stroke-width="1.4"/></pattern></defs>`;
  return { fill: `url(#${id})`, markup };
}

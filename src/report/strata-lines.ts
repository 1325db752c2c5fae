/** Strata, zones and masks for the command line: one table, then what the masks took. */

import { formatCount, formatHectares } from './numbers.ts';
import { textTable } from './text-table.ts';

interface StrataLine {
  readonly name: string;
  readonly role: 'stratum' | 'mask' | 'zone';
  readonly areaHa: number | null;
  readonly wholeAreaHa: number | null;
  readonly maskedHa: number | null;
  readonly masked: readonly { readonly name: string; readonly why: string; readonly areaHa: number }[];
  readonly parts: number | null;
  readonly holes: number | null;
  readonly corners: number | null;
  readonly edgeErrorHa: number | null;
  readonly reason: string | null;
  readonly frozenOn: string | null;
  readonly stations: number | null;
}

export function strataLines(rows: readonly StrataLine[]): readonly string[] {
  if (rows.length === 0)
    return [
      'This book has no strata yet: bring a map with “slateline strata --from FILE”, or import a strata table.',
    ];
  const count = (value: number | null) => (value === null ? '' : formatCount(value));
  const table = textTable<StrataLine>(
    [
      { head: 'area', cell: ({ name }) => name },
      { head: 'is a', cell: ({ role, reason }) => (reason === null ? role : `${role} (${reason})`) },
      { head: 'ha', cell: ({ areaHa }) => hectares(areaHa), number: true },
      {
        head: 'masked ha',
        cell: ({ maskedHa }) => (maskedHa === null ? '' : hectares(maskedHa)),
        number: true,
      },
      { head: 'pieces', cell: ({ parts }) => count(parts), number: true },
      { head: 'holes', cell: ({ holes }) => count(holes), number: true },
      { head: 'corners', cell: ({ corners }) => count(corners), number: true },
      { head: 'frozen on', cell: ({ frozenOn }) => frozenOn ?? '' },
      { head: 'stations', cell: ({ stations }) => count(stations), number: true },
      { head: 'area from', cell: areaFrom },
    ],
    rows,
  );
  return [...table.split('\n'), ...notesOf(rows)];
}

function areaFrom({ parts, areaHa }: StrataLine): string {
  if (parts !== null) return 'map';
  return areaHa === null ? 'not known' : 'typed, no map';
}

function notesOf(rows: readonly StrataLine[]): readonly string[] {
  const masked = rows.flatMap(({ name, wholeAreaHa, areaHa, masked: masks }) =>
    masks.length === 0
      ? []
      : [
          `${name}: ${hectares(wholeAreaHa)} ha drawn, ${masks.map((mask) => `${hectares(mask.areaHa)} ha off for ${mask.name} (${mask.why})`).join(', ')}, ${hectares(areaHa)} ha left to draw from.`,
        ],
  );
  const coarse = rows.filter((row) => (row.edgeErrorHa ?? 0) > 0.001 * (row.areaHa ?? 0));
  const edges = coarse.map(
    ({ name, edgeErrorHa }) =>
      `${name}: long borders; give or take ${hectares(edgeErrorHa)} ha between lines straight in degrees and shortest ways.`,
  );
  return masked.length + edges.length === 0 ? [] : ['', ...masked, ...edges];
}

function hectares(value: number | null): string {
  return value === null ? 'not known' : formatHectares(value);
}

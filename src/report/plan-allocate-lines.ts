/** Stations over strata, for the command line: the split in one sentence, then its table and what precision to expect. */

import { counted } from '../survey/counted.ts';
import type { Species } from '../survey/words.ts';
import { formatCount, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

interface SplitRow {
  readonly name: string;
  readonly areaHa: number | null;
  readonly pilotStations: number | null;
  readonly meanPerHa: number | null;
  readonly standardDeviation: number | null;
  readonly exact: number | null;
  readonly stations: number;
  readonly isRaisedToMinimum: boolean;
  readonly cost: number | null;
}

interface SplitPrecision {
  readonly species: string;
  readonly cv: number;
  readonly cvAssured: number;
  readonly cvByArea: number | null;
}

export interface SplitToTell {
  readonly survey: string | null;
  readonly rows: readonly SplitRow[];
  readonly stations: number;
  readonly cost: number | null;
  readonly rule: 'proportional' | 'neyman' | 'cost-optimal' | 'shared';
  readonly species: readonly SplitPrecision[];
  readonly bookSpecies: readonly Species[];
}

const rules = {
  proportional: 'by area alone',
  neyman: 'by area times spread (Neyman)',
  'cost-optimal': 'by area times spread over the root of the cost',
  shared: 'so that the species that is worst off is served best',
} as const;

export function planAllocateLines(split: SplitToTell, minimum: number): readonly string[] {
  if (split.rows.length === 0) return ['No stations could be allotted.'];
  const parts = split.rows.map((row) => `${formatCount(row.stations)} in ${row.name}`);
  const cost = split.cost === null ? '' : `, cost ${formatShort(split.cost)}`;
  const from = split.survey === null ? 'From typed strata' : `Spread as seen in ${split.survey}`;
  return [
    `${counted(formatCount(split.stations), 'station')}${cost}: ${parts.join(', ')}.`,
    '',
    `${from}; split ${rules[split.rule]}, at least ${formatCount(minimum)} in each stratum.`,
    '',
    textTable(columns(split), split.rows),
    ...precision(split),
    ...worstOff(split),
  ];
}

function columns(split: SplitToTell): readonly Column<SplitRow>[] {
  const number = true;
  const some = (known: (row: SplitRow) => number | null) => split.rows.some((row) => known(row) !== null);
  return [
    { head: 'stratum', cell: (row) => row.name },
    { head: split.survey === null ? 'area or weight' : 'area ha', cell: (row) => orDash(row.areaHa), number },
    ...(some((row) => row.pilotStations)
      ? [{ head: 'stations then', cell: (row: SplitRow) => orDash(row.pilotStations), number }]
      : []),
    ...(some((row) => row.meanPerHa)
      ? [{ head: 'per ha', cell: (row: SplitRow) => significant(row.meanPerHa), number }]
      : []),
    ...(some((row) => row.standardDeviation)
      ? [{ head: 'spread', cell: (row: SplitRow) => significant(row.standardDeviation), number }]
      : []),
    ...(some((row) => row.exact)
      ? [
          {
            head: 'by the rule',
            cell: (row: SplitRow) => (row.exact === null ? '–' : row.exact.toFixed(1)),
            number,
          },
        ]
      : []),
    { head: 'stations', cell: (row) => formatCount(row.stations), number },
    ...(some((row) => row.cost) ? [{ head: 'cost', cell: (row: SplitRow) => orDash(row.cost), number }] : []),
    ...(split.rows.some((row) => row.isRaisedToMinimum)
      ? [{ head: '', cell: (row: SplitRow) => (row.isRaisedToMinimum ? 'raised to the minimum' : '') }]
      : []),
  ];
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatShort(value);
}

function significant(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

/** Of many species the rarest decides a shared split, which is seldom what was meant. */
function worstOff({ rule, species, bookSpecies }: SplitToTell): readonly string[] {
  if (rule !== 'shared') return [];
  const worst = species.reduce((a, b) => (b.cv > a.cv ? b : a));
  const name = speciesNames(bookSpecies)(worst.species).label;
  return [`${name} is worst off and decides this split; name the species that matter with --species.`];
}

function precision(split: SplitToTell): readonly string[] {
  if (split.species.length === 0) return [];
  const labels = speciesNames(split.bookSpecies);
  const number = true;
  const isTyped = split.survey === null;
  return [
    '',
    textTable<SplitPrecision>(
      [
        { head: 'precision to expect', cell: (one) => labels(one.species).label },
        { head: 'CV', cell: (one) => formatShare(one.cv), number },
        ...(isTyped
          ? []
          : [
              { head: 'CV to count on', cell: (one: SplitPrecision) => formatShare(one.cvAssured), number },
              {
                head: 'CV if split by area',
                cell: (one: SplitPrecision) => (one.cvByArea === null ? '–' : formatShare(one.cvByArea)),
                number,
              },
            ]),
      ],
      split.species,
    ),
    ...(isTyped
      ? []
      : ['', 'CV: if the spread was seen rightly. CV to count on: in 80\u00a0% of such pilots no worse.']),
  ];
}

/** Numbers of species as text: what may be said at equal effort first, then the table. */

import type { RichnessRow } from '../estimates/richness/compare-richness.ts';
import { counted } from '../survey/counted.ts';
import type { Reason } from '../survey/message.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatCount, formatShare, formatSignificant } from './numbers.ts';
import { textTable } from './text-table.ts';

interface RichnessToSay {
  readonly surveys: readonly string[];
  readonly by: string;
  readonly species: readonly string[];
  readonly commonStations: number;
  readonly commonAnimals: number;
  readonly rows: readonly RichnessRow[];
  readonly asWideByChance: number | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

export function richnessLines(answers: readonly RichnessToSay[]): readonly string[] {
  return answers.flatMap((answer, i) => [...(i > 0 ? [''] : []), ...linesOf(answer)]);
}

function linesOf(answer: RichnessToSay): readonly string[] {
  const { rows, reason, cautions, by } = answer;
  const head = by === 'survey' ? answer.surveys.join(', ') : `${answer.surveys.join(', ')} by ${by}`;
  const notes = [...(reason === null ? [] : [reason]), ...cautions].map((one) => `  ${sentence('en', one)}`);
  if (rows.length === 0) return [`${head}: nothing can be compared`, ...notes];
  return [
    `${head}: ${headline(answer)}`,
    ...(reason === null ? [effort(answer)] : []),
    ...notes,
    ...table(answer),
  ];
}

function headline({ rows, reason, species, asWideByChance }: RichnessToSay): string {
  if (reason !== null) return 'held, because the effort was not equal';
  if (rows.length === 1) {
    const { unseen } = rows[0]!;
    return `${unseen?.seen ?? 0} of the ${species.length} species looked for were found`;
  }
  if (rows.every(({ animals }) => animals === 0))
    return 'none of these species was recorded: nothing to compare';
  const told = rows.toSorted((a, b) => (b.atStations?.species ?? 0) - (a.atStations?.species ?? 0));
  const [most, least] = [told[0]!, told.at(-1)!];
  const numbers = `${said(most.atStations)} in ${most.name}, ${said(least.atStations)} in ${least.name}`;
  if (asWideByChance === null) return `compared at equal effort (${numbers})`;
  const chance = `stations dealt out by chance part as widely in ${formatShare(asWideByChance)} of the deals`;
  if (asWideByChance > 0.05) return `no difference can be told at equal effort (${numbers}; ${chance})`;
  return `most species in ${most.name}, fewest in ${least.name}, at equal effort (${numbers}; ${chance})`;
}

function effort({ commonStations, commonAnimals, species, rows }: RichnessToSay): string {
  const stations = counted(commonStations, 'station');
  const alike =
    rows.length === 1
      ? 'All'
      : `Each at ${stations}, and at ${counted(formatCount(commonAnimals), 'animal')}`;
  return rows.length === 1
    ? `  ${alike} ${stations} and ${counted(formatCount(commonAnimals), 'animal')}; ${species.length} species ${species.length === 1 ? 'was' : 'were'} looked for on every belt`
    : `  ${alike}, the fewest that any of them has; of ${species.length} species that ${species.length === 1 ? 'was' : 'were'} looked for on every belt`;
}

function table({ commonStations, commonAnimals, rows, reason }: RichnessToSay): readonly string[] {
  const effortColumns =
    reason !== null
      ? []
      : [
          {
            head: `at ${commonStations} st.`,
            cell: (row: RichnessRow) => said(row.atStations),
            number: true,
          },
          {
            head: '±',
            cell: (row: RichnessRow) => (row.stations === commonStations ? '–' : error(row.atStations)),
            number: true,
          },
          {
            head: `at ${formatCount(commonAnimals)} an.`,
            cell: (row: RichnessRow) => said(row.atAnimals),
            number: true,
          },
          {
            head: '±',
            cell: (row: RichnessRow) => (row.animals === commonAnimals ? '–' : error(row.atAnimals)),
            number: true,
          },
          { head: 'common', cell: (row: RichnessRow) => orDash(row.hill?.order1), number: true },
          { head: 'dominant', cell: (row: RichnessRow) => orDash(row.hill?.order2), number: true },
        ];
  const lines = textTable(
    [
      { head: '  of', cell: (row) => `  ${row.name}` },
      { head: 'stations', cell: (row) => formatCount(row.stations), number: true },
      { head: 'm²/station', cell: (row) => formatCount(row.stationAreaM2), number: true },
      { head: 'animals', cell: (row) => formatCount(row.animals), number: true },
      ...effortColumns,
      { head: 'missed, at least', cell: missed },
    ],
    rows,
  );
  return [
    ...lines.split('\n'),
    '  ±: over draws from the stations and animals found, not over new ones; – where all of them are taken',
    '  common, dominant: Hill numbers of order 1 and 2, at the same number of animals',
  ];
}

/** Unseen species only: beside each other the numbers seen would compare unequal effort. */
function missed({ unseen }: RichnessRow): string {
  if (unseen === null) return 'nothing found';
  if (unseen.interval === null) return 'none told';
  const [low, high] = unseen.interval.map((end) => end - unseen.seen);
  return `${formatSignificant(unseen.atLeast - unseen.seen, 2)} (${formatSignificant(low!, 2)} to ${formatSignificant(high!, 2)})`;
}

function said(found: RichnessRow['atStations']): string {
  return found === null ? '–' : formatSignificant(found.species);
}

function error(found: RichnessRow['atStations']): string {
  return found === null ? '–' : formatSignificant(found.standardError, 2);
}

function orDash(value: number | undefined): string {
  return value === undefined ? '–' : formatSignificant(value);
}

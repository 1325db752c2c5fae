/** Tables of a plan page. */

import type { Position } from '../../survey/map-area.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import { writePosition } from '../../survey/position-notation.ts';
import { htmlTable, type TableColumn } from '../html-table.ts';
import { formatCount, formatHectares, formatShare, formatSignificant } from '../numbers.ts';
import { declinationOf, turnsInWords } from '../plan-laying-lines.ts';
import {
  bearing,
  bearingInWords,
  type PlanStratumRow,
  roleInWords,
  selectionWords,
  stratumRows,
} from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';

type StrataRow = PlanStratumRow & { readonly isWhole: boolean };

export function strataTable({ content }: PlanPageInput): string {
  const rows = stratumRows(content);
  const sum = (of: (row: PlanStratumRow) => number) => rows.reduce((total, row) => total + of(row), 0);
  const areaHa = sum((row) => row.areaHa);
  const whole: StrataRow = {
    ...{ name: 'All strata', areaHa, maskedHa: sum((row) => row.maskedHa), isWhole: true },
    ...{ stations: sum((row) => row.stations), spares: sum((row) => row.spares) },
    ...{ planned: sum((row) => row.planned), fixed: sum((row) => row.fixed) },
    ...{ handPicked: sum((row) => row.handPicked), replaced: sum((row) => row.replaced) },
    sparesLeft: sum((row) => row.sparesLeft),
  };
  const count = (head: string, of: (row: PlanStratumRow) => number): TableColumn<StrataRow> => ({
    head,
    cell: (row) => formatCount(of(row)),
    number: true,
  });
  return htmlTable<StrataRow>(
    [
      { head: 'Stratum', cell: ({ name }) => name },
      { head: 'Area, ha', cell: (row) => formatHectares(row.areaHa), number: true },
      { head: 'W', cell: (row) => (row.areaHa / areaHa).toFixed(2), number: true },
      { head: 'Masked, ha', cell: (row) => formatHectares(row.maskedHa), number: true },
      count('Stations', (row) => row.planned),
      count('Fixed', (row) => row.fixed),
      count('Hand-picked', (row) => row.handPicked),
      count('Replaced', (row) => row.replaced),
      count('Spares left', (row) => row.sparesLeft),
    ],
    [...rows.map((row) => ({ ...row, isWhole: false })), whole],
    {
      caption:
        'Stations of each stratum. W: its share of the area; fixed ones are among the stations, hand-picked ones beside them',
      strong: (row) => row.isWhole,
    },
  );
}

export function precisionTable({ precision }: PlanPageInput): string {
  return htmlTable(
    [
      { head: 'Species', cell: ({ species }) => species },
      { head: 'Then, per ha', cell: ({ densityPerHa }) => formatSignificant(densityPerHa, 3), number: true },
      { head: 'CV expected', cell: ({ cv }) => formatShare(cv), number: true },
      { head: 'CV to count on', cell: ({ cvAssured }) => formatShare(cvAssured), number: true },
      { head: 'Fall told, to', cell: ({ fall }) => fallFactor(1 - fall), number: true },
      { head: 'Rise told, to', cell: ({ rise }) => riseFactor(1 + rise), number: true },
    ],
    precision.species,
    {
      caption: `From the spread of ${precision.pilot ?? 'an earlier survey'}. To count on: in 8 of 10 such surveys no worse. Fall and rise: the smallest change against it, as a factor, told 8 times in 10 at 95 % with the CV to count on (formula, log ratio)`,
    },
  );
}

/** Beyond a hundredth or a hundredfold a change is not told by any survey worth the name: no digits are pretended. */
function fallFactor(factor: number): string {
  return factor < 0.01 ? '< × 0.01' : `× ${formatSignificant(factor, 2)}`;
}

function riseFactor(factor: number): string {
  return factor > 100 ? '> × 100' : `× ${formatSignificant(factor, 2)}`;
}

/** The stations in the order of the list, with their belts where they are laid. */
export function stationTable({ content, positionDetail }: PlanPageInput): string {
  const isExact = positionDetail === 'exact';
  const stations = content.stations.filter(({ role }) => role !== 'dropped');
  const laid = content.laid !== null;
  const columns: readonly TableColumn<PlannedStation>[] = [
    { head: 'Station', cell: ({ code }) => code },
    {
      head: 'Chosen',
      cell: (one) =>
        [selectionWords[one.selection], roleInWords(one)].filter((word) => word !== '').join(', '),
    },
    ...(isExact
      ? [
          {
            head: laid ? 'Start (WGS84)' : 'Position (WGS84)',
            cell: ({ position }: PlannedStation) => positionInCell(position),
          },
        ]
      : []),
    ...(isExact && laid
      ? [
          {
            head: 'End',
            cell: ({ belts }: PlannedStation) =>
              belts.length === 0 ? '' : positionInCell(belts.at(-1)!.end),
          },
        ]
      : []),
    ...(laid
      ? [
          { head: 'True', cell: (one: PlannedStation) => bearing(one, 'trueBearingDeg'), number: true },
          {
            head: 'Compass',
            cell: (one: PlannedStation) => bearing(one, 'magneticBearingDeg'),
            number: true,
          },
          { head: 'Declination', cell: declinationOf, number: true },
          {
            head: 'Inside',
            cell: ({ shareInside }: PlannedStation) => (shareInside === null ? '' : formatShare(shareInside)),
            number: true,
          },
        ]
      : []),
  ];
  return htmlTable(columns, stations, {
    caption: laid
      ? 'Stations in the order of the list; start of the first belt, end of the last'
      : 'Stations in the order of the list',
    group: ({ stratum }) => stratum,
  });
}

/** Belt by belt, for series that turn: the others follow from start, bearing, length and gap. */
export function turningTable({ content, positionDetail }: PlanPageInput): string {
  const rows = content.stations
    .filter((station) => turnsInWords(station) !== '')
    .flatMap(({ code, belts }) => belts.map((belt) => ({ code, ...belt })));
  if (rows.length === 0 || positionDetail !== 'exact') return '';
  return htmlTable(
    [
      { head: 'Belt', cell: ({ number }) => formatCount(number) },
      { head: 'Start (WGS84)', cell: ({ start }) => positionInCell(start) },
      { head: 'End', cell: ({ end }) => positionInCell(end) },
      { head: 'True', cell: ({ trueBearingDeg }) => bearingInWords(trueBearingDeg), number: true },
      { head: 'Compass', cell: ({ magneticBearingDeg }) => bearingInWords(magneticBearingDeg), number: true },
    ],
    rows,
    { caption: 'Series that turn, belt by belt', group: ({ code }) => code },
  );
}

export function replacementTable({ content }: PlanPageInput): string {
  return htmlTable(
    [
      { head: 'Dropped', cell: ({ dropped }) => dropped },
      { head: 'In its place', cell: ({ replacement }) => replacement ?? 'none was left' },
      { head: 'Stratum', cell: ({ stratum }) => stratum },
      { head: 'Why', cell: ({ reason }) => reason },
      { head: 'Who, when', cell: ({ who, date }) => `${who}, ${date}` },
    ],
    content.replacements,
    { caption: 'Replaced by the next of the list' },
  );
}

export function againstTable({ against }: PlanPageInput): string {
  return htmlTable(
    [
      { head: 'Stratum', cell: ({ stratum }) => stratum },
      { head: 'Planned', cell: ({ planned }) => formatCount(planned), number: true },
      { head: 'Visited', cell: ({ visited }) => formatCount(visited), number: true },
      { head: 'Replaced', cell: ({ replaced }) => formatCount(replaced), number: true },
      { head: 'Not visited', cell: ({ notVisited }) => notVisited.join(', ') },
    ],
    against?.strata ?? [],
    { caption: 'Planned stations, visited ones, and those replaced', slim: true },
  );
}

/** Broken between latitude and longitude, nowhere else. */
function positionInCell(position: Position): string {
  return writePosition(position)
    .split(', ')
    .map((half) => half.replaceAll(' ', '\u00a0'))
    .join(', ');
}

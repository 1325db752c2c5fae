/** The stations of a plan page, one by one, and the belts of those that turn. */

import type { Position } from '../../survey/map-area.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import { writePosition } from '../../survey/position-notation.ts';
import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { planPhrases } from '../catalogue/plan-phrases.ts';
import { htmlTable, type TableColumn } from '../html-table.ts';
import { formatCount, formatShare } from '../numbers.ts';
import { declinationOf, turnsInWords } from '../plan-laying-lines.ts';
import { bearing, bearingInWords, roleInWords } from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';

/** The stations in the order of the list, with their belts where they are laid. */
export function stationTable(input: PlanPageInput, language: Language): string {
  const { content, positionDetail } = input;
  const { belts: words } = planPagePhrases(language);
  const { selections } = planPhrases(language);
  const isLaid = content.laid !== null;
  const columns: readonly TableColumn<PlannedStation>[] = [
    { head: words.station, cell: ({ code }) => code },
    {
      head: words.chosen,
      cell: (one) =>
        [selections[one.selection], roleInWords(one, language)].filter((word) => word !== '').join(', '),
    },
    ...(positionDetail === 'exact' ? placeColumns(isLaid, language) : []),
    ...(isLaid ? bearingColumns(language) : []),
  ];
  const stations = content.stations.filter(({ role }) => role !== 'dropped');
  return htmlTable(columns, stations, {
    caption: isLaid ? words.laidCaption : words.caption,
    group: ({ stratum }) => stratum,
  });
}

function placeColumns(isLaid: boolean, language: Language): readonly TableColumn<PlannedStation>[] {
  const { belts: words } = planPagePhrases(language);
  const first = ({ position }: PlannedStation) => positionInCell(position);
  if (!isLaid) return [{ head: words.position, cell: first }];
  const last = ({ belts }: PlannedStation) => (belts.length === 0 ? '' : positionInCell(belts.at(-1)!.end));
  return [
    { head: words.start, cell: first },
    { head: words.end, cell: last },
  ];
}

function bearingColumns(language: Language): readonly TableColumn<PlannedStation>[] {
  const { belts: words } = planPagePhrases(language);
  return [
    { head: words.true, cell: (one) => bearing(one, 'trueBearingDeg', language), number: true },
    { head: words.compass, cell: (one) => bearing(one, 'magneticBearingDeg', language), number: true },
    { head: words.declination, cell: (one) => declinationOf(one, language), number: true },
    {
      head: words.inside,
      cell: ({ shareInside }) => (shareInside === null ? '' : formatShare(shareInside)),
      number: true,
    },
  ];
}

/** Belt by belt, for series that turn: the others follow from start, bearing, length and gap. */
export function turningTable({ content, positionDetail }: PlanPageInput, language: Language): string {
  const { belts: words } = planPagePhrases(language);
  const rows = content.stations
    .filter((station) => turnsInWords(station) !== '')
    .flatMap(({ code, belts }) => belts.map((belt) => ({ code, ...belt })));
  if (rows.length === 0 || positionDetail !== 'exact') return '';
  return htmlTable(
    [
      { head: words.belt, cell: ({ number }) => formatCount(number) },
      { head: words.start, cell: ({ start }) => positionInCell(start) },
      { head: words.end, cell: ({ end }) => positionInCell(end) },
      { head: words.true, cell: ({ trueBearingDeg }) => bearingInWords(trueBearingDeg), number: true },
      {
        head: words.compass,
        cell: ({ magneticBearingDeg }) => bearingInWords(magneticBearingDeg),
        number: true,
      },
    ],
    rows,
    { caption: words.turningCaption, group: ({ code }) => code },
  );
}

/** Broken between latitude and longitude, nowhere else. */
function positionInCell(position: Position): string {
  return writePosition(position)
    .split(', ')
    .map((half) => half.replaceAll(' ', '\u00a0'))
    .join(', ');
}

/** The columns of `plan size`: what each species needs, and what a number of stations gives. */

import { changeInWords, oneIn, riseInWords } from './change-words.ts';
import { formatCount, formatShare, formatSignificant } from './numbers.ts';
import type { NameOf, SizeLine, SizeOfSpecies, SizeSettings, SizeToTell } from './plan-size-shapes.ts';
import type { Column } from './text-table.ts';

export function needColumns(
  size: SizeToTell,
  settings: SizeSettings,
  nameOf: NameOf,
): readonly Column<SizeOfSpecies>[] {
  const number = true;
  const isChange = settings.goal === 'change';
  return [
    { head: 'species', cell: (one) => nameOf(one.subject.name) },
    ...(size.pilot === null
      ? []
      : [
          {
            head: 'seen at',
            cell: (one: SizeOfSpecies) => formatCount(one.subject.stationsWithSpecies ?? 0),
            number,
          },
          { head: 'animals', cell: (one: SizeOfSpecies) => formatCount(one.subject.animals ?? 0), number },
        ]),
    { head: 'per ha', cell: (one) => formatSignificant(one.subject.densityPerHa), number },
    ...(size.pilot === null
      ? []
      : [{ head: 'CV then', cell: (one: SizeOfSpecies) => formatShare(one.subject.pilotCv ?? 0), number }]),
    { head: 'clumping k', cell: ({ subject }) => clumpingCell(subject.clumpingK), number },
    {
      head: 'wanted',
      cell: (one) => (isChange ? changeInWords(one.target) : formatShare(one.target)),
      number,
    },
    ...(size.pilot === null
      ? []
      : [
          {
            head: 'stations as seen',
            cell: (one: SizeOfSpecies) => orMore(one.stationsAsSeen, settings),
            number,
          },
        ]),
    { head: 'stations to plan', cell: (one) => orMore(one.stations, settings), number },
    ...(isChange && size.pilot !== null
      ? [
          {
            head: 'or two surveys of',
            cell: (one: SizeOfSpecies) => orMore(one.stationsEach, settings),
            number,
          },
        ]
      : []),
  ];
}

function clumpingCell(k: number | null): string {
  return k === null ? 'scattered' : formatSignificant(k, 2);
}

function orMore(stations: number | null, { mostTried }: SizeSettings): string {
  return stations === null ? `over ${formatCount(mostTried)}` : formatCount(stations);
}

export function curveColumns(
  size: SizeToTell,
  settings: SizeSettings,
  isRise: boolean,
): readonly Column<SizeLine>[] {
  const earlier = (row: SizeLine) =>
    isRise ? riseInWords(row.riseAssured) : formatShare(1 - row.fallAssured);
  const each = (row: SizeLine) => (isRise ? riseInWords(row.riseEach) : formatShare(1 - row.fallEach));
  const head = isRise ? 'rise told, to' : 'fall told, to';
  const number = true;
  const isTyped = size.pilot === null;
  return [
    { head: 'stations', cell: (row) => formatCount(row.stations), number },
    ...(settings.stationsPerDay === null
      ? []
      : [{ head: 'boat days', cell: (row: SizeLine) => formatCount(row.boatDays ?? 0), number }]),
    ...(settings.dayCost === null
      ? []
      : [{ head: 'cost', cell: (row: SizeLine) => formatCount(row.cost ?? 0), number }]),
    { head: 'CV', cell: (row) => formatShare(row.cv), number },
    ...(isTyped
      ? []
      : [
          { head: 'CV to count on', cell: (row: SizeLine) => formatShare(row.cvAssured), number },
          { head, cell: earlier, number },
        ]),
    { head: isTyped ? head : 'two such surveys, to', cell: each, number },
    ...(settings.goal === 'change'
      ? [
          { head: 'wanted change told', cell: (row: SizeLine) => formatShare(row.told ?? 0), number },
          {
            head: 'false alarm',
            cell: (row: SizeLine) => oneIn(row.falseAlarm ?? 0, settings.simulations),
            number,
          },
        ]
      : []),
  ];
}

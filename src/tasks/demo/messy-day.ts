/**
 * One messy field day of the invented islands: a day's sheets as a tired recorder would type them, with every one of
 * the 24 errors of the trade in it (the list is in docs/handbook/messy-day.md).
 *
 * Some errors stop the import and hide the rest until they are mended; so the day comes twice, as typed and
 * with the stops mended.
 */

import type { Placed, TableRows } from '../../survey/table-rows.ts';
import { cleanDay, type Day } from './clean-day.ts';
import { messyErrors } from './messy-errors.ts';

export interface MessyDay {
  readonly asTyped: TableRows;
  readonly stopsMended: TableRows;
}

/** The same seed, the same day; the day is cut from the demo of that seed. */
export function messyDay(seed = 1): MessyDay {
  return { asTyped: withErrors(seed, () => true), stopsMended: withErrors(seed, (stops) => !stops) };
}

function withErrors(seed: number, isWanted: (stops: boolean) => boolean): TableRows {
  const day = cleanDay(seed);
  for (const error of messyErrors) if (isWanted(error.stops)) error.make(day);
  return dayRows(day);
}

/** The rows of a day, as a workbook is written from. */
export function dayRows(day: Day): TableRows {
  const list = <Row>(rows: readonly Row[]): Placed<Row>[] => rows.map((row) => ({ row, place: {} }));
  return {
    strata: list(day.strata),
    protocols: list(day.protocols),
    surveys: list(day.surveys),
    stations: list(day.stations),
    transects: list(day.transects),
    tallies: list(day.tallies),
    species: list(day.species),
    weights: [],
    targets: list(day.targets),
    limits: [],
  };
}

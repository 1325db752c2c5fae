/** What went wrong at sea: written down, not drawn, so that a reader of the demo knows where to look. */

import type { TransectStatus } from '../../survey/words.ts';
import type { SurveyYear } from './animal.ts';
import type { ChosenPlace } from './chosen-places.ts';
import type { PatchName } from './islands.ts';

export interface Mishap {
  readonly status: Exclude<TransectStatus, 'done'>;
  /** Searched length of a short belt; a whole belt was meant otherwise. */
  readonly lengthM: number;
  readonly reason: string;
}

interface WrittenMishap extends Mishap {
  readonly year: SurveyYear;
  readonly patch: PatchName;
  /** Which of the random stations of that patch, from 1. */
  readonly nth: number;
  readonly transects: readonly number[];
}

const aborted = 'dive ended early: current too strong to hold the tape';
const soaked = 'sheet soaked through and not readable';

const written: readonly WrittenMishap[] = [
  short(2022, 'south flat', 1, 6, 25, 'belt ran off the reef flat into the channel'),
  short(2022, 'outer terrace', 2, 3, 32, 'belt ended at a sand chute'),
  short(2024, 'north flat', 2, 5, 30, 'surf broke over the last metres'),
  short(2024, 'lagoon seagrass', 1, 4, 28, 'tape caught on a coral head'),
  short(2026, 'south flat', 3, 6, 20, 'belt ran off the reef flat into the channel'),
  short(2026, 'north flat', 4, 2, 34, 'tape caught on a coral head'),
  lost('lagoon seagrass', 2, 5, soaked),
  lost('north flat', 1, 2, 'sheet lost overboard on the way back'),
  {
    year: 2026,
    patch: 'outer terrace',
    nth: 4,
    transects: [3, 4, 5, 6],
    status: 'not done',
    lengthM: 40,
    reason: aborted,
  },
];

/** The mishap of one transect, or null when all went well. `places` are those of the survey. */
export function mishapAt(
  year: SurveyYear,
  place: ChosenPlace,
  transect: number,
  places: readonly ChosenPlace[],
): Mishap | null {
  const alike = places.filter((one) => one.selection === 'random' && one.patch.name === place.patch.name);
  const nth = alike.indexOf(place) + 1;
  const found = written.find(
    (one) =>
      one.year === year &&
      one.patch === place.patch.name &&
      one.nth === nth &&
      one.transects.includes(transect),
  );
  return found ?? null;
}

export function isAborted(year: SurveyYear, place: ChosenPlace, places: readonly ChosenPlace[]): boolean {
  return mishapAt(year, place, 6, places)?.status === 'not done';
}

/** Belts that a second diver swam again, for calibration: the first two of the second fixed station of each patch. */
export function isSwumTwice(place: ChosenPlace, transect: number): boolean {
  return ['F2', 'F5', 'F8', 'F11'].includes(place.code) && transect <= 2;
}

function short(
  year: SurveyYear,
  patch: PatchName,
  nth: number,
  transect: number,
  lengthM: number,
  reason: string,
): WrittenMishap {
  return { year, patch, nth, transects: [transect], status: 'partial', lengthM, reason };
}

function lost(patch: PatchName, nth: number, transect: number, reason: string): WrittenMishap {
  return { year: 2026, patch, nth, transects: [transect], status: 'lost', lengthM: 40, reason };
}

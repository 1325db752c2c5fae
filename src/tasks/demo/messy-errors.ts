/** The 24 errors, one by one, each spoiling a clean day a little more. */

import type { TallyRow } from '../../survey/table-rows.ts';
import type { Length } from '../../survey/words.ts';
import type { Day } from './clean-day.ts';

export interface MessyError {
  /** As numbered in docs/handbook/messy-day.md. */
  readonly number: number;
  /** True when the import stops for it: nothing is written until it is mended. */
  readonly stops: boolean;
  readonly make: (day: Day) => void;
}

const error = (number: number, make: (day: Day) => void): MessyError => ({ number, stops: false, make });
const stop = (number: number, make: (day: Day) => void): MessyError => ({ number, stops: true, make });

const station = (day: Day, code: string) => day.stations.find((row) => row.code === code)!;
const transect = (day: Day, code: string, belt: string) =>
  day.transects.find((row) => row.station === code && row.transect === belt)!;
const tally = (day: Day, code: string, belt: string, species: string) =>
  day.tallies.find(
    (row) => row.station === code && row.transect === belt && row.species.toLowerCase() === species,
  )!;
const dropTallies = (day: Day, code: string, belt: string) => {
  const kept = day.tallies.filter((row) => row.station !== code || row.transect !== belt);
  day.tallies.splice(0, day.tallies.length, ...kept);
};
const lengthOf = (lengthMm: number): Length => ({ lengthMm, n: 1, measure: null, photo: null });

export const messyErrors: readonly MessyError[] = [
  // Errors of habit first: they run through the whole day.
  error(13, (day) => {
    for (const row of day.tallies) {
      if (row.count === null || row.count <= 30) continue;
      row.count = 30;
      row.lengths = row.lengths.slice(0, 30);
    }
  }),
  error(23, (day) => {
    const byA = new Set(day.stations.filter((row) => row.recorder === 'Recorder A').map((row) => row.code));
    for (const row of day.tallies) {
      if (byA.has(row.station))
        row.lengths = row.lengths.map((one) => ({ ...one, lengthMm: 5 * Math.round(one.lengthMm / 5) }));
    }
  }),
  error(1, (day) => {
    transect(day, 'D5', '4').noneSeen = false;
  }),
  error(2, (day) => {
    transect(day, 'D6', '2').reason = 'sheet soaked, could not be read';
  }),
  error(3, (day) => {
    dropTallies(day, 'D1', '2');
    const first = day.tallies.filter((row) => row.station === 'D1' && row.transect === '1');
    for (const row of first) day.tallies.push({ ...row, transect: '2', lengths: [...row.lengths] });
  }),
  stop(4, (day) => {
    day.stations.push({ ...station(day, 'D10'), code: 'D9', timeStart: '16:10', timeEnd: '16:50' });
  }),
  stop(5, (day) => {
    const row = station(day, 'D2');
    [row.latitudeDeg, row.longitudeDeg] = [row.longitudeDeg, row.latitudeDeg];
  }),
  error(6, (day) => {
    const row = station(day, 'D3');
    row.latitudeDeg = exchangeDecimals(row.plannedLatitudeDeg!);
  }),
  error(7, (day) => {
    const row = station(day, 'D4');
    row.latitudeDeg = -row.latitudeDeg!;
  }),
  error(8, (day) => {
    const row = station(day, 'D6');
    row.latitudeDeg = minutesReadAsSeconds(row.plannedLatitudeDeg!);
  }),
  error(9, (day) => {
    station(day, 'D6').date = '2026-02-09';
    station(day, 'D7').date = '2062-09-02';
  }),
  error(10, (day) => {
    const row = tally(day, 'D10', '1', 'lollyfish');
    row.lengths = row.lengths.map((one) => ({ ...one, lengthMm: Math.round(one.lengthMm / 10) }));
  }),
  stop(11, (day) => {
    day.tallies.push(tallyOf('D10', '4', 'surf redfish', { count: null, lengthsMm: [205] }));
  }),
  stop(12, (day) => {
    const row = tally(day, 'D2', '5', 'lollyfish');
    row.count = row.lengths.length - 2;
  }),
  error(14, (day) => {
    transect(day, 'D1', '3').lengthM = 400;
  }),
  error(15, (day) => {
    for (const row of day.transects) if (row.station === 'D2') row.widthM = 1;
  }),
  error(16, (day) => {
    day.transects.push({ ...transect(day, 'D3', '6'), transect: '7', noneSeen: true });
  }),
  stop(17, (day) => {
    tally(day, 'D4', '2', 'sandfish').species = 'sanfish';
  }),
  error(18, (day) => {
    day.tallies.push(tallyOf('D7', '2', 'sandfish', { count: 2, lengthsMm: [180, 195] }));
  }),
  error(19, (day) => {
    station(day, 'D5').stratum = 'north flat';
  }),
  error(20, (day) => {
    const kept = day.transects.filter((row) => row.station !== 'D10' || Number(row.transect) <= 4);
    day.transects.splice(0, day.transects.length, ...kept);
    for (const belt of ['5', '6']) dropTallies(day, 'D10', belt);
  }),
  error(21, (day) => {
    const { recorder, navigator, timeStart, timeEnd } = station(day, 'D9');
    Object.assign(station(day, 'D10'), { recorder, navigator, timeStart, timeEnd });
  }),
  error(22, (day) => {
    tally(day, 'D3', '2', 'lollyfish').count = 4444;
  }),
  error(24, (day) => {
    const drawn = { plannedLatitudeDeg: null, plannedLongitudeDeg: null };
    Object.assign(station(day, 'D9'), { ...drawn, note: 'good spot, shown by a fisher' });
  }),
];

function tallyOf(
  code: string,
  belt: string,
  species: string,
  seen: { readonly count: number | null; readonly lengthsMm: readonly number[] },
): TallyRow {
  const lengths = seen.lengthsMm.map(lengthOf);
  return { survey: 'Field day', station: code, transect: belt, swim: 1, species, count: seen.count, lengths };
}

/** The second and third decimal exchanged, as 17.570 for 17.750. */
function exchangeDecimals(degrees: number): number {
  const [whole, decimals] = Math.abs(degrees).toFixed(5).split('.') as [string, string];
  const swapped = decimals[0]! + decimals[2]! + decimals[1]! + decimals.slice(3);
  return Math.sign(degrees) * Number(`${whole}.${swapped}`);
}

/** 36 30.45' typed as 36 30' 45": the decimals of the minutes taken for seconds. */
function minutesReadAsSeconds(degrees: number): number {
  const size = Math.abs(degrees);
  const whole = Math.floor(size);
  const minutes = (size - whole) * 60;
  const wholeMinutes = Math.floor(minutes);
  const seconds = Math.round((minutes - wholeMinutes) * 100);
  return Math.sign(degrees) * (whole + wholeMinutes / 60 + seconds / 3600);
}

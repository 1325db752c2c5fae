/** Joins the rows of `counts` and `lengths` into one tally per species and transect. */

import type { Place } from '../survey/message.ts';
import type { Placed, TallyRow } from '../survey/table-rows.ts';
import type { Length, LengthMeasure } from '../survey/words.ts';
import { placeOf, type RowCollector, type RowPosition, reportRepeat } from './collect-rows.ts';
import type { ProblemList } from './problem-list.ts';

interface Tally {
  readonly survey: string;
  readonly station: string;
  readonly transect: string;
  readonly swim: number;
  readonly species: string;
  count: number | null;
  readonly lengths: Length[];
}

interface PlacedTally {
  readonly row: Tally;
  place: Place;
}

export interface TallyCollector {
  readonly counts: RowCollector;
  readonly lengths: RowCollector;
  readonly tallies: readonly Placed<TallyRow>[];
}

/** Values come in the order of the columns: survey, station, transect, swim, species first in both tables. */
export function tallyCollector(problems: ProblemList): TallyCollector {
  const tallies: PlacedTally[] = [];
  const talliesAt = swimFinder();
  const lengthOf = sharedLengths();

  function tallyOf(values: readonly unknown[], at: RowPosition): PlacedTally {
    const [survey, station, transect, swim, species] = values as [string, string, string, number, string];
    const ofSwim = talliesAt(survey, station, transect, swim);
    let tally = ofSwim.get(species);
    if (tally === undefined) {
      tally = {
        row: { survey, station, transect, swim, species, count: null, lengths: [] },
        place: placeOf(at),
      };
      ofSwim.set(species, tally);
      tallies.push(tally);
    }
    return tally;
  }

  return {
    tallies,
    counts: {
      add(values, at, repeats) {
        const tally = tallyOf(values, at);
        const count = values[5] as number;
        if (tally.row.count === null) {
          tally.row.count = count;
          tally.place = placeOf(at);
        } else if (repeats.are === 'added') {
          tally.row.count += count;
          return false;
        } else reportRepeat(problems, placeOf(at), tally.place, values.slice(0, 5).join(', '));
        return true;
      },
    },
    lengths: {
      add(values, at) {
        const length = lengthOf(
          values[5] as number,
          values[6] as number,
          values[7] as LengthMeasure | null,
          values[8] as string | null,
        );
        tallyOf(values, at).row.lengths.push(length);
        return true;
      },
    },
  };
}

type TalliesOfSwim = Map<string, PlacedTally>;

/** The tallies of one swim of a transect by species. Rows of one swim mostly stand together, so the last one is remembered. */
function swimFinder(): (survey: string, station: string, transect: string, swim: number) => TalliesOfSwim {
  const bySwim = new Map<string, TalliesOfSwim>();
  let last: readonly [string, string, string, number] = ['', '', '', 0];
  let found: TalliesOfSwim = new Map();
  return (survey, station, transect, swim) => {
    if (last[2] === transect && last[1] === station && last[3] === swim && last[0] === survey) return found;
    last = [survey, station, transect, swim];
    const key = last.join('\u0000');
    found = bySwim.get(key) ?? new Map();
    bySwim.set(key, found);
    return found;
  };
}

/** Equal lengths without a photo share one value: a million animals have only a few hundred lengths. */
function sharedLengths(): (
  lengthMm: number,
  n: number,
  measure: LengthMeasure | null,
  photo: string | null,
) => Length {
  const single = new Map<number, Length>();
  return (lengthMm, n, measure, photo) => {
    if (n !== 1 || measure !== null || photo !== null) return { lengthMm, n, measure, photo };
    let length = single.get(lengthMm);
    if (length === undefined) {
      length = { lengthMm, n, measure, photo };
      single.set(lengthMm, length);
    }
    return length;
  };
}

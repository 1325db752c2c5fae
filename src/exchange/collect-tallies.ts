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
  const byKey = new Map<string, PlacedTally>();
  const lengthOf = sharedLengths();
  let last: PlacedTally | null = null;

  function tallyOf(values: readonly unknown[], at: RowPosition): PlacedTally {
    const [survey, station, transect, swim, species] = values as [string, string, string, number, string];
    if (last !== null && isTallyOf(last.row, survey, station, transect, swim, species)) return last;
    const key = `${survey}\u0000${station}\u0000${transect}\u0000${swim}\u0000${species}`;
    let tally = byKey.get(key);
    if (tally === undefined) {
      tally = {
        row: { survey, station, transect, swim, species, count: null, lengths: [] },
        place: placeOf(at),
      };
      byKey.set(key, tally);
      tallies.push(tally);
    }
    last = tally;
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
        } else if (repeats.are === 'added') tally.row.count += count;
        else reportRepeat(problems, placeOf(at), tally.place, values.slice(0, 5).join(', '));
        return true;
      },
    },
    lengths: {
      add(values, at) {
        const [lengthMm, n, measure, photo] = values.slice(5) as [
          number,
          number,
          LengthMeasure | null,
          string | null,
        ];
        tallyOf(values, at).row.lengths.push(lengthOf(lengthMm, n, measure, photo));
        return true;
      },
    },
  };
}

/** Rows of one tally mostly stand together: comparing with the last one spares a look-up. */
function isTallyOf(
  tally: Tally,
  survey: string,
  station: string,
  transect: string,
  swim: number,
  species: string,
): boolean {
  return (
    tally.species === species &&
    tally.transect === transect &&
    tally.station === station &&
    tally.swim === swim &&
    tally.survey === survey
  );
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

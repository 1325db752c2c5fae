import { sum } from '../maths/variance.ts';

/** One species on one transect: all animals counted, and the lengths of those measured. */
export interface LengthTally {
  readonly count: number;
  readonly lengths: readonly { readonly lengthMm: number; readonly n: number }[];
}

export interface LengthStation {
  /** Area searched for the species at the station. */
  readonly searchedAreaM2: number;
  /** Empty where none was seen, or where the station lies outside the zone or site in question. */
  readonly tallies: readonly LengthTally[];
}

export interface LengthStratum {
  readonly name: string;
  /** Usually the area in hectares. */
  readonly weight: number;
  /** ALL searched stations, those without animals included: they stay in the standard error. */
  readonly stations: readonly LengthStation[];
}

/** Animals of one length: how many counted animals and how much of the stock they stand for. */
export interface RaisedLength {
  readonly lengthMm: number;
  /** Animals really measured; 0 where the length was borrowed. */
  readonly measured: number;
  /** Counted animals this stands for. */
  readonly animals: number;
  /** Animals of the whole area this stands for (when the stratum weights are hectares). */
  readonly stock: number;
}

interface RaisedStratum {
  readonly name: string;
  readonly stations: readonly (readonly RaisedLength[])[];
}

export interface RaisedLengths {
  readonly strata: readonly RaisedStratum[];
  readonly animals: number;
  readonly measured: number;
  /** Counted animals of transects where none was measured, by where their lengths came from. */
  readonly borrowedAnimals: number;
  readonly borrowed: {
    readonly fromStation: number;
    readonly fromStratum: number;
    readonly fromElsewhere: number;
  };
}

/**
 * Lengths raised to the counts: each measured animal stands for count / measured animals of its transect,
 * and for stratum weight / stations * 10 000 / area of the whole stock.
 *
 * Raised per transect, because divers stop measuring only where there are many. Assumes the measured animals
 * are a fair choice of the transect's. Animals of a transect without lengths borrow the distribution of
 * their station, else of their stratum, else of the whole scope; how many is reported. Null when none was
 * measured in the whole scope. Source: METHODS d; Sparre and Venema 1998, chapter 7 (from memory).
 */
export function raiseLengths(strata: readonly LengthStratum[]): RaisedLengths | null {
  if (strata.some((stratum) => stratum.stations.some((station) => !(station.searchedAreaM2 > 0)))) {
    throw new Error('raiseLengths requires a searched area at every station');
  }
  const measuredIn = strata.map((stratum) =>
    stratum.stations.map((station) => station.tallies.flatMap(raiseTally)),
  );
  const everywhere = measuredIn.flat(2);
  const measured = sum(everywhere.map((length) => length.measured));
  if (sum(everywhere.map((length) => length.animals)) === 0) return null;
  const borrowed = { fromStation: 0, fromStratum: 0, fromElsewhere: 0 };
  const raised = strata.map((stratum, h) => ({
    name: stratum.name,
    stations: stratum.stations.map((station, i) => {
      const own = measuredIn[h]![i]!;
      const silent = sum(station.tallies.filter(hasNoLengths).map((tally) => tally.count));
      const lenders = [own, measuredIn[h]!.flat(), everywhere];
      const lender = lenders.findIndex((lengths) => lengths.some((length) => length.animals > 0));
      borrowed[(['fromStation', 'fromStratum', 'fromElsewhere'] as const)[lender]!] += silent;
      const stockPerAnimal = (stratum.weight / stratum.stations.length) * (10_000 / station.searchedAreaM2);
      const all = silent === 0 ? own : [...own, ...borrow(lenders[lender]!, silent)];
      return all.map((length) => ({ ...length, stock: length.animals * stockPerAnimal }));
    }),
  }));
  return {
    strata: raised,
    animals: sum(strata.flatMap((s) => s.stations.flatMap((t) => t.tallies.map((tally) => tally.count)))),
    measured,
    borrowedAnimals: borrowed.fromStation + borrowed.fromStratum + borrowed.fromElsewhere,
    borrowed,
  };
}

type UnweightedLength = Omit<RaisedLength, 'stock'>;

function raiseTally(tally: LengthTally): UnweightedLength[] {
  const measured = sum(tally.lengths.map((length) => length.n));
  return tally.lengths
    .filter((length) => length.n > 0)
    .map(({ lengthMm, n }) => ({ lengthMm, measured: n, animals: (n * tally.count) / measured }));
}

function hasNoLengths(tally: LengthTally): boolean {
  return tally.lengths.every((length) => length.n === 0);
}

/** The lender's distribution, scaled to the animals that have none; equal lengths joined to keep the list short. */
function borrow(lender: readonly UnweightedLength[], animals: number): UnweightedLength[] {
  const byLength = new Map<number, number>();
  for (const length of lender)
    byLength.set(length.lengthMm, (byLength.get(length.lengthMm) ?? 0) + length.animals);
  const total = sum([...byLength.values()]);
  return [...byLength].map(([lengthMm, share]) => ({
    lengthMm,
    measured: 0,
    animals: (animals * share) / total,
  }));
}

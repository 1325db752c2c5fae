import { logChoose } from './hill-numbers.ts';

export interface ExpectedSpecies {
  readonly species: number;
  /** Spread of the number over draws from what was found; 0 when everything is drawn. Not the spread of new stations. */
  readonly standardError: number;
}

/**
 * Species among so many animals drawn from those found (Hurlbert's rarefaction).
 *
 * Question: how many species would have been found, had only `animals` been counted? Sum over species of the chance
 * that at least one of it is drawn. Assumes that animals were met one by one; clumped animals make it too high.
 * Null when more animals are asked than were found. Source: Hurlbert 1971, Ecology 52:577; variance Heck et al. 1975
 * (both from memory; R package vegan agrees).
 */
export function speciesAmongAnimals(counts: readonly number[], animals: number): ExpectedSpecies | null {
  const all = counts.reduce((total, count) => total + count, 0);
  if (animals < 1 || animals > all) return null;
  const present = counts.filter((count) => count > 0);
  const missed = (gone: number) => Math.exp(logChoose(all - gone, animals) - logChoose(all, animals));
  return expected(
    present.length,
    (i) => missed(present[i]!),
    (i, j) => missed(present[i]! + present[j]!),
  );
}

/**
 * Species at so many stations drawn from those worked, averaged over all orders (exact accumulation).
 *
 * `stations` holds one row of counts per station, the species in one order; a station with nothing is a row of zeros
 * and stays in, since it was searched. Clumping stays inside stations, so no mixing is assumed; stations count as
 * one unit of effort each. Null when more stations are asked than there are.
 * Source: Ugland et al. 2003; Colwell et al. 2012 (from memory; R package vegan, specaccum "exact", agrees).
 */
export function speciesAtStations(
  stations: readonly (readonly number[])[],
  some: number,
): ExpectedSpecies | null {
  const all = stations.length;
  if (some < 1 || some > all) return null;
  const { met, eitherMet } = meetingsOf(stations);
  const missed = (gone: number) => Math.exp(logChoose(all - gone, some) - logChoose(all, some));
  return expected(
    met.length,
    (i) => missed(met[i]!),
    (i, j) => missed(eitherMet[i]![j]!),
  );
}

interface Meetings {
  /** Stations at which each species was met. */
  readonly met: readonly number[];
  /** Stations at which at least one of two was met, for j below i. */
  readonly eitherMet: readonly (readonly number[])[];
}

/** Counted once for a list of stations: every step of an accumulation asks again. */
const meetingsKnown = new WeakMap<readonly (readonly number[])[], Meetings>();

function meetingsOf(stations: readonly (readonly number[])[]): Meetings {
  const known = meetingsKnown.get(stations);
  if (known !== undefined) return known;
  const columns = (stations[0] ?? [])
    .map((_, species) => stations.map((row) => row[species]! > 0))
    .filter((seen) => seen.some(Boolean));
  const eitherMet = columns.map((one, i) =>
    columns.slice(0, i).map((other) => one.filter((seen, station) => seen || other[station]).length),
  );
  const found = { met: columns.map((seen) => seen.filter(Boolean).length), eitherMet };
  meetingsKnown.set(stations, found);
  return found;
}

function expected(
  n: number,
  missed: (i: number) => number,
  bothMissed: (i: number, j: number) => number,
): ExpectedSpecies {
  let species = 0;
  let variance = 0;
  for (let i = 0; i < n; i++) {
    const one = missed(i);
    species += 1 - one;
    variance += one * (1 - one);
    for (let j = 0; j < i; j++) variance += 2 * (bothMissed(i, j) - one * missed(j));
  }
  // Rounding may leave a hair below zero when everything is drawn.
  return { species, standardError: Math.sqrt(Math.max(0, variance)) };
}

/** Counts and lengths: one tally per species and transect, with the rules that bind them to their transect. */

import type { Place, Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { TableRows, TallyRow } from '../../survey/table-rows.ts';
import type { Length, RecordOf, Species, Tally } from '../../survey/words.ts';
import { type BookInHand, stationKey, transectKey } from './book-in-hand.ts';
import type { Changes } from './changes.ts';

interface TallyContext {
  readonly book: BookInHand;
  readonly changes: Changes;
  readonly problems: Problem[];
  /** False when no lengths table was given: then the lengths in the book stay. */
  readonly hasLengths: boolean;
}

export function resolveTallies(rows: TableRows, context: TallyContext): void {
  const finder = new TransectFinder(context.book);
  for (const { row, place } of rows.tallies) {
    const species = context.book.speciesNames.find(row.species);
    const found = finder.find(row);
    if (found === undefined) {
      context.problems.push(missingTransect(row, placeOf(row, place), context.book));
      continue;
    }
    if (species === undefined) continue;
    if (found.seen.has(species.id)) {
      const written = {
        value: row.species,
        parameters: { key: `${row.station} ${row.transect} ${species.name}` },
      };
      context.problems.push(problemOf('repeated-row', placeOf(row, place), written));
      continue;
    }
    found.seen.add(species.id);
    keepTally({ row, place, species, found }, context);
  }
}

/** A transect with its tallies by species identity, as the book and the rows before have them. */
interface FoundTransect {
  readonly transect: RecordOf<'transect'>;
  readonly tallies: Map<string, Tally>;
  /** Species that had a row already. */
  readonly seen: Set<string>;
}

interface TallyCase {
  readonly row: TallyRow;
  readonly place: Place;
  readonly species: Species;
  readonly found: FoundTransect;
}

function keepTally(one: TallyCase, { changes, problems, hasLengths }: TallyContext): void {
  const { row, place, species } = one;
  const { transect, tallies } = one.found;
  const before = tallies.get(species.id);
  const count = row.count ?? before?.count;
  if (count === undefined) {
    problems.push(problemOf('lengths-without-count', placeOf(row, place), { value: row.lengths.length }));
    return;
  }
  const lengths = hasLengths ? row.lengths : (before?.lengths ?? []);
  const measured = animalsMeasured(lengths);
  if (measured > count) {
    const parameters = { measured, count };
    problems.push(
      problemOf('more-lengths-than-animals', placeOf(row, place), { value: measured, parameters }),
    );
  }
  if (count > 0) askTransect(transect, count, placeOf(row, place), problems);
  if (hasLengths) countLengths(changes, before?.lengths ?? [], lengths);
  const fields = { transectId: transect.id, speciesId: species.id, count, lengths: lengths as Length[] };
  changes.keep('tally', tallies, species.id, fields, row.count !== null);
}

function askTransect(transect: RecordOf<'transect'>, count: number, place: Place, problems: Problem[]): void {
  if (transect.status === 'lost' || transect.status === 'not done') {
    const parameters = { status: transect.status, count };
    problems.push(problemOf('count-on-lost-transect', place, { value: count, parameters }));
  }
  if (transect.noneSeen) {
    problems.push(problemOf('none-seen-but-counted', place, { value: count, parameters: { count } }));
  }
}

export function animalsMeasured(lengths: readonly Length[]): number {
  let animals = 0;
  for (const length of lengths) animals += length.n;
  return animals;
}

/** Rows of the lengths table that stood in the book before are unchanged; the rest were added or changed. */
function countLengths(changes: Changes, before: readonly Length[], after: readonly Length[]): void {
  const counts = changes.counted('lengths');
  if (before.length === 0) {
    counts.added += after.length;
    return;
  }
  const standing = new Map<string, number>();
  for (const length of before) {
    const key = JSON.stringify(length);
    standing.set(key, (standing.get(key) ?? 0) + 1);
  }
  let common = 0;
  for (const length of after) {
    const key = JSON.stringify(length);
    const left = standing.get(key) ?? 0;
    if (left > 0) {
      standing.set(key, left - 1);
      common++;
    }
  }
  const changed = Math.min(after.length, before.length) - common;
  counts.unchanged += common;
  counts.changed += changed;
  counts.added += after.length - common - changed;
}

/** Finds transects by names; rows of one transect follow one another, so the last one is remembered. */
class TransectFinder {
  readonly #book: BookInHand;
  #last: TallyRow | null = null;
  #found: FoundTransect | undefined;
  readonly #known = new Map<string, FoundTransect>();

  constructor(book: BookInHand) {
    this.#book = book;
  }

  find(row: TallyRow): FoundTransect | undefined {
    const last = this.#last;
    const same =
      last !== null &&
      last.transect === row.transect &&
      last.station === row.station &&
      last.survey === row.survey &&
      last.swim === row.swim;
    if (same) return this.#found;
    this.#last = row;
    this.#found = this.#lookUp(row);
    return this.#found;
  }

  #lookUp(row: TallyRow): FoundTransect | undefined {
    const survey = this.#book.surveys.get(row.survey);
    const station = survey && this.#book.stations.get(stationKey(survey.id, row.station));
    const transect = station && this.#book.transects.get(transectKey(station.id, row.transect, row.swim));
    if (transect === undefined) return undefined;
    const known = this.#known.get(transect.id);
    if (known !== undefined) return known;
    const found = { transect, tallies: this.#book.talliesOf(transect.id), seen: new Set<string>() };
    this.#known.set(transect.id, found);
    return found;
  }
}

function missingTransect(row: TallyRow, place: Place, book: BookInHand): Problem {
  const survey = book.surveys.get(row.survey);
  if (survey === undefined) {
    return problemOf('unknown-survey', place, { value: row.survey, parameters: { survey: row.survey } });
  }
  if (!book.stations.has(stationKey(survey.id, row.station))) {
    return problemOf('unknown-station', { ...place, column: 'station' }, { value: row.station });
  }
  const value = row.swim === 1 ? row.transect : `${row.transect} (swim ${row.swim})`;
  return problemOf('unknown-transect', { ...place, column: 'transect' }, { value });
}

function placeOf(row: TallyRow, place: Place): Place {
  const { survey, station, transect, swim, species } = row;
  return { ...place, survey, station, transect, swim, species };
}

/**
 * The store as the rest of the house sees it. SQLite implements it now, PostgreSQL later;
 * both pass the contract suite in `test/store-contract.ts`.
 *
 * Every method is asynchronous because a shared database is. A write that has returned is on disk.
 */

import type { RecordKind, RecordOf } from './words.ts';

/** Who changed something, where and why: one per act (an import, a saved sheet, an answer). */
export interface Signature {
  readonly who: string;
  /** ISO instant in UTC, from the clock that was passed in. */
  readonly at: string;
  readonly device: string;
  readonly why: string;
}

/** One record as it should stand from now on; `after` null withdraws it (a revision, never a deletion). */
export type Change = {
  readonly [K in RecordKind]: {
    readonly kind: K;
    readonly recordId: string;
    readonly after: RecordOf<K> | null;
  };
}[RecordKind];

export interface Revision {
  /** The identity of its act and its place in it, from 1: `UUID/PLACE`, the same on every machine. */
  readonly id: string;
  readonly kind: RecordKind;
  readonly recordId: string;
  readonly before: RecordOf<RecordKind> | null;
  readonly after: RecordOf<RecordKind> | null;
  readonly signature: Signature;
}

export interface BookInfo {
  readonly bookId: string;
  readonly name: string;
  /** True for the invented demo book, which says so on everything it prints. */
  readonly invented: boolean;
  readonly createdAt: string;
}

export interface Store {
  info(): Promise<BookInfo>;
  /** All current records of a kind, in order of identity. */
  all<K extends RecordKind>(kind: K): Promise<readonly RecordOf<K>[]>;
  /**
   * The stations, transects and tallies of one survey, in order of identity.
   * `lengths: false` leaves the lengths on disk (every tally has none): densities do not need them.
   */
  surveyRecords(surveyId: string, options?: { readonly lengths: boolean }): Promise<SurveyRows>;
  /** For each survey identity, the species that have a tally in it, explicit zeros included: a written zero was looked for. */
  speciesSeen(): Promise<ReadonlyMap<string, ReadonlySet<string>>>;
  /**
   * Writes all changes and their revisions in one transaction, or nothing. The changes may come in any
   * order; one that leaves a record as it stands is no change and leaves no revision.
   * `newId` makes the identity of the act (UUIDv7), so that tests can fix it.
   */
  apply(changes: Iterable<Change>, signature: Signature, newId: () => string): Promise<void>;
  /**
   * Revisions in the order in which they were made, whatever their clocks said; of one record when its
   * identity is given, or of some kinds of record only.
   */
  revisions(recordId?: string, kinds?: readonly RecordKind[]): AsyncIterable<Revision>;
  /**
   * The book as it stood at a moment (ISO instant in UTC), made again from the revisions and only there to
   * be read. Clocks jump: the order of the acts decides, and an act whose clock disagrees with the others
   * counts as made just after the one before it. Close it before the book itself.
   */
  asOf(instant: string): Promise<Store>;
  /**
   * A digest of the current records, equal on every machine that holds the same records,
   * whatever the order in which they were written.
   */
  dataVersion(): Promise<string>;
  /** Throws the current tables away and makes them again from the revisions. */
  rebuild(): Promise<void>;
  close(): Promise<void>;
}

export interface SurveyRows {
  readonly stations: readonly RecordOf<'station'>[];
  readonly transects: readonly RecordOf<'transect'>[];
  readonly tallies: readonly RecordOf<'tally'>[];
}

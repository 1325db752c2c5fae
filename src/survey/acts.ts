/**
 * What a store does besides for those who save many small acts at once: several share one commit, each keeps its
 * own identity and signature, and one sheet is read without its whole survey.
 */

import type { Change, Signature, Store, SurveyRows } from './store.ts';

export interface Act {
  /** Made by whoever asked (UUID): the same act sent twice is written once. */
  readonly id: string;
  readonly signature: Signature;
  readonly changes: readonly Change[];
  /** Records that must not be in the book yet, so that no other sheet's record is taken by mistake. */
  readonly mustBeNew: ReadonlySet<string>;
}

export type ActOutcome =
  | { readonly state: 'written'; readonly dataVersion: string }
  /** The book was not any more as it stood when the act was made ready: nothing of it was written. */
  | { readonly state: 'moved' }
  | { readonly state: 'refused'; readonly error: unknown };

export interface SheetStore extends Store {
  /**
   * Writes acts made ready while the book stood at `dataVersion`. They share one commit where they can; when it
   * returns, what is called written is on disk. One that is refused keeps none of the others back.
   */
  applyTogether(acts: readonly Act[], dataVersion: string): Promise<readonly ActOutcome[]>;
  actWritten(id: string): Promise<boolean>;
  /** One station with its transects and tallies, lengths too; no station when it is not in the book. */
  stationRecords(stationId: string): Promise<SurveyRows>;
}

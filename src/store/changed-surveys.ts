/**
 * Which surveys are not any more as they were read, so that whoever keeps the others in memory may go on using them.
 *
 * The history says which records were changed, and the digest says whether the history accounts for everything that
 * is different: the old digest with every revision since put in and taken out must be the new one. Where it is not
 * (another file in the place of the book, tables made again or written by hand), nothing is called unchanged.
 */

import type { StatementSync } from 'node:sqlite';
import type { RecordKind } from '../survey/words.ts';
import type { BookDatabase } from './book-database.ts';
import { digestOf, digestText, toggleRecord } from './record-digest.ts';
import { readDigest } from './stored-digest.ts';

/** Where the book stands, as one connection sees it. */
export interface Standing {
  readonly lastSeq: number;
  readonly digest: string;
  /** Is another number whenever another connection has committed something. */
  readonly commits: number;
}

export function standingOf(database: BookDatabase): Standing {
  const { sqlite } = database;
  return {
    lastSeq: Number(sqlite.prepare('SELECT max(seq) AS last FROM revisions').get()?.last ?? 0),
    digest: digestText(readDigest(database)),
    commits: Number(sqlite.prepare('PRAGMA data_version').get()?.data_version),
  };
}

/** Reading more of the history than this costs more than reading the surveys again. */
const mostRevisions = 20_000;

/**
 * The surveys whose stations, transects or tallies have been touched since. Null when it cannot be told: then
 * every survey may have changed. Ask within one transaction with `standingOf` and whatever is read afterwards.
 */
export function surveysChangedSince(database: BookDatabase, since: Standing): ReadonlySet<string> | null {
  const now = standingOf(database);
  if (now.lastSeq === since.lastSeq) return isSame(now, since) ? new Set() : null;
  if (now.lastSeq < since.lastSeq || now.lastSeq - since.lastSeq > mostRevisions) return null;
  const versions = versionsSince(database, since.lastSeq);
  const digest = digestOf(since.digest);
  for (const { kind, text } of versions) toggleRecord(digest, kind, text);
  return digestText(digest) === now.digest ? surveysOf(database, versions) : null;
}

/** A commit without a revision is no act: tables made again, or a hand in the file. */
function isSame(now: Standing, since: Standing): boolean {
  return now.digest === since.digest && now.commits === since.commits;
}

/** A record as it stood before a revision, or as it stood after. */
interface RecordVersion {
  readonly kind: RecordKind;
  readonly id: string;
  readonly text: string;
}

function versionsSince({ sqlite }: BookDatabase, lastSeq: number): readonly RecordVersion[] {
  const rows = sqlite
    .prepare('SELECT kind, record_id, before_row, after_row FROM revisions WHERE seq > ? ORDER BY seq')
    .all(lastSeq);
  return rows.flatMap((row) =>
    [row.before_row, row.after_row]
      .filter((text) => typeof text === 'string')
      .map((text) => ({ kind: row.kind as RecordKind, id: String(row.record_id), text })),
  );
}

/** A record may have been moved, and what it belonged to withdrawn since: every version of both is followed. */
function surveysOf(database: BookDatabase, versions: readonly RecordVersion[]): ReadonlySet<string> {
  const { sqlite } = database;
  const stations = new Owners(sqlite.prepare('SELECT survey_id AS owner FROM stations WHERE id = ?'));
  const transects = new Owners(sqlite.prepare('SELECT station_id AS owner FROM transects WHERE id = ?'));
  const touched = { stations: new Set<string>(), transects: new Set<string>() };
  for (const { kind, id, text } of versions) {
    const row = JSON.parse(text) as Readonly<Record<string, string>>;
    if (kind === 'station') stations.add(id, row.survey_id!);
    if (kind === 'transect') transects.add(id, row.station_id!);
    if (kind === 'station') touched.stations.add(id);
    if (kind === 'transect') touched.transects.add(id);
    if (kind === 'tally') touched.transects.add(row.transect_id!);
  }
  for (const id of touched.transects) for (const station of transects.of(id)) touched.stations.add(station);
  return new Set([...touched.stations].flatMap((id) => [...stations.of(id)]));
}

/** What each record belongs to: as the revisions tell, and as it stands. */
class Owners {
  readonly #told = new Map<string, Set<string>>();
  readonly #standing: StatementSync;

  constructor(standing: StatementSync) {
    this.#standing = standing;
  }

  add(id: string, owner: string): void {
    const told = this.#told.get(id);
    if (told === undefined) this.#told.set(id, new Set([owner]));
    else told.add(owner);
  }

  of(id: string): ReadonlySet<string> {
    const owner = this.#standing.get(id)?.owner;
    if (typeof owner === 'string') this.add(id, owner);
    return this.#told.get(id) ?? nobody;
  }
}

const nobody: ReadonlySet<string> = new Set();

/** A sheet as it stood at an earlier revision: what two people who both changed it had begun with. */

import type { Revision } from '../../survey/store.ts';
import type { Station, Tally, Transect } from '../../survey/words.ts';
import { revisionOf } from './read-sheet.ts';
import type { Sheet } from './sheet-schemas.ts';
import type { SheetTools } from './sheet-tools.ts';

export interface PastSheet {
  readonly stationId: string;
  readonly revision: string;
  /** Every record that stood on one of the sheets in hand. */
  readonly recordIds: ReadonlySet<string>;
}

/**
 * Plays the history of those records forward until the sheet is the one that is looked for. Null where it never
 * was, as when a record was on the sheet then and is on neither sheet now.
 */
export async function pastSheet(
  { stationId, revision, recordIds }: PastSheet,
  { store, digest }: Pick<SheetTools, 'store' | 'digest'>,
): Promise<Sheet | null> {
  const acts = new Map<string, Revision[]>();
  for (const recordId of recordIds) {
    for await (const one of store.revisions(recordId)) {
      const act = `${one.signature.at} ${one.id.split('/')[0]!}`;
      acts.set(act, [...(acts.get(act) ?? []), one]);
    }
  }
  const standing = new Map<string, Revision>();
  for (const act of [...acts.keys()].sort()) {
    for (const one of acts.get(act)!) standing.set(one.recordId, one);
    const sheet = sheetFrom(stationId, [...standing.values()]);
    if (sheet !== null && revisionOf(sheet, digest) === revision) return sheet;
  }
  return null;
}

function sheetFrom(stationId: string, revisions: readonly Revision[]): Sheet | null {
  const recordsOf = <Kind>(kind: Revision['kind']) =>
    revisions.filter((one) => one.kind === kind && one.after !== null).map((one) => one.after as Kind);
  const station = recordsOf<Station>('station').find((one) => one.id === stationId);
  if (station === undefined) return null;
  const transects = recordsOf<Transect>('transect').filter((one) => one.stationId === stationId);
  const belts = new Set(transects.map((one) => one.id));
  const tallies = recordsOf<Tally>('tally').filter((one) => belts.has(one.transectId));
  return { station, transects, tallies };
}

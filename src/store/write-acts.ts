/** Several acts in one commit: waiting for the disk is most of what a small act costs. */

import type { Act, ActOutcome } from '../survey/acts.ts';
import { Failure } from '../survey/failure.ts';
import { type BookDatabase, inTransaction } from './book-database.ts';
import { dataVersionOf } from './book-summary.ts';
import { explainMissingReference } from './explain-reference.ts';
import { writeAct } from './write-changes.ts';

export function writeActs(database: BookDatabase, acts: readonly Act[], standsAt: string): ActOutcome[] {
  if (acts.length === 0) return [];
  try {
    return inOneCommit(database, acts, standsAt);
  } catch (error) {
    // Whoever waits for another program's turn waits once, not once for each act.
    if (isTaken(error)) return acts.map(() => ({ state: 'refused', error }));
    if (acts.length === 1) return [{ state: 'refused', error }];
    return oneByOne(database, acts, standsAt);
  }
}

function inOneCommit(database: BookDatabase, acts: readonly Act[], standsAt: string): ActOutcome[] {
  return inTransaction(
    database,
    () => {
      if (dataVersionOf(database) !== standsAt) return acts.map(() => ({ state: 'moved' }) as const);
      const tables = new Map();
      for (const { changes, signature, id, mustBeNew } of acts) {
        writeAct(database, { changes, signature, newId: () => id, mustBeNew, tables });
      }
      const dataVersion = dataVersionOf(database);
      return acts.map(() => ({ state: 'written', dataVersion }) as const);
    },
    (error) => explainMissingReference(database, error),
  );
}

function isTaken(error: unknown): boolean {
  return error instanceof Failure && error.code === 'book-locked';
}

/** One of them cannot be written: each has its own commit, so that the others are. */
function oneByOne(database: BookDatabase, acts: readonly Act[], standsAt: string): ActOutcome[] {
  let version = standsAt;
  return acts.map((act) => {
    const [outcome] = writeActs(database, [act], version);
    if (outcome!.state === 'written') version = outcome!.dataVersion;
    return outcome!;
  });
}

export function isActWritten({ sqlite }: BookDatabase, id: string): boolean {
  return sqlite.prepare('SELECT 1 FROM acts WHERE id = ?').get(id) !== undefined;
}

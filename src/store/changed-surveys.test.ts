import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { anyActs, identityFrom, sign, smallSurvey } from '../../test/store-records.ts';
import type { Change } from '../survey/store.ts';
import type { RecordKind, RecordOf } from '../survey/words.ts';
import { createBook, openBook, openMemoryBook } from './book-folder.ts';
import type { SqliteStore } from './sqlite-store.ts';

const ids = identityFrom(61);
const newBook = () => ({ name: 'b', invented: true, at: '2026-01-01T00:00:00.000Z', bookId: ids() });
const first = smallSurvey(1);
const second = smallSurvey(2, first);

function put<K extends RecordKind>(kind: K, after: RecordOf<K>): Change {
  return { kind, recordId: after.id, after } as unknown as Change;
}

let folder: string;
let reader: SqliteStore;
let writer: SqliteStore;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'changed-'));
  writer = await createBook(folder, newBook());
  await writer.apply([...first.changes, ...second.changes], sign('import'), ids);
  reader = await openBook(folder);
});
afterEach(async () => {
  await Promise.all([reader.close(), writer.close()]);
  rmSync(folder, { recursive: true });
});

/** What the reader is told of that another program did. */
async function changedBy(act: () => Promise<void> | void): Promise<readonly string[] | null> {
  const before = await reader.standing();
  await act();
  const changed = await reader.surveysChangedSince(before);
  return changed === null ? null : [...changed];
}
const apply = (...changes: Change[]) => writer.apply(changes, sign('evening'), ids);
const byHand = (sql: string) => {
  const database = new DatabaseSync(join(folder, 'book.sqlite'));
  database.exec(sql);
  database.close();
};

describe('the surveys that have changed', () => {
  const [tally, transect, station] = [
    first.of('tally')[0]!,
    first.of('transect')[0]!,
    first.of('station')[0]!,
  ];

  it('are none while nothing is written, and none for what belongs to no survey', async () => {
    expect(await changedBy(() => {})).toEqual([]);
    expect(await changedBy(() => apply(put('stratum', { ...first.of('stratum')[0]!, areaHa: 9 })))).toEqual(
      [],
    );
  });

  it('are those of the tally, the belt or the station that was corrected', async () => {
    const corrected = [
      put('tally', { ...tally, count: tally.count + 1 }),
      put('transect', { ...transect, lengthM: 12 }),
      put('station', { ...station, depthM: 4 }),
    ];
    for (const one of corrected) expect(await changedBy(() => apply(one))).toEqual([first.surveyId]);
  });

  it('are both when a station is moved from one to the other, with a belt that was moved before', async () => {
    const moved = { ...station, surveyId: second.surveyId, code: 'moved' };
    const both = await changedBy(async () => {
      await apply(put('transect', { ...transect, stationId: first.of('station')[1]!.id, code: 'moved' }));
      await apply(put('station', moved));
    });
    expect(both?.toSorted()).toEqual([first.surveyId, second.surveyId].toSorted());
  });

  it('are known of a belt that was withdrawn with its station, its counts and its photo', async () => {
    const gone = (['photo', 'tally', 'transect', 'station'] as const).flatMap((kind) => [...second.of(kind)]);
    const kinds = new Map(second.changes.map(({ kind, recordId }) => [recordId, kind]));
    const withdrawn = gone.map(
      ({ id }) => ({ kind: kinds.get(id)!, recordId: id, after: null }) as unknown as Change,
    );
    expect(await changedBy(() => apply(...withdrawn))).toEqual([second.surveyId]);
  });

  it('are known of a belt that was withdrawn alone, and both of one that was moved between them', async () => {
    const [left, moved] = second.of('transect').slice(-2);
    const counts = second.of('tally').filter(({ transectId }) => transectId === left!.id);
    const withdrawn = counts.map(({ id: recordId }) => ({ kind: 'tally', recordId, after: null }) as const);
    const belt = { kind: 'transect', recordId: left!.id, after: null } as const;
    expect(await changedBy(() => apply(...withdrawn, belt))).toEqual([second.surveyId]);
    const away = put('transect', { ...moved!, stationId: station.id, code: 'moved' });
    expect((await changedBy(() => apply(away)))?.toSorted()).toEqual(
      [first.surveyId, second.surveyId].toSorted(),
    );
  });

  it('cannot be told when tables were made again, or written by hand', async () => {
    expect(await changedBy(() => writer.rebuild())).toBeNull();
    expect(await changedBy(() => byHand('UPDATE tallies SET "count" = 77'))).toBeNull();
    // The act beside it is in the history; the digest says that the history is not all.
    const beside = await changedBy(async () => {
      byHand(`UPDATE data_digest SET digest = '${'0'.repeat(32)}'`);
      await apply(put('station', { ...station, depthM: 8 }));
    });
    expect(beside).toBeNull();
  });

  // An invariance: whatever is done to the book, a survey that is not named reads as it was read before.
  it('leave none out, whatever acts come in whatever order', async () => {
    await fc.assert(
      fc.asyncProperty(anyActs, fc.nat(7), async (acts, at) => {
        const book = await openMemoryBook(newBook());
        const surveys = [first.surveyId, second.surveyId, ...surveysIn(acts)];
        await book.apply([...first.changes, ...second.changes], sign('import'), ids);
        const write = async (some: readonly Change[][]) => {
          for (const act of some) await book.apply(act, sign('random'), ids).catch(() => {});
        };
        const read = async () => Promise.all(surveys.map((id) => book.surveyRecords(id)));
        await write(acts.slice(0, at));
        const [before, standing] = [await read(), await book.standing()];
        await write(acts.slice(at));
        const [after, changed] = [await read(), (await book.surveysChangedSince(standing))!];
        surveys.forEach((id, i) => {
          if (!changed.has(id)) expect(after[i]).toEqual(before[i]);
        });
        await book.close();
      }),
      { numRuns: 60, seed: 20261125 },
    );
  });
});

function surveysIn(acts: readonly Change[][]): readonly string[] {
  return [...new Set(acts.flat().flatMap(({ kind, recordId }) => (kind === 'survey' ? [recordId] : [])))];
}

describe('a reading of one moment', () => {
  it('does not see what another program writes meanwhile, and the next one does', async () => {
    const tally = second.of('tally')[0]!;
    const count = async () =>
      (await reader.surveyRecords(second.surveyId)).tallies.find(({ id }) => id === tally.id)!.count;
    const seen = await reader.atOneMoment(async () => {
      const before = [await count(), await reader.dataVersion()];
      await apply(put('tally', { ...tally, count: 500 }));
      return [before, [await count(), await reader.dataVersion()]];
    });
    expect(seen[1]).toEqual(seen[0]);
    expect([await count(), await reader.dataVersion()]).toEqual([500, await writer.dataVersion()]);
  });

  it('ends when the work in it fails', async () => {
    const failing = reader.atOneMoment(async () => {
      throw new Error('a mistake of ours');
    });
    await expect(failing).rejects.toThrow('a mistake of ours');
    expect(await reader.atOneMoment(async () => 'again')).toBe('again');
  });
});

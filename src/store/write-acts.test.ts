import { beforeEach, describe, expect, it } from 'vitest';
import { identityFrom, record, sign, smallSurvey } from '../../test/store-records.ts';
import type { Act } from '../survey/acts.ts';
import { openMemoryBook } from './book-folder.ts';
import type { SqliteStore } from './sqlite-store.ts';

let store: SqliteStore;
let newId: () => string;

beforeEach(async () => {
  newId = identityFrom(41);
  store = await openMemoryBook({
    name: 'b',
    invented: true,
    at: '2026-01-01T00:00:00.000Z',
    bookId: newId(),
  });
});

function strata(...names: string[]): Act {
  const changes = names.map((name) => {
    const after = record('stratum', { id: newId(), name });
    return { kind: 'stratum', recordId: after.id, after } as const;
  });
  const mustBeNew = new Set(changes.map(({ recordId }) => recordId));
  return { id: newId(), signature: sign('together'), changes, mustBeNew };
}

const names = async () => (await store.all('stratum')).map(({ name }) => name).sort();

describe('acts written together', () => {
  it('each keep their own identity and signature, and the book can be rebuilt from them', async () => {
    const acts = [strata('a', 'b'), strata('c')];
    const outcomes = await store.applyTogether(acts, await store.dataVersion());
    expect(outcomes.map(({ state }) => state)).toEqual(['written', 'written']);
    expect(outcomes[1]).toMatchObject({ dataVersion: await store.dataVersion() });
    const ids: string[] = [];
    for await (const { id } of store.revisions()) ids.push(id);
    expect(ids).toEqual([`${acts[0]!.id}/1`, `${acts[0]!.id}/2`, `${acts[1]!.id}/1`]);
    expect([await store.actWritten(acts[0]!.id), await store.actWritten(newId())]).toEqual([true, false]);
    const before = await store.dump();
    await store.rebuild();
    expect(await store.dump()).toBe(before);
  });

  it('are not written when the book has moved since they were made ready', async () => {
    const version = await store.dataVersion();
    const first = await store.applyTogether([strata('a')], version);
    const second = await store.applyTogether([strata('b')], version);
    expect([first[0]!.state, second[0]!.state]).toEqual(['written', 'moved']);
    expect(await names()).toEqual(['a']);
  });

  it('are written but for the one that cannot be: a name that is taken, a reference to nothing, a record of another sheet', async () => {
    const station = record('station', { id: newId(), surveyId: newId(), stratumId: newId(), code: 'S1' });
    const lost: Act = {
      ...strata(),
      changes: [{ kind: 'station', recordId: station.id, after: station }],
    };
    const first = strata('a');
    const stolen = {
      ...strata(),
      changes: first.changes.map((change) => ({
        ...change,
        after: { ...change.after!, name: 'z' },
      })) as Act['changes'],
      mustBeNew: first.mustBeNew,
    };
    const acts = [first, strata('a'), lost, stolen, strata('b')];
    const outcomes = await store.applyTogether(acts, await store.dataVersion());
    expect(outcomes.map(({ state }) => state)).toEqual([
      'written',
      'refused',
      'refused',
      'refused',
      'written',
    ]);
    expect(await names()).toEqual(['a', 'b']);
  });
});

describe('one station', () => {
  it('is read as it stands in its whole survey, lengths too', async () => {
    const { changes, surveyId } = smallSurvey();
    await store.apply(changes, sign('survey'), newId);
    const whole = await store.surveyRecords(surveyId);
    for (const station of whole.stations) {
      const transects = whole.transects.filter((one) => one.stationId === station.id);
      const belts = new Set(transects.map(({ id }) => id));
      const tallies = whole.tallies.filter((one) => belts.has(one.transectId));
      expect(await store.stationRecords(station.id)).toEqual({ stations: [station], transects, tallies });
    }
    expect((await store.stationRecords(newId())).stations).toEqual([]);
  });
});

/**
 * What every store must do, whatever database is under it. A store is handed in by a factory;
 * `src/store/sqlite-store.test.ts` runs the suite on SQLite in a folder and in memory.
 */

import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Revision, Store } from '../src/survey/store.ts';
import {
  type RecordKind,
  type RecordOf,
  recordKinds,
  type Station,
  type Tally,
} from '../src/survey/words.ts';
import { anyActs, identityFrom, record, sign, smallSurvey } from './store-records.ts';

export interface StoreUnderTest {
  readonly store: Store;
  /** Every column of every current row in a fixed order, read past all mappings. */
  dump(): Promise<string>;
  /** Closes the store and opens it again; null where a closed store is gone. */
  readonly reopen: (() => Promise<StoreUnderTest>) | null;
  discard(): Promise<void>;
}

export function storeContract(name: string, makeStore: () => Promise<StoreUnderTest>): void {
  describe(name, () => {
    let book: StoreUnderTest;
    let store: Store;
    beforeEach(async () => {
      book = await makeStore();
      store = book.store;
    });
    afterEach(() => book.discard());

    const ids = identityFrom(1);
    const put = (changes: Iterable<Change>, why = 'import') => store.apply(changes, sign(why), ids);

    test('every kind of record comes back as it was written', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      for (const { kind, after } of survey.changes) expect(await store.all(kind)).toContainEqual(after);
    });

    test('records of a kind come in order of identity, whatever the order of writing', async () => {
      const { changes } = smallSurvey();
      await put(changes.toReversed());
      const tallies = await store.all('tally');
      expect(tallies.length).toBeGreaterThan(1);
      expect(tallies.map((tally) => tally.id)).toEqual(tallies.map((tally) => tally.id).toSorted());
    });

    test('a survey gives its own stations, transects and tallies and no other', async () => {
      const first = smallSurvey(1);
      const second = smallSurvey(2, first);
      await put([...first.changes, ...second.changes]);
      const rows = await store.surveyRecords(second.surveyId);
      expect(rows.stations).toEqual(second.of('station'));
      expect(rows.transects).toEqual(second.of('transect'));
      expect(rows.tallies).toEqual(second.of('tally'));
    });

    test('read without lengths, tallies keep their counts and carry no length', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const { tallies } = await store.surveyRecords(survey.surveyId, { lengths: false });
      expect(tallies).toEqual(survey.of('tally').map((tally) => ({ ...tally, lengths: [] })));
      expect(survey.of('tally').some((tally) => tally.lengths.length > 0)).toBe(true);
    });

    test('a species with a written zero has been seen to be looked for', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const zero = survey.of('tally').find((tally) => tally.count === 0)!;
      expect((await store.speciesSeen()).get(survey.surveyId)).toContain(zero.speciesId);
    });

    test('each change leaves a revision with before, after and who did it why', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const tally = survey.of('tally')[0]!;
      const recounted: Tally = { ...tally, count: tally.count + 1 };
      await put([{ kind: 'tally', recordId: tally.id, after: recounted }], 'second look at the slate');
      await put([{ kind: 'tally', recordId: tally.id, after: null }], 'wrong transect');
      const history = await collect(store.revisions(tally.id));
      expect(history.map(({ before, after }) => ({ before, after }))).toEqual([
        { before: null, after: tally },
        { before: tally, after: recounted },
        { before: recounted, after: null },
      ]);
      expect(history.map((revision) => revision.signature)).toEqual([
        sign('import'),
        sign('second look at the slate'),
        sign('wrong transect'),
      ]);
      expect(new Set(history.map((revision) => revision.id)).size).toBe(3);
    });

    test('a withdrawn record leaves the book, its history stays, and it may come back', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const tally = survey.of('tally')[0]!;
      await put([{ kind: 'tally', recordId: tally.id, after: null }]);
      expect(await store.all('tally')).not.toContainEqual(tally);
      await put([{ kind: 'tally', recordId: tally.id, after: tally }]);
      expect(await store.all('tally')).toContainEqual(tally);
      expect(await collect(store.revisions(tally.id))).toHaveLength(3);
    });

    test('writing what stands already changes nothing and leaves no revision', async () => {
      const { changes } = smallSurvey();
      await put(changes);
      const history = await collect(store.revisions());
      await put(changes);
      await put([{ kind: 'tally', recordId: ids(), after: null }]);
      expect(await collect(store.revisions())).toEqual(history);
      expect(history).toHaveLength(changes.length);
    });

    test('revisions come in the order in which they were made, past a page of a thousand', async () => {
      const strata = Array.from({ length: 2500 }, (_, i) => record('stratum', { name: `stratum ${i}` }));
      await put(strata.map((after): Change => ({ kind: 'stratum', recordId: after.id, after })));
      const names = (await collect(store.revisions())).map(
        ({ after }) => after !== null && 'name' in after && after.name,
      );
      expect(names).toEqual(strata.map((stratum) => stratum.name));
    });

    test('a record written twice in one act stands as it was last written, with both revisions', async () => {
      const first = record('stratum', { name: 'Lagoon' });
      const second = { ...first, areaHa: 3.5 };
      await put([change('stratum', first), change('stratum', second)]);
      expect(await store.all('stratum')).toEqual([second]);
      const history = await collect(store.revisions(first.id));
      expect(history.map(({ before, after }) => ({ before, after }))).toEqual([
        { before: null, after: first },
        { before: first, after: second },
      ]);
    });

    describe('all or nothing', () => {
      const cases: Readonly<Record<string, (survey: ReturnType<typeof smallSurvey>) => Change>> = {
        'breaks its schema': ({ of }) => change('tally', { ...of('tally')[0]!, count: -1 }),
        'repeats a name': () => change('stratum', record('stratum', { name: 'North reef' })),
        'names a species that is not there': ({ of }) =>
          change('tally', { ...of('tally')[0]!, id: ids(), speciesId: ids() }),
      };
      for (const [what, bad] of Object.entries(cases)) {
        test(`a change in the middle that ${what} writes nothing`, async () => {
          const survey = smallSurvey();
          await put(survey.changes);
          const before = await everything();
          const good = (name: string) => change('stratum', record('stratum', { name }));
          await expect(put([good('before'), bad(survey), good('after')])).rejects.toMatchObject({
            name: 'Failure',
          });
          expect(await everything()).toEqual(before);
          await put([good('before')]);
          expect(await store.all('stratum')).toHaveLength(survey.of('stratum').length + 1);
        });
      }

      test('a source of changes that fails half-way writes nothing', async () => {
        const { changes } = smallSurvey();
        function* broken() {
          yield* changes;
          throw new Error('the file ended');
        }
        const before = await everything();
        await expect(put(broken())).rejects.toThrow('the file ended');
        expect(await everything()).toEqual(before);
      });

      const everything = async () => ({
        dump: await book.dump(),
        version: await store.dataVersion(),
        revisions: await collect(store.revisions()),
      });
    });

    describe('one thing, one record', () => {
      const twins: Readonly<Record<string, Change['kind']>> = {
        'two stations of one survey with one code': 'station',
        'two rows for one swim of a transect': 'transect',
        'two tallies of one species on one transect': 'tally',
        'two strata of one name': 'stratum',
        'two species of one name': 'species',
        'two surveys of one name': 'survey',
        'two protocols of one name': 'protocol',
        'two animals weighed in one place': 'weight',
        'one target twice': 'target',
        'two limits of one authority': 'sizeLimit',
        'two mappings of one name': 'mapping',
      };
      for (const [what, kind] of Object.entries(twins)) {
        test(`${what} are refused`, async () => {
          const survey = smallSurvey();
          await put(survey.changes);
          const twin = { ...survey.of(kind)[0]!, id: ids() };
          await expect(put([change(kind, twin)])).rejects.toMatchObject({
            code: 'already-there',
            parameters: { kind },
          });
        });
      }

      test('the same station code in two surveys is no twin', async () => {
        const first = smallSurvey(1);
        const second = smallSurvey(2, first);
        await put([...first.changes, ...second.changes]);
        const codes = (stations: readonly Station[]) => stations.map((station) => station.code);
        expect(codes(second.of('station'))).toEqual(codes(first.of('station')));
      });

      test('two stations swap their codes in one act', async () => {
        const survey = smallSurvey();
        await put(survey.changes);
        const [a, b] = survey.of('station') as [Station, Station];
        await put([change('station', { ...a, code: b.code }), change('station', { ...b, code: a.code })]);
        const { stations } = await store.surveyRecords(survey.surveyId);
        expect(stations.map((station) => station.code)).toEqual([b.code, a.code]);
        await expectRebuildEqual();
      });

      test('a record that waits for a name is corrected and withdrawn in the same act', async () => {
        const holder = record('stratum', { name: 'Lagoon' });
        const [corrected, withdrawn] = [
          record('stratum', { name: 'Lagoon' }),
          record('stratum', { name: 'Lagoon' }),
        ];
        await put([change('stratum', holder)]);
        await put([
          change('stratum', corrected),
          change('stratum', withdrawn),
          change('stratum', { ...corrected, areaHa: 3.5 }),
          { kind: 'stratum', recordId: withdrawn.id, after: null },
          { kind: 'stratum', recordId: holder.id, after: null },
        ]);
        expect(await store.all('stratum')).toEqual([{ ...corrected, areaHa: 3.5 }]);
        await expectRebuildEqual();
      });

      test('a new record takes the name of one that is withdrawn later in the same act', async () => {
        const stratum = record('stratum', { name: 'Lagoon' });
        await put([change('stratum', stratum)]);
        const heir = record('stratum', { name: 'Lagoon' });
        await put([change('stratum', heir), { kind: 'stratum', recordId: stratum.id, after: null }]);
        expect(await store.all('stratum')).toEqual([heir]);
        await expectRebuildEqual();
      });
    });

    test('a station with transects is not withdrawn from under them', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const station = survey.of('station')[0]!;
      await expect(put([{ kind: 'station', recordId: station.id, after: null }])).rejects.toMatchObject({
        code: 'refers-to-nothing',
        parameters: { kind: 'transect', missing: 'station' },
      });
    });

    describe('the data version', () => {
      test('is twelve hex digits', async () => {
        await put(smallSurvey().changes);
        expect(await store.dataVersion()).toMatch(/^[0-9a-f]{12}$/);
      });

      test('is the same on another machine with the same records, whatever the order of writing', async () => {
        const { changes } = smallSurvey();
        const other = await makeStore();
        await put(changes);
        for (const one of changes.filter((c) => c.kind === 'stratum'))
          await other.store.apply([one], sign('a'), ids);
        await other.store.apply(changes.toReversed(), sign('b'), ids);
        expect(await other.store.dataVersion()).toBe(await store.dataVersion());
        await other.discard();
      });

      test('changes with one animal more and returns when the correction is taken back', async () => {
        const survey = smallSurvey();
        await put(survey.changes);
        const version = await store.dataVersion();
        const tally = survey.of('tally')[0]!;
        await put([change('tally', { ...tally, count: tally.count + 1 })]);
        expect(await store.dataVersion()).not.toBe(version);
        await put([change('tally', tally)]);
        expect(await store.dataVersion()).toBe(version);
      });
    });

    test('rebuilt from the revisions after any acts, the tables are equal to the byte', async () => {
      await fc.assert(
        fc.asyncProperty(anyActs, async (acts) => {
          const other = await makeStore();
          // Some acts are refused (a twin, an orphan): they must leave no trace either.
          for (const act of acts) await other.store.apply(act, sign('random'), ids).catch(expectFailure);
          await expectRebuildEqual(other);
          await other.discard();
        }),
        { numRuns: 40, seed: 20250101 },
      );
    });

    // An invariance: what was read just after an act is what a view of that moment gives later.
    test('the book as it stood after any act is the book that was read then', async () => {
      await fc.assert(
        fc.asyncProperty(anyActs, async (acts) => {
          const other = await makeStore();
          const states: { at: string; state: unknown }[] = [];
          for (const [day, act] of acts.entries()) {
            const at = `2025-03-${String(day + 1).padStart(2, '0')}T18:00:00.000Z`;
            await other.store.apply(act, { ...sign('random'), at }, ids).catch(expectFailure);
            states.push({ at, state: await stateOf(other.store) });
          }
          for (const { at, state } of states) {
            const past = await other.store.asOf(at);
            expect(await stateOf(past)).toEqual(state);
            await past.close();
          }
          await other.discard();
        }),
        { numRuns: 15, seed: 20250102 },
      );
    });

    test('the past can be read and never changed', async () => {
      const survey = smallSurvey();
      await put(survey.changes);
      const past = await store.asOf('2025-03-01T18:30:00.000Z');
      expect(await past.info()).toEqual(await store.info());
      const late = smallSurvey(2, survey).changes;
      await expect(past.apply(late, sign('late'), ids)).rejects.toMatchObject({ code: 'past-stays' });
      await expect(past.rebuild()).rejects.toMatchObject({ code: 'past-stays' });
      await past.close();
      await expect(store.asOf('2025-03-01T18:29:59.000Z')).rejects.toMatchObject({ code: 'nothing-yet' });
    });

    test('some kinds of the history alone come in the order of the whole', async () => {
      await put(smallSurvey().changes);
      const all = await collect(store.revisions());
      const some = await collect(store.revisions(undefined, ['station', 'tally']));
      expect(some.length).toBeGreaterThan(2);
      expect(some).toEqual(all.filter(({ kind }) => kind === 'station' || kind === 'tally'));
    });

    async function stateOf(which: Store): Promise<unknown> {
      const records = [];
      for (const kind of recordKinds) records.push(await which.all(kind));
      return [records, await which.dataVersion(), await collect(which.revisions())];
    }

    test('reopened after closing, everything is there', async (context) => {
      if (book.reopen === null) return context.skip();
      await put(smallSurvey().changes);
      const before = [
        await store.info(),
        await book.dump(),
        await store.dataVersion(),
        await collect(store.revisions()),
      ];
      book = await book.reopen();
      store = book.store;
      const after = [
        await store.info(),
        await book.dump(),
        await store.dataVersion(),
        await collect(store.revisions()),
      ];
      expect(after).toEqual(before);
    });

    async function expectRebuildEqual(which: StoreUnderTest = book): Promise<void> {
      const dump = await which.dump();
      const version = await which.store.dataVersion();
      await which.store.rebuild();
      expect(await which.dump()).toBe(dump);
      expect(await which.store.dataVersion()).toBe(version);
    }
  });
}

function change<K extends RecordKind>(kind: K, after: RecordOf<K>): Change {
  return { kind, recordId: after.id, after } as unknown as Change;
}

function expectFailure(error: unknown): void {
  expect(error).toMatchObject({ name: 'Failure' });
}

async function collect(revisions: AsyncIterable<Revision>): Promise<Revision[]> {
  const collected: Revision[] = [];
  for await (const revision of revisions) collected.push(revision);
  return collected;
}

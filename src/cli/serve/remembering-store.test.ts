import { describe, expect, it } from 'vitest';
import { testServer } from '../../../test/server-fixture.ts';
import { rememberingStore } from './remembering-store.ts';

describe('a store that remembers', () => {
  it('reads the counts of a survey once while the book stands, and again when it has changed', async () => {
    const server = await testServer();
    let reads = 0;
    const store = rememberingStore({
      ...server.store,
      surveyRecords: (...asked) => {
        reads += 1;
        return server.store.surveyRecords(...asked);
      },
    });
    const stations = async () =>
      (await store.surveyRecords(server.survey.id, { lengths: false })).stations.length;
    expect([await stations(), await stations(), reads]).toEqual([0, 0, 1]);
    await server.save(server.newSheet('S1'), null);
    expect([await stations(), await stations(), reads]).toEqual([1, 1, 2]);
  });

  it('never gives counts without their lengths to who asks for lengths', async () => {
    const server = await testServer();
    await server.save(server.newSheet('S1'), null);
    const store = rememberingStore(server.store);
    await store.surveyRecords(server.survey.id, { lengths: false });
    const { tallies } = await store.surveyRecords(server.survey.id);
    expect(tallies[0]!.lengths).toHaveLength(1);
  });
});

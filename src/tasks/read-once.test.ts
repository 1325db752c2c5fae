import { describe, expect, it } from 'vitest';
import { testServer } from '../../test/server-fixture.ts';
import { readOnce } from './read-once.ts';
import { defaultReportRequest, reportInput } from './report.ts';

async function bookRead() {
  const server = await testServer();
  await server.save(server.newSheet('S1'), null);
  const reads: string[] = [];
  const store: typeof server.store = {
    ...server.store,
    surveyRecords: (surveyId, options = { lengths: true }) => {
      reads.push(options.lengths ? 'with lengths' : 'counts');
      return server.store.surveyRecords(surveyId, options);
    },
    speciesSeen: () => {
      reads.push('species seen');
      return server.store.speciesSeen();
    },
  };
  return { server, store, reads, surveyId: server.survey.id };
}

describe('a book read once', () => {
  it('gives every part of the work what the book would give it', async () => {
    const { server, store, surveyId } = await bookRead();
    const once = readOnce(store);
    for (const lengths of [true, false, true, false]) {
      expect(await once.surveyRecords(surveyId, { lengths })).toEqual(
        await server.store.surveyRecords(surveyId, { lengths }),
      );
    }
    expect(await once.all('species')).toEqual(await server.store.all('species'));
    expect(await once.all('station')).toEqual(await server.store.all('station'));
    expect(await once.speciesSeen()).toEqual(await server.store.speciesSeen());
  });

  it('reads counts alone for who asks for them first, and never again once the lengths are read', async () => {
    const { store, reads, surveyId } = await bookRead();
    const once = readOnce(store);
    await once.surveyRecords(surveyId, { lengths: false });
    await once.surveyRecords(surveyId);
    await once.surveyRecords(surveyId, { lengths: false });
    expect(reads.splice(0)).toEqual(['counts', 'with lengths']);
    const other = readOnce(store);
    await Promise.all([other.surveyRecords(surveyId), other.surveyRecords(surveyId, { lengths: false })]);
    expect(reads).toEqual(['with lengths']);
  });

  it('is read once for a whole report', async () => {
    const { store, reads } = await bookRead();
    const advice = { rates: [{ rate: 0.05, source: 'plan 2026' }], limitReference: null, risk: 0.1 };
    const made = { programVersion: '1', generatedOn: '2026-11-25' };
    const input = await reportInput(store, { ...defaultReportRequest, ...made, advice });
    expect(input.advice?.status.length).toBeGreaterThan(0);
    expect(reads).toEqual(['species seen', 'with lengths']);
  });
});

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { identityFrom, record, sign } from '../../../test/store-records.ts';
import { defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import { createBook, openBook } from '../../store/book-folder.ts';
import type { SqliteStore } from '../../store/sqlite-store.ts';
import type { Change, Store } from '../../survey/store.ts';
import type { RecordKind, RecordOf } from '../../survey/words.ts';
import { checkSurveys } from '../../tasks/check-survey.ts';
import { estimateDensity } from '../../tasks/estimate-density.ts';
import { estimateSizes } from '../../tasks/estimate-sizes.ts';
import { explain } from '../../tasks/explain.ts';
import { stationList } from '../../tasks/sheets/station-list.ts';
import { rememberingStore } from './remembering-store.ts';

const ids = identityFrom(71);

function put<K extends RecordKind>(kind: K, after: RecordOf<K>): Change {
  return { kind, recordId: after.id, after } as unknown as Change;
}

/** Three surveys of four stations each under one protocol; two species, one of them declared nowhere. */
const protocol = record('protocol', { id: ids(), name: 'belts', lengthM: 40, widthM: 2 });
const strata = ['lagoon', 'pass'].map((name) => record('stratum', { id: ids(), name, areaHa: 50 }));
const species = ['Species A', 'Species B'].map((name) => record('species', { id: ids(), name }));
const surveys = [2024, 2025, 2026].map((year) =>
  record('survey', { id: ids(), name: `Survey ${year}`, protocolId: protocol.id, starts: `${year}-03-01` }),
);
const stations = surveys.flatMap(({ id: surveyId }) =>
  [0, 1, 2, 3, 4, 5].map((n) =>
    record('station', {
      ...{ id: ids(), surveyId, stratumId: strata[n % 2]!.id, code: `S${n}`, selection: 'random' as const },
    }),
  ),
);
const belts = stations.map(({ id: stationId }) =>
  record('transect', { id: ids(), stationId, code: '1', noneSeen: true }),
);
const tallies = belts
  .filter((_, i) => i % 3 !== 2)
  .map(({ id: transectId }, i) => {
    const lengths = [{ lengthMm: 150 + 10 * i, n: 1, measure: null, photo: null }];
    return record('tally', {
      id: ids(),
      transectId,
      speciesId: species[0]!.id,
      count: 1 + ((7 * i) % 11),
      lengths,
    });
  });
const book: readonly Change[] = [
  put('protocol', protocol),
  ...strata.map((one) => put('stratum', one)),
  ...species.map((one) => put('species', one)),
  ...surveys.map((one) => put('survey', one)),
  ...stations.map((one) => put('station', one)),
  ...belts.map((one) => put('transect', one)),
  ...tallies.map((one) => put('tally', one)),
];

let folder: string;
let here: SqliteStore;
/** The main thread, another program, an import: whoever writes while a server reads. */
let elsewhere: SqliteStore;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'remembering-'));
  elsewhere = await createBook(folder, {
    name: 'b',
    invented: false,
    at: '2026-01-01T00:00:00.000Z',
    bookId: ids(),
  });
  await elsewhere.apply(book, sign('import'), ids);
  here = await openBook(folder);
});
afterEach(async () => {
  await Promise.all([here.close(), elsewhere.close()]);
  rmSync(folder, { recursive: true });
});

const write = (...changes: Change[]) => elsewhere.apply(changes, sign('evening'), ids);

/** Everything a room shows, of every survey. */
async function rooms(store: Store) {
  const asked = { survey: null, species: null } as const;
  const found: unknown[] = [];
  for (const by of ['survey', 'stratum'] as const)
    found.push(await estimateDensity(store, { ...asked, settings: { ...defaultDensitySettings, by } }));
  found.push(
    await estimateSizes(store, { ...asked, by: 'survey', limitMm: null, classMm: 20, confidence: 0.95 }),
  );
  found.push(await checkSurveys(store, { survey: null, today: '2026-11-25' }));
  const scope = { by: 'survey', name: null } as const;
  found.push(
    await explain(store, {
      survey: null,
      species: 'Species A',
      of: 'density',
      scope,
      confidence: 0.95,
      acceptance: null,
    }),
  );
  for (const { id: surveyId } of await store.all('survey')) {
    found.push(await stationList(store, { surveyId, language: 'en' }));
  }
  return found;
}

describe('a book that remembers', () => {
  const [first, middle, last] = [tallies[0]!, tallies[5]!, tallies.at(-1)!];
  const withdrawn = (kind: RecordKind, recordId: string) => ({ kind, recordId, after: null }) as Change;
  const late = record('station', {
    id: ids(),
    surveyId: surveys[1]!.id,
    stratumId: strata[0]!.id,
    code: 'late',
  });
  const lateBelt = record('transect', { id: ids(), stationId: late.id, code: '1' });
  const seenFirst = record('tally', {
    id: ids(),
    transectId: belts.at(-1)!.id,
    speciesId: species[1]!.id,
    count: 3,
  });
  const evening: Readonly<Record<string, () => Promise<unknown> | unknown>> = {
    'a count of the last survey is corrected': () => write(put('tally', { ...last, count: 40 })),
    'a count of the first survey is corrected': () => write(put('tally', { ...first, count: 90 })),
    'a length is corrected and no count': () =>
      write(put('tally', { ...middle, lengths: [{ lengthMm: 99, n: 1, measure: null, photo: null }] })),
    'a station is added to an earlier survey': () => write(put('station', late), put('transect', lateBelt)),
    'a species is seen for the first time in the book': () => write(put('tally', seenFirst)),
    'the same tally is withdrawn again': () => write(withdrawn('tally', seenFirst.id)),
    'a belt is shortened': () => write(put('transect', { ...belts[2]!, lengthM: 20, status: 'partial' })),
    'a station moves to another survey': () => write(put('station', { ...late, surveyId: surveys[0]!.id })),
    'a stratum gets another area': () => write(put('stratum', { ...strata[1]!, areaHa: 75 })),
    'a species is renamed': () =>
      write(
        put('species', { ...species[0]!, name: 'Species C' }),
        put('species', { ...species[1]!, name: 'Species A' }),
      ),
    'the protocol changes its belt': () => write(put('protocol', { ...protocol, lengthM: 50 })),
    'a target is declared': () =>
      write(
        put('target', record('target', { id: ids(), surveyId: surveys[2]!.id, speciesId: species[1]!.id })),
      ),
    'a survey gets another day': () => write(put('survey', { ...surveys[0]!, starts: '2025-09-01' })),
    'somebody writes into the file by hand': () => {
      const database = new DatabaseSync(join(folder, 'book.sqlite'));
      database.exec('UPDATE tallies SET "count" = "count" + 2');
      database.close();
    },
    'the tables are made again from the history': () => elsewhere.rebuild(),
  };

  it('answers as one that was opened this moment, whatever was done to it elsewhere', async () => {
    const { reading } = rememberingStore(here);
    const opened = async () => {
      const fresh = await openBook(folder);
      const found = await rooms(fresh);
      await fresh.close();
      return found;
    };
    let before = JSON.stringify(await reading(rooms));
    for (const [what, act] of Object.entries(evening)) {
      await act();
      const now = JSON.stringify(await reading(rooms));
      expect(now, what).toBe(JSON.stringify(await opened()));
      expect(now, what).not.toBe(before);
      before = now;
    }
  });

  it('reads again the survey that has changed, and no other', async () => {
    const reads: string[] = [];
    const { reading } = rememberingStore({
      ...here,
      surveyRecords: (surveyId, options) => {
        reads.push(surveys.find(({ id }) => id === surveyId)!.name);
        return here.surveyRecords(surveyId, options);
      },
    });
    const ask = () =>
      reading(async (store) => {
        await store.speciesSeen();
        for (const { id } of surveys) await store.surveyRecords(id, { lengths: false });
        return reads.splice(0);
      });
    expect(await ask()).toEqual(['Survey 2024', 'Survey 2025', 'Survey 2026']);
    expect(await ask()).toEqual([]);
    await write(put('tally', { ...last, count: 40 }));
    expect(await ask()).toEqual(['Survey 2026']);
    await write(put('stratum', { ...strata[1]!, areaHa: 75 }));
    expect(await ask()).toEqual([]);
  });

  it('never gives counts without their lengths to who asks for lengths', async () => {
    const { reading } = rememberingStore(here);
    const lengthsOf = (options?: { readonly lengths: boolean }) =>
      reading(
        async (store) => (await store.surveyRecords(surveys[0]!.id, options)).tallies[0]!.lengths.length,
      );
    expect([
      await lengthsOf({ lengths: false }),
      await lengthsOf(),
      await lengthsOf({ lengths: false }),
    ]).toEqual([0, 1, 0]);
  });

  it('answers the same when there is no room to remember anything', async () => {
    const { reading } = rememberingStore(here, { counts: 0, countsAndLengths: 0 });
    expect(JSON.stringify(await reading(rooms))).toBe(JSON.stringify(await rooms(here)));
  });
});

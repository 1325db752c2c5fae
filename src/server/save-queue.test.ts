import { describe, expect, it } from 'vitest';
import { testServer } from '../../test/server-fixture.ts';
import { openMemoryBook } from '../store/book-folder.ts';
import type { SheetStore } from '../survey/acts.ts';
import { Failure } from '../survey/failure.ts';
import { saveQueue } from './save-queue.ts';

const pause = (ms: number) =>
  new Promise<void>((resolve) => (ms === 0 ? setImmediate(resolve) : setTimeout(resolve, ms)));

describe('saves that arrive together', () => {
  it('share a commit, and every one of them is there', async () => {
    const server = await testServer();
    const sizes: number[] = [];
    const store: SheetStore = {
      ...server.store,
      applyTogether: (acts, version) => {
        sizes.push(acts.length);
        return server.store.applyTogether(acts, version);
      },
    };
    const queue = saveQueue({ store, pause });
    await Promise.all(Array.from({ length: 20 }, (_, n) => queue.save(zoneSave(server, n))));
    expect(sizes).toEqual([20]);
    expect(await server.store.all('stratum')).toHaveLength(21);
  });

  it('do not go down with the one that is refused', async () => {
    const server = await testServer();
    const queue = saveQueue({ store: server.store, pause });
    // The second stratum of one name cannot be kept; the others have nothing to do with it.
    const saves = [0, 1, 1, 2].map((n, i) => queue.save({ ...zoneSave(server, n), thing: `thing ${i}` }));
    const ends = await Promise.allSettled(saves);
    expect(ends.map(({ status }) => status)).toEqual(['fulfilled', 'fulfilled', 'rejected', 'fulfilled']);
    expect((await server.store.all('stratum')).map(({ name }) => name).sort()).toEqual([
      'reef',
      'zone 0',
      'zone 1',
      'zone 2',
    ]);
  });

  it('of one thing are written one after the other, each seeing the one before', async () => {
    const server = await testServer();
    const queue = saveQueue({ store: server.store, pause });
    const seen: number[] = [];
    const one = (n: number) => {
      const save = zoneSave(server, n);
      const ready = async () => {
        seen.push((await server.store.all('stratum')).length);
        return save.ready();
      };
      return { ...save, thing: 'one thing', ready };
    };
    await Promise.all([0, 1, 2].map((n) => queue.save(one(n))));
    expect(seen).toEqual([1, 2, 3]);
  });

  it('are made ready again when another program changed the book in between', async () => {
    const server = await testServer();
    let looked = 0;
    const save = zoneSave(server, 1);
    const ready = async () => {
      looked += 1;
      const made = await save.ready();
      if (looked === 1) await otherProgram(server);
      return made;
    };
    await saveQueue({ store: server.store, pause }).save({ ...save, ready });
    expect(looked).toBe(2);
    expect((await server.store.all('stratum')).map(({ name }) => name)).toContain('zone 1');
  });

  it('wait while another program holds the book, and are answered when it lets go', async () => {
    const server = await testServer();
    let refusals = 3;
    const store: SheetStore = {
      ...server.store,
      applyTogether: async (acts, version) => {
        refusals -= 1;
        if (refusals < 0) return server.store.applyTogether(acts, version);
        return acts.map(() => ({ state: 'refused', error: new Failure('book-locked', { folder: 'b' }) }));
      },
    };
    expect(await saveQueue({ store, pause }).save(zoneSave(server, 1))).toBe('kept');
  });

  it('are refused, and not left hanging, when the book cannot even be asked', async () => {
    const store = await openMemoryBook({
      name: 'b',
      invented: true,
      at: '2026-01-01T00:00:00Z',
      bookId: 'b',
    });
    await store.close();
    const save = { thing: 'x', ready: async () => ({ act: null, answer: 'kept' }) };
    await expect(saveQueue({ store, pause }).save(save)).rejects.toThrow();
  });
});

type Server = Awaited<ReturnType<typeof testServer>>;

function zoneSave({ newId, stratum }: Server, n: number) {
  const after = { ...stratum, id: newId(), name: `zone ${n}` };
  const signature = { who: 'A', at: '2026-09-30T08:00:00.000Z', device: 'd', why: 'test' };
  const changes = [{ kind: 'stratum', recordId: after.id, after } as const];
  const act = { id: newId(), signature, changes, mustBeNew: new Set([after.id]) };
  return { thing: after.id, ready: async () => ({ act, answer: () => 'kept' }) };
}

async function otherProgram({ store, newId, stratum }: Server): Promise<void> {
  const after = { ...stratum, areaHa: 120 };
  const signature = { who: 'B', at: '2026-09-30T08:00:00.000Z', device: 'd', why: 'elsewhere' };
  await store.apply([{ kind: 'stratum', recordId: after.id, after }], signature, newId);
}

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { draftKeeper } from './draft-keeper.ts';

/** A disk that takes 100 ms for each write. */
function slowDisk() {
  const written: string[] = [];
  const write = async (text: string) => {
    await new Promise((done) => setTimeout(done, 100));
    written.push(text);
  };
  return { written, keeper: draftKeeper(write) };
}

describe('the draft of a sheet', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is on the disk within a second of a letter, however fast letters follow', async () => {
    const { written, keeper } = slowDisk();
    for (let letter = 1; letter <= 20; letter += 1) {
      keeper.keep(`letter ${letter}`);
      await vi.advanceTimersByTimeAsync(50);
    }
    expect(written.length).toBeGreaterThan(0);
    // By hand: after 1000 ms nothing older than 500 ms, which is ten letters, may be missing.
    expect(Number(written.at(-1)!.slice(7))).toBeGreaterThanOrEqual(10);
    await vi.advanceTimersByTimeAsync(600);
    expect(written.at(-1)).toBe('letter 20');
  });

  it('is written at once when the page goes out of sight', async () => {
    const { written, keeper } = slowDisk();
    keeper.keep('all of it');
    const done = keeper.keepNow();
    await vi.advanceTimersByTimeAsync(100);
    await done;
    expect(written).toEqual(['all of it']);
    await vi.advanceTimersByTimeAsync(2000);
    expect(written).toHaveLength(1);
  });

  it('is not written any more once its sheet is saved or another tab took it', async () => {
    const { written, keeper } = slowDisk();
    keeper.keep('first');
    await vi.advanceTimersByTimeAsync(200);
    keeper.keep('second');
    const stopped = keeper.stop();
    await vi.advanceTimersByTimeAsync(100);
    await stopped;
    keeper.keep('a letter after the end');
    await vi.advanceTimersByTimeAsync(2000);
    expect(written).toEqual(['first']);
  });

  it('is written at once also while an earlier write is on its way: a page that goes away does not come back', async () => {
    const begun: string[] = [];
    const keeper = draftKeeper(async (text: string) => {
      begun.push(text);
      await new Promise((done) => setTimeout(done, 5000));
    });
    keeper.keep('first');
    await vi.advanceTimersByTimeAsync(200);
    keeper.keep('second');
    void keeper.keepNow();
    expect(begun).toEqual(['first', 'second']);
  });
});

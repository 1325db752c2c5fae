/** The draft of a sheet on the disk of this laptop: soon, but never while a key waits for it. */

export interface DraftKeeper<Typed> {
  /** To be kept within a third of a second; a newer one takes its place. */
  readonly keep: (typed: Typed) => void;
  /** At once, as when the page goes away; resolves when it is on the disk. */
  readonly keepNow: () => Promise<void>;
  /** What is not being written yet is let go. Resolves when nothing more will be written. */
  readonly stop: () => Promise<void>;
}

/** A copy of sixty belts costs a moment: one for several letters, and in a pause between two keys where there is one. */
const waitMs = 150;
const pauseWithinMs = 150;

/**
 * `write` tells whoever waits whether it succeeded; it does not throw. What it is given later must also come later on
 * the disk, as transactions of one store do.
 */
export function draftKeeper<Typed>(write: (typed: Typed) => Promise<void>): DraftKeeper<Typed> {
  let next: { readonly typed: Typed } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<unknown> = Promise.resolve();
  let isStopped = false;

  async function keepNow(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    if (next !== null) {
      const written = write(next.typed);
      next = null;
      writing = Promise.all([writing, written]);
    }
    await writing;
  }

  return {
    keep(typed) {
      if (isStopped) return;
      next = { typed };
      timer ??= setTimeout(() => inPause(() => void keepNow()), waitMs);
    },
    keepNow,
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      next = null;
      await writing;
    },
  };
}

function inPause(work: () => void): void {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: pauseWithinMs });
  else work();
}

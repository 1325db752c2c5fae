/** The draft of a sheet on the disk of this laptop: soon, but never while a key waits for it. */

export interface DraftKeeper<Typed> {
  /** To be kept within half a second; a newer one takes its place. */
  readonly keep: (typed: Typed) => void;
  /** At once; resolves when it is on the disk. */
  readonly keepNow: () => Promise<void>;
  /** What is not being written yet is let go. Resolves when nothing more will be written. */
  readonly stop: () => Promise<void>;
}

/** A copy of sixty belts costs a moment: one for several letters, and in a pause between two keys where there is one. */
const waitMs = 300;
const pauseWithinMs = 200;

/** One write at a time, always of the newest. `write` tells whoever waits whether it succeeded; it does not throw. */
export function draftKeeper<Typed>(write: (typed: Typed) => Promise<void>): DraftKeeper<Typed> {
  let next: { readonly typed: Typed } | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> | null = null;
  let isStopped = false;

  function later() {
    timer ??= setTimeout(() => inPause(() => void keepNow()), waitMs);
  }

  async function keepNow(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    while (writing !== null) await writing;
    if (next === null) return;
    const { typed } = next;
    next = null;
    writing = write(typed).finally(() => {
      writing = null;
    });
    await writing;
  }

  return {
    keep(typed) {
      if (isStopped) return;
      next = { typed };
      later();
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

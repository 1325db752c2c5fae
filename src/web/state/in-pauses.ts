/** Work that may wait: piece by piece while the keyboard rests, so that no key finds the door shut for long. */

export interface PauseWork {
  /** Begins when nothing new was asked for so long; what was asked before and has not begun is let go. */
  readonly run: (pieces: readonly (() => void)[], afterMs: number) => void;
  readonly stop: () => void;
}

export function inPauses(): PauseWork {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;

  function stop() {
    clearTimeout(timer);
    asked += 1;
  }

  /** Each piece asks for a pause of its own: a key in between comes first. */
  function next(pieces: readonly (() => void)[], mine: number) {
    const [piece, ...rest] = pieces;
    if (piece === undefined || mine !== asked) return;
    whenIdle(() => {
      if (mine !== asked) return;
      piece();
      next(rest, mine);
    });
  }

  return {
    stop,
    run(pieces, afterMs) {
      stop();
      const mine = asked;
      timer = setTimeout(() => next(pieces, mine), afterMs);
    },
  };
}

function whenIdle(work: () => void): void {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: 500 });
  else setTimeout(work, 0);
}

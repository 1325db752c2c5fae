import type { Io } from './io.ts';

export interface Progress {
  readonly step: (what: string) => void;
  readonly done: () => void;
}

/** One line on stderr, redrawn on a terminal; in a log only the steps, each once. */
export function progressOn(io: Io): Progress {
  let last = '';
  return {
    step: (what) => {
      if (what === last) return;
      last = what;
      io.stderr(io.isTerminal ? `\r\u001b[K${what} ...` : `${what}\n`);
    },
    done: () => {
      if (io.isTerminal) io.stderr('\r\u001b[K');
    },
  };
}

/** One sheet while it is typed: its cells, what was undone, its draft on disk, and which tab may type. */

import type { TypedSheet } from '../../tasks/sheets/typed-sheet.ts';
import { type Draft, keepDraft } from '../offline/drafts.ts';
import type { OpenedSheet } from './open-sheet.ts';

interface Moment {
  readonly typed: TypedSheet;
  /** The cell that was changed next. */
  readonly cell: string;
}

export type Typing = ReturnType<typeof startTyping>;

/** To be closed with `close`. */
export function startTyping(opened: OpenedSheet) {
  let typed: TypedSheet = $state.raw(opened.typed);
  let keptAt: string | null = $state(opened.draftFrom);
  let keepFailed = $state(false);
  let changed = $state(opened.draftFrom !== null);
  const past: Moment[] = [];
  const future: Moment[] = [];
  const keeper = draftKeeper(opened, {
    kept: (at) => {
      keptAt = at;
      keepFailed = false;
    },
    failed: () => {
      keepFailed = true;
    },
  });

  function set(next: TypedSheet) {
    typed = next;
    changed = true;
    keeper.keep(next);
  }

  return {
    opened,
    get typed() {
      return typed;
    },
    get keptAt() {
      return keptAt;
    },
    get keepFailed() {
      return keepFailed;
    },
    /** Something was typed since the sheet was opened or saved. */
    get changed() {
      return changed;
    },
    change(next: TypedSheet, cell: string) {
      const last = past.at(-1);
      // One step back is a word, not a letter; another cell is another step.
      if (last?.cell !== cell || endsWord(next, typed)) past.push({ typed, cell });
      if (past.length > 500) past.shift();
      future.length = 0;
      set(next);
    },
    /** The cell to go to; null when there is nothing to take back. */
    undo(): string | null {
      return step(past, future);
    },
    redo(): string | null {
      return step(future, past);
    },
    /** Resolves when nothing more will be written to the draft. */
    close: () => keeper.stop(),
  };

  function step(from: Moment[], to: Moment[]): string | null {
    const moment = from.pop();
    if (moment === undefined) return null;
    to.push({ typed, cell: moment.cell });
    set(moment.typed);
    return moment.cell;
  }

  function endsWord(next: TypedSheet, now: TypedSheet): boolean {
    const i = next.belts.findIndex((belt, at) => belt !== now.belts[at]);
    const belt = next.belts[i];
    if (belt === undefined) return false;
    if (belt.list !== now.belts[i]?.list) return /\s$/.test(belt.list);
    const line = belt.lines.find((one, at) => one !== now.belts[i]?.lines[at]);
    return line !== undefined && /\s$/.test(line.lengths);
  }
}

interface Told {
  readonly kept: (at: string) => void;
  readonly failed: () => void;
}

/** One write at a time, always of the newest; typing never waits for the disk. */
function draftKeeper(opened: OpenedSheet, told: Told) {
  let next: TypedSheet | null = null;
  let writing: Promise<void> | null = null;
  let stopped = false;

  async function writeAll() {
    while (next !== null && !stopped) {
      // After the letter is on the screen: the copy that is written costs a moment on a full sheet.
      await new Promise((resolve) => setTimeout(resolve, 0));
      const typed: TypedSheet | null = next;
      next = null;
      if (typed === null || stopped) return;
      await write(typed);
    }
  }

  async function write(typed: TypedSheet) {
    const { key, surveyId, stationId, base, before } = opened;
    const changedAt = new Date().toISOString();
    const draft: Draft = { key, surveyId, stationId, base, before, typed, changedAt };
    await keepDraft(draft).then(() => told.kept(changedAt), told.failed);
  }

  return {
    keep(typed: TypedSheet) {
      next = typed;
      writing ??= writeAll().finally(() => {
        writing = null;
      });
    },
    async stop() {
      stopped = true;
      await writing;
    },
  };
}

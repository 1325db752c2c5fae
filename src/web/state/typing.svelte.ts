/** One sheet while it is typed: its cells, what was undone, its draft on disk, and which tab may type. */

import type { TypedSheet } from '../../tasks/sheets/typed-sheet.ts';
import { type Draft, keepDraft } from '../offline/drafts.ts';
import { draftKeeper } from './draft-keeper.ts';
import type { OpenedSheet } from './open-sheet.ts';

interface Moment {
  readonly typed: TypedSheet;
  /** The cell that was changed next. */
  readonly cell: string;
}

export type Typing = ReturnType<typeof startTyping>;

/** To be closed with `leave` or `close`. */
export function startTyping(opened: OpenedSheet) {
  // Head, belts and their number each by itself: a letter in one belt is no news for the head and the other belts.
  let station = $state.raw(opened.typed.station);
  let written = $state.raw(opened.typed.written);
  let belts = $state.raw(opened.typed.belts);
  let beltCount = $state(opened.typed.belts.length);
  let typed = opened.typed;
  let keptAt: string | null = $state(opened.draftFrom);
  let keepFailed = $state(false);
  let changed = $state(opened.draftFrom !== null);
  const past: Moment[] = [];
  const future: Moment[] = [];
  const keeper = draftKeeper(write);
  document.addEventListener('visibilitychange', keepWhenHidden);
  addEventListener('pagehide', keeper.keepNow);

  async function write(latest: TypedSheet) {
    const { key, surveyId, stationId, base, before } = opened;
    const changedAt = new Date().toISOString();
    const draft: Draft = { key, surveyId, stationId, base, before, typed: latest, changedAt };
    try {
      await keepDraft(draft);
      keptAt = changedAt;
      keepFailed = false;
    } catch {
      keepFailed = true;
    }
  }

  /** Another tab, another program, or the lid of the laptop. */
  function keepWhenHidden() {
    if (document.visibilityState === 'hidden') void keeper.keepNow();
  }

  function close(): Promise<void> {
    document.removeEventListener('visibilitychange', keepWhenHidden);
    removeEventListener('pagehide', keeper.keepNow);
    return keeper.stop();
  }

  function set(next: TypedSheet) {
    typed = next;
    station = next.station;
    written = next.written;
    belts = next.belts;
    beltCount = next.belts.length;
    changed = true;
    keeper.keep(next);
  }

  return {
    opened,
    get station() {
      return station;
    },
    get written() {
      return written;
    },
    get belts() {
      return belts;
    },
    get beltCount() {
      return beltCount;
    },
    /** The whole sheet: whoever reads it is told of every letter. */
    get typed(): TypedSheet {
      return written === undefined ? { station, belts } : { station, written, belts };
    },
    /** The same, for those who only look. */
    get now(): TypedSheet {
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
    /** Nothing more goes into the draft. Resolves when that is so. */
    close,
    /** The sheet is left as it stands, with its draft. */
    async leave() {
      await keeper.keepNow();
      await close();
    },
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

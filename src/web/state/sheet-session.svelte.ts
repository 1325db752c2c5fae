/** A sheet opened in this tab: found, locked against the other tabs, and typed. */

import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';
import { lockSheet, type SheetLock } from '../offline/sheet-lock.ts';
import { lastTyped } from './last-typed.svelte.ts';
import { openSheet, type SheetAddress } from './open-sheet.ts';
import { startTyping, type Typing } from './typing.svelte.ts';

/** To be begun once it is on the screen, and left when it goes. */
export function sheetSession(address: SheetAddress, surveyWords: () => SurveyWords) {
  let typing: Typing | null = $state.raw(null);
  let missing = $state(false);
  let mine: 'mine' | 'elsewhere' | 'lost' = $state('mine');
  let lock: SheetLock | null = null;
  let isLeft = false;
  const key = address.kind === 'again' ? `${address.stationId}/again` : address.stationId;

  function told() {
    return {
      held: () => {
        mine = 'mine';
      },
      elsewhere: () => {
        mine = 'elsewhere';
      },
      lost: () => {
        mine = 'lost';
        // The tab that took it over keeps the draft from now on.
        void typing?.close();
      },
    };
  }

  return {
    get typing() {
      return typing;
    },
    /** In the book, but neither the book nor this browser can show it now. */
    get missing() {
      return missing;
    },
    get readOnly() {
      return mine !== 'mine';
    },
    /** It was typed here until another tab took it. */
    get wasTaken() {
      return mine === 'lost';
    },
    /** Resolves when there is something to type in, or nothing to be had. */
    async begin({ takeOver }: { readonly takeOver: boolean }): Promise<void> {
      lock = lockSheet(key, told(), { takeOver });
      void typing?.close();
      const opened = await openSheet(address, surveyWords(), lastTyped.station);
      if (isLeft) return;
      missing = opened === null;
      typing = opened === null ? null : startTyping(opened);
    },
    leave() {
      isLeft = true;
      void typing?.leave();
      lock?.release();
    },
  };
}

/** The sheet as it stood when the keyboard last rested: strip and questions follow the typing, they never hold it up. */

import { untrack } from 'svelte';
import type { Sheet } from '../../tasks/sheets/sheet-schemas.ts';
import { inPauses } from './in-pauses.ts';

export interface Settling {
  readonly sheet: () => Sheet;
  readonly questions: (sheet: Sheet) => ReadonlyMap<string, readonly string[]>;
  /** The belt strip, as SVG text. */
  readonly strip: (sheet: Sheet) => string;
}

const restMs = 250;

/** `settling` reads whatever should make it begin anew; null while there is no sheet. */
export function settledSheet(settling: () => Settling | null) {
  let questions: ReadonlyMap<string, readonly string[]> = $state.raw(new Map());
  let strip = $state('');
  const pauses = inPauses();
  $effect(() => {
    const how = settling();
    if (how === null) return;
    untrack(() => pauses.run(piecesOf(how), strip === '' ? 0 : restMs));
  });
  $effect(() => pauses.stop);

  function piecesOf(how: Settling) {
    let sheet: Sheet | null = null;
    const read = () => {
      sheet = how.sheet();
    };
    const ask = () => {
      questions = keepingSame(questions, how.questions(sheet!));
    };
    const draw = () => {
      strip = how.strip(sheet!);
    };
    return [read, ask, draw];
  }

  return {
    /** By belt ("1 1": code and swim) or "station". */
    get questions() {
      return questions;
    },
    get strip() {
      return strip;
    },
  };
}

/** Belts about which nothing new is asked are not drawn again. */
function keepingSame(
  before: ReadonlyMap<string, readonly string[]>,
  now: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  return new Map(
    [...now].map(([place, asked]) => {
      const known = before.get(place);
      const isSame = known?.length === asked.length && known.every((one, i) => one === asked[i]);
      return [place, isSame ? known : asked];
    }),
  );
}

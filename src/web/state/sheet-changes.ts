/** A typed sheet with one thing changed; all else keeps its identity, so that nothing else is read or drawn again. */

import type { Station } from '../../survey/words.ts';
import type { SurveyWords } from '../../tasks/sheets/survey-schemas.ts';
import type { TypedBelt, TypedSheet } from '../../tasks/sheets/typed-sheet.ts';
import type { WrittenStation } from '../../tasks/sheets/written-station.ts';
import { newBelt } from './open-sheet.ts';

export function withStation(typed: TypedSheet, change: Partial<Station>): TypedSheet {
  return { ...typed, station: { ...typed.station, ...change } };
}

export function withWritten(typed: TypedSheet, change: WrittenStation): TypedSheet {
  return { ...typed, written: { ...typed.written, ...change } };
}

export function withBelt(typed: TypedSheet, belt: TypedBelt): TypedSheet {
  return { ...typed, belts: typed.belts.map((one) => (one.id === belt.id ? belt : one)) };
}

/** Numbered after the highest there is. */
export function withOneMoreBelt(typed: TypedSheet, words: SurveyWords): TypedSheet {
  const numbers = typed.belts.map((belt) => Number(belt.code)).filter(Number.isFinite);
  return { ...typed, belts: [...typed.belts, newBelt(String(Math.max(0, ...numbers) + 1), words)] };
}

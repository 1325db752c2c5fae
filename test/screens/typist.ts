/** A recorder who types what stands on a slate, one key after another, and counts the keys. */

import type { Page } from '@playwright/test';
import { generatorFrom } from './typist-luck.ts';

export interface Slate {
  readonly code: string;
  /** For each belt, species code and lengths. */
  readonly belts: readonly (readonly { readonly species: string; readonly lengthsMm: readonly number[] }[])[];
}

/** Six belts, five species, 120 lengths: 20 on each belt, 4 of each species. */
export function inventSlate(code: string, seed: number): Slate {
  const luck = generatorFrom(seed);
  const species = ['sand', 'lolly', 'green', 'black', 'white'];
  const belts = Array.from({ length: 6 }, () =>
    species.map((one) => ({
      species: one,
      lengthsMm: Array.from({ length: 4 }, () => 130 + Math.floor(luck() * 200)),
    })),
  );
  return { code, belts };
}

/** What the paper holds: letters and figures, without any key to move. */
export function dataKeys({ belts }: Slate): number {
  let keys = 0;
  for (const { species, lengthsMm } of belts.flat()) {
    keys += species.length + lengthsMm.reduce((sum, mm) => sum + String(mm).length, 0);
  }
  return keys;
}

/** One move after each name and each length, and one from each belt to the next. */
export function cellMoves({ belts }: Slate): number {
  return belts.length + belts.flat().reduce((sum, { lengthsMm }) => sum + 1 + lengthsMm.length, 0);
}

/** Begins in the first cell of the first belt, ends on the button that saves. Returns the keys pressed. */
export async function typeBelts(page: Page, slate: Slate): Promise<number> {
  let keys = 0;
  const press = async (key: string) => {
    await page.keyboard.press(key);
    keys += 1;
  };
  const write = async (text: string) => {
    for (const letter of text) await press(letter);
  };
  for (const belt of slate.belts) {
    for (const { species, lengthsMm } of belt) {
      await write(species);
      await press('Enter');
      for (const [i, mm] of lengthsMm.entries()) {
        await write(String(mm));
        await press(i < lengthsMm.length - 1 ? 'Space' : 'Enter');
      }
    }
    await press('Enter');
  }
  return keys;
}

/** From the code of the station, over what is like the last sheet, to the first belt. */
export async function typeStation(page: Page, { code }: Slate): Promise<void> {
  await page.keyboard.type(code);
  for (let cell = 0; cell < 7; cell += 1) await page.keyboard.press('Enter');
}

/** Bottom cover of a belt in steps of five percent that add up to 100, around what is usual for the patch. */

import type { SeededRandom } from '../../maths/random.ts';
import type { Transect } from '../../survey/words.ts';
import type { PatchName } from './islands.ts';

const usualPercent: Readonly<Record<PatchName, readonly (readonly [string, number])[]>> = {
  'north flat': [
    ['rubble', 35],
    ['sand', 25],
    ['pavement', 20],
    ['live coral', 10],
    ['algae', 10],
  ],
  'south flat': [
    ['sand', 45],
    ['rubble', 30],
    ['pavement', 10],
    ['live coral', 10],
    ['algae', 5],
  ],
  'lagoon seagrass': [
    ['seagrass', 60],
    ['sand', 30],
    ['rubble', 10],
  ],
  'outer terrace': [
    ['live coral', 35],
    ['dead coral', 15],
    ['rubble', 25],
    ['sand', 15],
    ['algae', 10],
  ],
};

/** Twenty looks at the bottom, each on one kind of it. */
export function bottomCover(patch: PatchName, random: SeededRandom): Transect['cover'] {
  const kinds = usualPercent[patch];
  const percents = kinds.map(() => 0);
  for (let look = 0; look < 20; look++) {
    let left = random.below(100);
    const hit = kinds.findIndex(([, percent]) => {
      left -= percent;
      return left < 0;
    });
    percents[hit]! += 5;
  }
  return kinds.flatMap(([name], i) => (percents[i]! > 0 ? [{ name, percent: percents[i]! }] : []));
}

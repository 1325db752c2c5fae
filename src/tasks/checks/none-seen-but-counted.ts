import { isSearched, transectCheck } from './check.ts';

/** The box is ticked and animals are counted: an import refuses it, a later correction can make it. */
export const check = transectCheck('none-seen-but-counted', (transect) => {
  if (!transect.noneSeen || !isSearched(transect)) return null;
  let animals = 0;
  for (const { count } of transect.tallies.values()) animals += count;
  return animals === 0 ? null : { value: animals, parameters: { count: animals } };
});

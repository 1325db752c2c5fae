import { isSearched, transectCheck } from './check.ts';

/** An import refuses a count on a lost belt; a belt that is marked lost later leaves its counts behind. */
export const check = transectCheck('count-on-lost-transect', (transect) => {
  if (isSearched(transect)) return null;
  let animals = 0;
  for (const { count } of transect.tallies.values()) animals += count;
  if (animals === 0) return null;
  return { value: animals, parameters: { status: transect.status, count: animals } };
});

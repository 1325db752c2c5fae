import { isSearched, transectCheck } from './check.ts';

/** A lost or unswum belt with the box "none seen" or a written zero: a lost sheet read as zero. */
export const check = transectCheck('lost-but-empty', (transect) => {
  if (isSearched(transect)) return null;
  for (const { count } of transect.tallies.values()) if (count > 0) return null;
  if (!transect.noneSeen && transect.tallies.size === 0) return null;
  return { value: transect.status, parameters: { status: transect.status } };
});

import { isSearched, stationCheck } from './check.ts';

/** A station that searched less than a third of the plan is a fragment: it stays, with a question. */
export const check = stationCheck('station-small-area', ({ transects }, { inHand }) => {
  const { plannedAreaCm2 } = inHand;
  let areaCm2 = 0;
  for (const transect of transects) if (isSearched(transect)) areaCm2 += transect.areaCm2;
  if (plannedAreaCm2 === null || areaCm2 === 0 || 3 * areaCm2 >= plannedAreaCm2) return null;
  const parameters = { areaM2: areaCm2 / 10_000, plannedM2: plannedAreaCm2 / 10_000 };
  return { value: parameters.areaM2, parameters };
});

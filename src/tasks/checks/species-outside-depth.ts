import type { Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, placeOfStation } from './check.ts';
import { depthOfBelt, outsideByM, rangeInWords } from './depths.ts';

/** A species deeper or shallower than it is known to live, once per station: a name that looks like another? */
export const check = checkOf('species-outside-depth', ({ inHand, species }) => {
  const found: Problem[] = [];
  for (const station of inHand.stations) {
    const asked = new Set<string>();
    for (const transect of station.transects) {
      const depthM = depthOfBelt(transect, station);
      if (depthM === null) continue;
      for (const { speciesId, count } of transect.tallies.values()) {
        const one = species.get(speciesId)!;
        if (count === 0 || asked.has(speciesId) || outsideByM(depthM, one) === 0) continue;
        asked.add(speciesId);
        const place = { ...placeOfStation(inHand, station), species: one.name };
        const parameters = { transect: transect.record.code, count, range: rangeInWords(one) };
        found.push(problemOf('species-outside-depth', place, { value: depthM, parameters }));
      }
    }
  }
  return found;
});

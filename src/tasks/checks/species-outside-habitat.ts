import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';
import { stationsByStratum } from './stations-by-stratum.ts';

/** A species in a habitat that is not on its list, once per stratum: the list may be what is wrong. */
export const check = checkOf('species-outside-habitat', ({ inHand, species }) => {
  const found: Problem[] = [];
  for (const { stratum, stations } of stationsByStratum(inHand)) {
    if (stratum.habitat === null) continue;
    const habitat = stratum.habitat.toLowerCase();
    for (const [speciesId, where] of stationsWith(stations)) {
      const one = species.get(speciesId)!;
      if (one.habitats.length === 0 || one.habitats.some((name) => name.toLowerCase() === habitat)) continue;
      const place = { survey: inHand.survey.name, species: one.name };
      const parameters = {
        stratum: stratum.name,
        habitats: one.habitats.join(', '),
        where: where.slice(0, 6).join(', '),
      };
      found.push(problemOf('species-outside-habitat', place, { value: stratum.habitat, parameters }));
    }
  }
  return found;
});

function stationsWith(stations: readonly StationWithTransects[]): ReadonlyMap<string, string[]> {
  const where = new Map<string, string[]>();
  for (const { record, transects } of stations) {
    const seen = new Set<string>();
    for (const { tallies } of transects) {
      for (const { speciesId, count } of tallies.values()) if (count > 0) seen.add(speciesId);
    }
    for (const speciesId of seen) {
      const list = where.get(speciesId);
      if (list === undefined) where.set(speciesId, [record.code]);
      else list.push(record.code);
    }
  }
  return where;
}

import { countOutlier } from '../../estimates/count-outlier.ts';
import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, isSearched, placeOfStation } from './check.ts';
import { stationsByStratum } from './stations-by-stratum.ts';

/** A station's count above the upper 99.9 % of what the other stations of its stratum let one expect. */
export const check = checkOf('count-outlier', ({ inHand, species }) => {
  const found: Problem[] = [];
  for (const { stratum, stations } of stationsByStratum(inHand)) {
    const effort = stations.map(searchedHa);
    const searched = stations.filter((_, i) => effort[i]! > 0);
    const areasHa = effort.filter((areaHa) => areaHa > 0);
    for (const [speciesId, animals] of countsBySpecies(searched)) {
      const outlier = countOutlier({ animals, areasHa });
      if (outlier === null) continue;
      const place = {
        ...placeOfStation(inHand, searched[outlier.index]!),
        species: species.get(speciesId)!.name,
      };
      const parameters = { stratum: stratum.name, upper: outlier.upperCount, others: areasHa.length - 1 };
      found.push(problemOf('count-outlier', place, { value: outlier.animals, parameters }));
    }
  }
  return found;
});

function searchedHa({ transects }: StationWithTransects): number {
  let areaCm2 = 0;
  for (const transect of transects) if (isSearched(transect)) areaCm2 += transect.areaCm2;
  return areaCm2 / 1e8;
}

/** Animals of every species seen, station by station; a station without it has none. */
function countsBySpecies(stations: readonly StationWithTransects[]): ReadonlyMap<string, number[]> {
  const counts = new Map<string, number[]>();
  stations.forEach(({ transects }, i) => {
    for (const transect of transects) {
      if (!isSearched(transect)) continue;
      for (const { speciesId, count } of transect.tallies.values()) {
        let animals = counts.get(speciesId);
        if (animals === undefined) {
          animals = Array<number>(stations.length).fill(0);
          counts.set(speciesId, animals);
        }
        animals[i]! += count;
      }
    }
  });
  return counts;
}

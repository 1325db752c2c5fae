/** How many stations each species asks for. */

import { stationsToTell } from '../planning/rehearse/two-surveys.ts';
import { stationsForCv, stationsForMargin } from '../planning/size/stations-for-precision.ts';
import type { SizeRequest, SizeResult, SpeciesSize } from './size-shapes.ts';
import type { SizeSubject } from './size-subject.ts';

/** More than this no boat works in a season. */
export const mostStationsTried = 500;

type Need = Pick<SpeciesSize, 'stations' | 'stationsAsSeen' | 'stationsBestSplit' | 'stationsEach'>;

export function needOf(subject: SizeSubject, target: number, request: SizeRequest): Need {
  if (request.goal === 'change') return needForChange(subject, target, request);
  const stationsAt = (stationCv: number) =>
    (request.goal === 'cv'
      ? stationsForCv({ stationCv, targetCv: target })
      : stationsForMargin({
          ...{ stationCv, margin: target, confidence: request.confidence, populationStations: null },
        })
    ).value?.stations ?? null;
  return {
    stations: stationsAt(subject.stationCv * subject.factor),
    stationsAsSeen: stationsAt(subject.stationCv),
    stationsBestSplit: stationsAt(subject.bestSplitCv * subject.factor),
    stationsEach: null,
  };
}

function needForChange(subject: SizeSubject, factor: number, request: SizeRequest): Need {
  const { confidence, power, simulations, seed } = request;
  const { densitiesPerHa, clumpingK, assuredK, strata, bestSplit } = subject;
  const common = { factor, confidence, power, simulations, seed, most: mostStationsTried };
  const earlier = subject.pilotStations === null ? null : strata;
  const stationsWith = (k: number | null, split = strata, against: typeof earlier = earlier) =>
    stationsToTell({
      ...{ ...common, strata: split, earlier: against, species: { densitiesPerHa, clumpingK: k } },
    }).stations;
  return {
    stations: stationsWith(assuredK),
    stationsAsSeen: stationsWith(clumpingK),
    // Against a first survey that is split alike: an old one keeps its own stations.
    stationsBestSplit: stationsWith(assuredK, bestSplit, null),
    stationsEach: earlier === null ? null : stationsWith(assuredK, strata, null),
  };
}

export function largestNeed(subjects: readonly SizeSubject[], needs: readonly Need[]): SizeResult['need'] {
  let largest: SizeResult['need'] = null;
  needs.forEach((need, i) => {
    const stations = need.stations ?? need.stationsEach;
    if (stations === null || stations <= (largest?.stations ?? 0)) return;
    largest = { stations, species: subjects[i]!.name, isEach: need.stations === null };
  });
  return largest;
}

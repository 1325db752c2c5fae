/** A species as the size of a survey is planned for it: its spread, seen in a pilot or typed. */

import { sampleVariance, sum } from '../maths/variance.ts';
import type { RehearsalStratum } from '../planning/rehearse/rehearsal-request.ts';
import { pilotFactor } from '../planning/size/pilot-factor.ts';
import { clumpingForCv } from '../planning/size/pilot-spread.ts';
import { clumpedStationCv } from '../planning/size/stations-for-precision.ts';
import type { TransectVariances } from '../planning/size/transect-variances.ts';
import type { PilotSpecies } from './pilot.ts';

/** "sandfish: mean 30 per ha, k 0.3", with what one station will search. */
export interface TypedSpecies {
  readonly name: string;
  readonly meanPerHa: number;
  /** Null for scattered animals. */
  readonly clumpingK: number | null;
  readonly stationAreaM2: number;
}

export interface SizeSubject {
  readonly name: string;
  /** With the stations of the pilot, which say how a plan is split; one stratum for typed values. */
  readonly strata: readonly RehearsalStratum[];
  /** The same with stations in the proportions that suit this species best (not whole numbers). */
  readonly bestSplit: readonly RehearsalStratum[];
  readonly densityPerHa: number;
  readonly densitiesPerHa: readonly number[];
  /** CV between stations split as in the pilot, and as suits this species best. */
  readonly stationCv: number;
  readonly bestSplitCv: number;
  readonly clumpingK: number | null;
  /** What the pilot's own uncertainty multiplies the CV by, and the clumping that gives the CV so raised. */
  readonly factor: number;
  readonly assuredK: number | null;
  /** Of the pilot: its stations, what its spread is worth in stations (degrees of freedom + 1), its CV. Null when typed. */
  readonly pilotStations: number | null;
  readonly pilotWorth: number | null;
  readonly pilotCv: number | null;
  readonly animals: number | null;
  readonly stationsWithSpecies: number | null;
  readonly transects: TransectVariances | null;
}

export function subjectOfPilot(pilot: PilotSpecies, assurance: number): SizeSubject {
  const { spread, strata, animals, stationsWithSpecies } = pilot;
  const whole = sum(strata.map((stratum) => stratum.areaHa));
  const claims = strata.map(
    ({ areaHa, valuesPerHa }) => (areaHa / whole) * Math.sqrt(sampleVariance(valuesPerHa) ?? 0),
  );
  const factor = pilotFactor({ stations: spread.degreesOfFreedom + 1, assurance }).value ?? 1;
  const shared = strata.map(({ name, areaHa, searchedAreaM2 }) => ({ name, areaHa, searchedAreaM2 }));
  return {
    name: pilot.species.name,
    strata: shared.map((one, h) => ({ ...one, stations: strata[h]!.valuesPerHa.length })),
    bestSplit: shared.map((one, h) => ({ ...one, stations: claims[h]! })),
    ...{ densityPerHa: spread.densityPerHa, densitiesPerHa: spread.densitiesPerHa },
    ...{ stationCv: spread.stationCv, bestSplitCv: sum(claims) / spread.densityPerHa },
    ...{ clumpingK: spread.clumpingK, factor, assuredK: clumpingForCv(strata, spread.cv * factor) },
    ...{ pilotStations: spread.stations, pilotWorth: spread.degreesOfFreedom + 1, pilotCv: spread.cv },
    ...{ animals, stationsWithSpecies, transects: pilot.transects },
  };
}

/** Typed values are taken as they stand: nothing says how uncertain they are. */
export function subjectOfTyped(typed: TypedSpecies): SizeSubject {
  const { name, meanPerHa, clumpingK, stationAreaM2 } = typed;
  const strata = [{ name: 'all', areaHa: 1, stations: 1, searchedAreaM2: stationAreaM2 }];
  const stationCv = clumpedStationCv({ meanPerStation: (meanPerHa * stationAreaM2) / 10_000, clumpingK });
  return {
    ...{ name, strata, bestSplit: strata, densityPerHa: meanPerHa, densitiesPerHa: [meanPerHa] },
    ...{ stationCv, bestSplitCv: stationCv, clumpingK, factor: 1, assuredK: clumpingK },
    ...{ pilotStations: null, pilotWorth: null, pilotCv: null, animals: null, stationsWithSpecies: null },
    transects: null,
  };
}

/** Builds a joined survey for tests from a few numbers per station. */

import type { SurveyInHand } from '../src/survey/observation.ts';
import { joinSurvey } from '../src/survey/survey-in-hand.ts';
import { unknownStation } from '../src/survey/unknown-station.ts';
import type { Species, Station, Stratum, Tally, Transect } from '../src/survey/words.ts';

export interface BeltSketch {
  readonly lengthM?: number;
  readonly widthM?: number;
  readonly status?: Transect['status'];
  readonly noneSeen?: boolean;
  readonly scope?: readonly string[];
  readonly swim?: number;
  /** Animals by species name; a species that is not named has no tally. */
  readonly counts?: Readonly<Record<string, number>>;
  /** Measured lengths by species name. */
  readonly lengthsMm?: Readonly<Record<string, readonly number[]>>;
}

export interface StationSketch {
  readonly code: string;
  readonly stratum: string;
  readonly zone?: string;
  readonly site?: string;
  readonly selection?: Station['selection'];
  readonly belts: readonly BeltSketch[];
}

export interface SurveySketch {
  readonly areasHa: Readonly<Record<string, number | null>>;
  readonly species?: readonly string[];
  readonly layout?: 'series' | 'timed';
  readonly stations: readonly StationSketch[];
}

const idOf = (kind: string, name: string) => `${kind}-${name}`;

export function speciesNamed(name: string): Species {
  return {
    id: idOf('species', name),
    name,
    group: null,
    code: null,
    commonName: null,
    localName: null,
    aliases: [],
    minLengthMm: null,
    maxLengthMm: null,
    depthMinM: null,
    depthMaxM: null,
    habitats: [],
  };
}

export function surveyOf(sketch: SurveySketch): SurveyInHand {
  const strata = Object.entries(sketch.areasHa).map(([name, areaHa]): Stratum => {
    return { id: idOf('stratum', name), name, habitat: null, areaHa, depthMinM: null, depthMaxM: null };
  });
  const transects: Transect[] = [];
  const tallies: Tally[] = [];
  for (const station of sketch.stations) {
    station.belts.forEach((belt, i) => {
      const transect = transectOf(station, belt, i);
      transects.push(transect);
      for (const [name, count] of Object.entries(belt.counts ?? {})) {
        tallies.push({
          id: `${transect.id}-${name}`,
          transectId: transect.id,
          speciesId: idOf('species', name),
          count,
          lengths: (belt.lengthsMm?.[name] ?? []).map((lengthMm) => ({
            lengthMm,
            n: 1,
            measure: null,
            photo: null,
          })),
        });
      }
    });
  }
  const protocol =
    sketch.layout === undefined
      ? null
      : {
          id: 'protocol',
          name: 'p',
          layout: sketch.layout,
          transectsPerStation: null,
          lengthM: null,
          widthM: null,
          gapM: null,
          measureFirst: null,
          lengthUnit: null,
        };
  return joinSurvey(
    {
      survey: { id: 'survey', name: 'S', protocolId: null, starts: null, ends: null, purpose: null },
      protocol,
      strata,
      targets: (sketch.species ?? ['sandfish']).map(speciesNamed),
    },
    { stations: sketch.stations.map(stationOf), transects, tallies },
  );
}

function transectOf(station: StationSketch, belt: BeltSketch, i: number): Transect {
  return {
    id: `${station.code}-${i}`,
    stationId: idOf('station', station.code),
    code: String(i + 1),
    swim: belt.swim ?? 1,
    scope: [...(belt.scope ?? [])],
    lengthM: belt.lengthM ?? 40,
    widthM: belt.widthM ?? 2,
    depthStartM: null,
    depthEndM: null,
    cover: [],
    status: belt.status ?? 'done',
    reason: null,
    noneSeen: belt.noneSeen ?? false,
    note: null,
  };
}

function stationOf(sketch: StationSketch): Station {
  return {
    ...unknownStation,
    id: idOf('station', sketch.code),
    surveyId: 'survey',
    code: sketch.code,
    site: sketch.site ?? null,
    stratumId: idOf('stratum', sketch.stratum),
    zone: sketch.zone ?? null,
    date: '2026-05-04',
    selection: sketch.selection === undefined ? 'random' : sketch.selection,
  };
}

/** One belt per station with this many animals, all in one stratum. */
export function stationsCounting(
  stratum: string,
  counts: readonly number[],
  species = 'sandfish',
): StationSketch[] {
  return counts.map((count, i) => ({
    code: `${stratum}${i + 1}`,
    stratum,
    belts: [count === 0 ? { noneSeen: true } : { counts: { [species]: count } }],
  }));
}

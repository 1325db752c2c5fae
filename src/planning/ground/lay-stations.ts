import type { Position } from '../../survey/map-area.ts';
import { type Declination, declinationAt, magneticBearingDeg } from './declination.ts';
import type { LaidBelt } from './lay-belts.ts';
import { type BearingQuestion, type BearingSearch, searchBearing } from './search-bearing.ts';

export interface StationToLay extends Omit<BearingQuestion, 'contains'> {
  readonly code: string;
  /** Inside the stratum and off the masks; see `groundIndex`. */
  readonly contains: (position: Position) => boolean;
}

export interface LaidStation {
  readonly code: string;
  readonly search: BearingSearch;
  readonly declination: Declination;
  readonly belts: readonly (LaidBelt & { readonly magneticBearingDeg: number })[];
}

export interface LaidStations {
  readonly stations: readonly LaidStation[];
  /** Stations of which no bearing keeps every belt inside, with the best that can be had. */
  readonly cannotFit: readonly {
    readonly code: string;
    readonly startsInside: boolean;
    readonly bestBearingDeg: number;
    readonly bestShare: number;
    readonly insideM: number;
    readonly laidM: number;
  }[];
}

/** Lays every station of a plan for one day, and names the ones that do not fit before the boat leaves. */
export function layStations(stations: readonly StationToLay[], isoDate: string): LaidStations {
  const laid = stations.map((station) => layStation(station, isoDate));
  const cannotFit = laid
    .filter(({ search }) => !search.fits)
    .map(({ code, search: { best, startsInside } }) => ({
      code,
      startsInside,
      bestBearingDeg: best.bearingDeg,
      bestShare: best.share,
      insideM: best.insideM,
      laidM: best.inside.laidM,
    }));
  return { stations: laid, cannotFit };
}

function layStation(station: StationToLay, isoDate: string): LaidStation {
  const search = searchBearing(station);
  const declination = declinationAt(station.start, { isoDate });
  const belts = search.best.belts.map((belt) => ({
    ...belt,
    magneticBearingDeg: magneticBearingDeg(belt.bearingDeg, declination.declinationDeg),
  }));
  return { code: station.code, search, declination, belts };
}

/** The miniature survey S1 of METHODS (vector a1: 21 stations, 3 strata) as import tables. */

import vector from '../vectors/a1_station_density.json' with { type: 'json' };
import type { Cell } from './cli-helper.ts';

const { stations, transects } = vector.data;

/** `species` other than sandfish is never seen: every belt has none of it. */
export function miniatureTables(): Record<string, readonly (readonly Cell[])[]> {
  return {
    strata: [
      ['stratum', 'area_ha'],
      ['RF', 420],
      ['LG', 310],
      ['SL', 145],
    ],
    species: [
      ['species', 'common_name'],
      ['Holothuria scabra', 'sandfish'],
      ['Holothuria whitmaei', 'black teatfish'],
    ],
    targets: [
      ['survey', 'species'],
      ['S1', 'sandfish'],
      ['S1', 'black teatfish'],
    ],
    stations: [
      ['survey', 'station', 'site', 'stratum', 'zone', 'date', 'selection'],
      ...stations.station.map((station, i) => [
        'S1',
        station,
        stations.site[i]!,
        stations.stratum[i]!,
        stations.zone[i]!,
        '2026-05-04',
        'random',
      ]),
    ],
    transects: [
      ['survey', 'station', 'transect', 'length_m', 'width_m', 'status', 'reason', 'none_seen'],
      ...transects.station.map((station, i) => transectRow(station, i)),
    ],
    counts: [
      ['survey', 'station', 'transect', 'species', 'count'],
      ...transects.station.flatMap((station, i) => {
        const count = transects.count[i];
        return count === null || count === 0
          ? []
          : [['S1', station, transects.transect[i]!, 'sandfish', count as number]];
      }),
    ],
  };
}

function transectRow(station: string, i: number): readonly Cell[] {
  const lost = transects.status[i] !== 'ok';
  const length = transects.length_m[i]!;
  const status = lost ? 'lost' : length < 40 ? 'partial' : 'done';
  const reason = lost ? 'sheet lost' : length < 40 ? 'sand' : '';
  const noneSeen = !lost && transects.count[i] === 0 ? 'yes' : '';
  return ['S1', station, transects.transect[i]!, length, transects.width_m[i]!, status, reason, noneSeen];
}

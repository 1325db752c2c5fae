/** A map and a plan for the small clean survey of the tests: two strata in which its stations lie, as boxes. */

import type { PlannedStation } from '../../survey/plan-words.ts';
import type { MapAreaRecord, Plan } from '../../survey/words.ts';
import type { SurveySketch } from './survey-sketch.ts';

type Box = readonly [west: number, south: number, east: number, north: number];

export function areaRecord(
  name: string,
  role: MapAreaRecord['role'],
  [west, south, east, north]: Box,
  reason: string | null = null,
): MapAreaRecord {
  const corner = (longitudeDeg: number, latitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
  const outer = [
    corner(west, south),
    corner(east, south),
    corner(east, north),
    corner(west, north),
    corner(west, south),
  ];
  const n = [...`${role} ${name}`].reduce((sum, letter) => (31 * sum + letter.charCodeAt(0)) % 1_000_000, 7);
  return {
    id: `00000000-0000-7000-8001-${String(n).padStart(12, '0')}`,
    name,
    role,
    content: {
      area: { parts: [{ outer, holes: [] }] },
      reason,
      source: 'reef.geojson',
      frozenOn: '2026-08-01',
    },
  };
}

/** S1 to S10 run from 17.750 S 177.400 E to 17.777 S 177.436 E, S11 and S12 on to 17.783 S 177.444 E. */
export function withMap(sketch: SurveySketch): void {
  sketch.maps.push(
    areaRecord('flat', 'stratum', [177.39, -17.7785, 177.438, -17.74]),
    areaRecord('slope', 'stratum', [177.43801, -17.8, 177.46, -17.76]),
  );
}

export function planRecord(
  sketch: SurveySketch,
  change: (station: PlannedStation, i: number) => object,
): Plan {
  const stations = sketch.stations.map((station, i): PlannedStation => {
    const planned: PlannedStation = {
      code: station.code,
      stratum: i < 10 ? 'flat' : 'slope',
      position: { latitudeDeg: -17.75 - 0.003 * i, longitudeDeg: 177.4 + 0.004 * i },
      selection: 'random',
      role: 'planned',
      replaces: null,
      belts: [],
      shareInside: null,
    };
    return { ...planned, ...change(planned, i) };
  });
  return {
    id: '00000000-0000-7000-8002-000000000001',
    name: 'spring draw',
    content: {
      survey: sketch.survey.name,
      decision: null,
      protocol: null,
      seed: 1,
      method: 'acceptance',
      minimumSpacingM: null,
      drawnOn: '2026-08-10',
      drawnBy: 'Officer A',
      strata: [],
      stations,
      passedOver: [],
      replacements: [],
      laid: null,
    },
  };
}

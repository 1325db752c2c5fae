/** The map of the Lorrin Islands, made from the outlines in which the demo's stations were placed. */

import type { MapFeature } from '../../survey/map-area.ts';
import type { BringRequest } from '../maps/bring-strata.ts';
import { patches, positionOf } from './islands.ts';

export const demoMapName = 'lorrin-strata.geojson';

export function demoMap(): readonly MapFeature[] {
  return patches.map(({ name, habitat, corners }) => {
    const outer = [...corners, corners[0]!].map(positionOf);
    return { name, area: { parts: [{ outer, holes: [] }] }, properties: { role: 'stratum', habitat } };
  });
}

/** The strata were frozen the week before the first survey, as they should be. */
export function demoMapRequest(today: string): BringRequest {
  return {
    file: { name: demoMapName, features: demoMap(), role: null, reason: null },
    withdraw: null,
    withdrawRole: null,
    readFindings: [],
    freezeOn: '2022-08-29',
    acceptance: null,
    dryRun: false,
    today,
  };
}

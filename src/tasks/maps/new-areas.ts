/** The areas of a map file as records of the book: their role, their name, and whose place they take. */

import type { MapFeature } from '../../survey/map-area.ts';
import { type MapFinding, mapFinding } from '../../survey/map-area.ts';
import { mapAreaRoles } from '../../survey/plan-words.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import { type MaskReason, maskReasons } from './book-ground.ts';

export type MapAreaRole = MapAreaRecord['role'];

export interface MapFile {
  readonly name: string;
  readonly features: readonly MapFeature[];
  /** Null: as each feature says in its property "role", else strata. */
  readonly role: MapAreaRole | null;
  /** Why a mask is no ground. Null: as each feature says in its property "reason". */
  readonly reason: MaskReason | null;
}

export interface NewArea extends Pick<MapFeature, 'area' | 'properties'> {
  readonly name: string;
  readonly role: MapAreaRole;
  readonly reason: MaskReason | null;
}

export interface NewAreas {
  readonly areas: readonly NewArea[];
  readonly findings: readonly MapFinding[];
  /** Masks that do not say why: the caller has to. */
  readonly withoutReason: number;
}

/**
 * Strata and zones need a name each. Masks of one name, or without any, are joined: a coast has a thousand islets,
 * and none of them needs to be told apart.
 */
export function newAreas({ features, role, reason }: MapFile): NewAreas {
  const areas: NewArea[] = [];
  const seen = new Set<string>();
  const findings: MapFinding[] = [];
  let nameless = 0;
  let withoutReason = 0;
  for (const feature of features) {
    const its = role ?? roleOf(feature);
    const why = its === 'mask' ? (reason ?? reasonOf(feature)) : null;
    const name = feature.name?.trim() || (its === 'mask' ? why : null);
    if (its === 'mask' && why === null) withoutReason++;
    else if (name === null || name === undefined) nameless++;
    else if (its === 'mask') joinMask(areas, { ...feature, name, role: its, reason: why });
    else {
      const key = JSON.stringify([its, name]);
      if (seen.has(key)) findings.push(mapFinding('name-repeated', name, { name }));
      else areas.push({ area: feature.area, properties: feature.properties, name, role: its, reason: null });
      seen.add(key);
    }
  }
  if (nameless > 0) findings.push(mapFinding('area-without-name', null, { count: nameless }));
  return { areas, findings, withoutReason };
}

function joinMask(areas: NewArea[], mask: NewArea): void {
  const at = areas.findIndex((one) => one.role === 'mask' && one.name === mask.name);
  const before = areas[at];
  if (before === undefined) areas.push(mask);
  else areas[at] = { ...before, area: { parts: [...before.area.parts, ...mask.area.parts] } };
}

function roleOf({ properties }: MapFeature): MapAreaRole {
  return mapAreaRoles.find((role) => role === properties.role) ?? 'stratum';
}

function reasonOf({ properties }: MapFeature): MaskReason | null {
  return maskReasons.find((reason) => reason === properties.reason) ?? null;
}

/** Strata, zones and masks of a book laid together: what each stratum measures once the masks are taken off. */

import { checkArea } from '../../planning/ground/check-area.ts';
import { checkAreas } from '../../planning/ground/check-areas.ts';
import { type MappedStratum, mappedStrata } from '../../planning/ground/mapped-strata.ts';
import { type Mask, withoutMasks } from '../../planning/ground/masks.ts';
import type { MapFinding } from '../../survey/map-area.ts';
import type { MapAreaRecord } from '../../survey/words.ts';

export const maskReasons = ['land', 'closed', 'too deep'] as const;
export type MaskReason = (typeof maskReasons)[number];

export interface BookGround {
  readonly strata: readonly MappedStratum[];
  readonly findings: readonly MapFinding[];
}

/** Every check of every area, alone and together. Masks may overlap each other, strata and zones may not. */
export function groundOf(areas: readonly MapAreaRecord[]): BookGround {
  const of = (role: MapAreaRecord['role']) => areas.filter((one) => one.role === role);
  const drawn = of('stratum').map(({ name, content }) => ({ name, area: content.area, typedAreaHa: null }));
  const masks = of('mask').map(maskOf);
  const { strata, findings } = mappedStrata(drawn, { frozenOn: null, masks });
  const zones = of('zone').map(({ name, content }) => ({ name, area: content.area, typedAreaHa: null }));
  const alone = zones.map((zone) => checkArea(zone));
  const sound = zones.filter((_, i) => !alone[i]!.some(({ severity }) => severity === 'stop'));
  return { strata, findings: [...findings, ...alone.flat(), ...checkAreas(sound)] };
}

/** The strata with their masks taken off, without the checks: what is in the book was checked when it came. */
export function measuredStrata(areas: readonly MapAreaRecord[]): readonly MappedStratum[] {
  const masks = areas.filter(({ role }) => role === 'mask').map(maskOf);
  return areas
    .filter(({ role }) => role === 'stratum')
    .map(({ name, content: { area } }) => ({
      name,
      area,
      typedAreaHa: null,
      ground: withoutMasks(area, masks),
    }));
}

function maskOf({ name, content }: MapAreaRecord): Mask {
  const why = maskReasons.find((reason) => reason === content.reason) ?? 'closed';
  return { name, why, area: content.area };
}

import type { MapArea } from '../../survey/map-area.ts';
import { groundWithout } from './area-sets.ts';
import { areaSize } from './area-size.ts';
import { type BoundingBox, doBoxesMeet, groundIndex } from './inside.ts';

export interface Mask {
  readonly name: string;
  readonly why: 'land' | 'closed' | 'too deep';
  readonly area: MapArea;
}

export interface MaskedGround {
  /** What is left to draw from; without parts when the masks took everything. */
  readonly area: MapArea;
  readonly wholeHa: number;
  readonly leftHa: number;
  /** In the order of the masks: ground under two masks is counted under the first, so that all adds up. */
  readonly dropped: readonly { readonly name: string; readonly why: Mask['why']; readonly areaHa: number }[];
  readonly errorHa: number;
}

/**
 * The ground of a stratum without land, closed and too deep places, in hectares.
 *
 * Masks are taken off before stations are drawn, so that the chance of every remaining place is known; a station
 * moved afterwards has none. The stratum then stands for `leftHa`, never for `wholeHa`: no stock is claimed where no diver goes.
 */
export function withoutMasks(area: MapArea, masks: readonly Mask[]): MaskedGround {
  const whole = areaSize(area);
  let left = area;
  let leftHa = whole.areaHa;
  let errorHa = whole.edgeErrorHa;
  const dropped: { name: string; why: Mask['why']; areaHa: number }[] = [];
  for (const mask of masks) {
    // A coast of a thousand islets is far from most strata: nothing is cut where the frames do not meet.
    if (!doFramesMeet(left, mask.area)) {
      dropped.push({ name: mask.name, why: mask.why, areaHa: 0 });
      continue;
    }
    left = groundWithout(left, [mask.area]);
    const size = areaSize(left);
    dropped.push({ name: mask.name, why: mask.why, areaHa: leftHa - size.areaHa });
    leftHa = size.areaHa;
    errorHa = Math.max(errorHa, size.edgeErrorHa);
  }
  return { area: left, wholeHa: whole.areaHa, leftHa, dropped, errorHa };
}

function doFramesMeet(area: MapArea, mask: MapArea): boolean {
  const [one, other] = [frameOf(area), frameOf(mask)];
  return one !== null && other !== null && doBoxesMeet(one, other);
}

function frameOf(area: MapArea): BoundingBox | null {
  return groundIndex(area)?.box ?? null;
}

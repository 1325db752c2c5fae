import type { MapArea, MapFinding } from '../../survey/map-area.ts';
import { areaSize } from './area-size.ts';
import { checkArea } from './check-area.ts';
import { checkAreas } from './check-areas.ts';
import { type Mask, type MaskedGround, withoutMasks } from './masks.ts';

/** A stratum as somebody drew it; `typedAreaHa` is the area from the strata table, null when none was typed. */
export interface DrawnStratum {
  readonly name: string;
  readonly area: MapArea;
  readonly typedAreaHa: number | null;
}

export interface MappedStratum extends DrawnStratum {
  readonly ground: MaskedGround;
}

export interface MappedStrata {
  /** The day on which the borders were fixed, before any result was seen; null while they may still move. */
  readonly frozenOn: string | null;
  readonly strata: readonly MappedStratum[];
  readonly findings: readonly MapFinding[];
}

/**
 * Strata made ready for a draw: checked one by one and together, masks taken off, areas in hectares.
 * A stratum with a stop among its findings keeps its place, without masks: its area cannot be trusted. A mask with a stop
 * is not applied; its finding says so before anything is drawn.
 */
export function mappedStrata(
  drawn: readonly DrawnStratum[],
  options: { readonly frozenOn: string | null; readonly masks: readonly Mask[] },
): MappedStrata {
  const single = drawn.map((stratum) => checkArea(stratum));
  const sound = drawn.filter((_, i) => !single[i]!.some(isStop));
  const masks = options.masks.map((mask) => ({
    mask,
    findings: checkArea({ ...mask, typedAreaHa: null, isJoined: true }),
  }));
  const soundMasks = masks.filter(({ findings }) => !findings.some(isStop)).map(({ mask }) => mask);
  return {
    frozenOn: options.frozenOn,
    strata: drawn.map((stratum) => ({
      ...stratum,
      ground: sound.includes(stratum) ? withoutMasks(stratum.area, soundMasks) : unmasked(stratum.area),
    })),
    findings: [...single.flat(), ...masks.flatMap(({ findings }) => findings), ...checkAreas(sound)],
  };
}

function isStop(finding: MapFinding): boolean {
  return finding.severity === 'stop';
}

function unmasked(area: MapArea): MaskedGround {
  const { areaHa, edgeErrorHa } = areaSize(area);
  return { area, wholeHa: areaHa, leftHa: areaHa, dropped: [], errorHa: edgeErrorHa };
}

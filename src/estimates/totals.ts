import type { MeanEstimate } from './shapes.ts';

export interface MappedArea {
  readonly areaHa: number;
  /** Uncertainty of the mapped area itself; 0 when it is taken as known. */
  readonly areaStandardErrorHa: number;
}

/**
 * Stock: mean density in animals per hectare times the area in hectares, in animals.
 *
 * Assumes that the whole area is what the stations were drawn from. The variance is
 * A^2 v(density) + density^2 v(area); nulls and their reason pass through.
 * Source: METHODS b; delta method for a product of independent estimates (Goodman 1960, from memory,
 * without its last term).
 */
export function stockTotal(densityPerHa: MeanEstimate, area: MappedArea): MeanEstimate {
  const { value, standardError } = densityPerHa;
  return {
    ...densityPerHa,
    value: value === null ? null : value * area.areaHa,
    standardError:
      value === null || standardError === null
        ? null
        : Math.hypot(area.areaHa * standardError, value * area.areaStandardErrorHa),
  };
}

import { type MapFinding, mapFinding } from '../../survey/map-area.ts';

/** Two maps of one reef differ by a few per cent; our own choice. */
const usualShare = 0.05;
/** A unit is suspected when the factor fits it this well. */
const unitShare = 0.1;

/** Hectares in one unit. Acre and nautical mile by their definitions: 4046.8564224 m2, 1852 m. */
const unitsHa = { km2: 100, m2: 0.0001, acre: 0.40468564224, nm2: 342.9904 } as const;

/**
 * The area somebody typed against the area of the polygon, both in hectares.
 *
 * A factor near 100 means square kilometres were typed; square metres, acres and square nautical miles are known too.
 * Every stock is density times this area: a slip here goes straight into the quota.
 */
export function checkTypedArea(areas: {
  readonly name: string | null;
  readonly typedHa: number;
  readonly mapHa: number;
}): MapFinding[] {
  const { name, typedHa, mapHa } = areas;
  const factor = mapHa / typedHa;
  if (Math.abs(factor - 1) <= usualShare) return [];
  const unit =
    Object.entries(unitsHa).find(([, sizeHa]) => Math.abs(factor / sizeHa - 1) <= unitShare)?.[0] ??
    'unknown';
  return [mapFinding('area-typed-differs', name, { typedHa, mapHa, factor, unit })];
}

import { areaForMapFile } from '../../planning/ground/for-map-file.ts';
import type { MapFeature, Ring } from '../../survey/map-area.ts';

/**
 * Areas as GeoJSON text (RFC 7946): cut at the date line, outer rings anticlockwise, numbers unrounded.
 * Positions go out as they are: who may see them how exactly is decided before.
 */
export function writeGeoJson(features: readonly MapFeature[]): string {
  const collection = {
    type: 'FeatureCollection',
    features: features.map(({ name, area, properties }) => ({
      type: 'Feature',
      properties: { ...(name === null ? {} : { name }), ...properties },
      geometry: {
        type: 'MultiPolygon',
        coordinates: areaForMapFile(area).parts.map((part) => [part.outer, ...part.holes].map(pairsOf)),
      },
    })),
  };
  return `${JSON.stringify(collection)}\n`;
}

function pairsOf(ring: Ring): [number, number][] {
  return ring.map(({ longitudeDeg, latitudeDeg }) => [longitudeDeg, latitudeDeg]);
}

import type { MapFeature } from '../../survey/map-area.ts';
import type { Store } from '../../survey/store.ts';
import { strataRows } from './strata-rows.ts';

/**
 * The areas of the book as a map file holds them, borders as they were drawn (masks are areas of their own), with
 * what `strata --from` needs to read them back: role and reason. A border is no station: it is written as it is.
 */
export async function mapFeatures(store: Store): Promise<readonly MapFeature[]> {
  const [areas, rows] = await Promise.all([store.all('mapArea'), strataRows(store)]);
  return areas.map(({ name, role, content }) => {
    const areaHa = rows.find((row) => row.name === name && row.role === role)?.areaHa ?? null;
    const { reason, frozenOn, source } = content;
    return {
      name,
      area: content.area,
      properties: { role, reason, area_ha: areaHa, frozen_on: frozenOn, source },
    };
  });
}

/** For each survey, the species that have a tally in it: a written zero was looked for. */

import type { BookDatabase } from './book-database.ts';

export async function readSpeciesSeen({ kysely }: BookDatabase): Promise<Map<string, Set<string>>> {
  // Cross joins, because SQLite takes them in the order written: from the stations down the indexes.
  // Left to itself it starts at the tallies, and takes five times as long.
  const pairs = await kysely
    .selectFrom('stations')
    .crossJoin('transects')
    .crossJoin('tallies')
    .select(['survey_id', 'species_id'])
    .distinct()
    .whereRef('transects.station_id', '=', 'stations.id')
    .whereRef('tallies.transect_id', '=', 'transects.id')
    .execute();
  const seen = new Map<string, Set<string>>();
  for (const { survey_id, species_id } of pairs) {
    const species = seen.get(survey_id);
    if (species === undefined) seen.set(survey_id, new Set([species_id]));
    else species.add(species_id);
  }
  return seen;
}

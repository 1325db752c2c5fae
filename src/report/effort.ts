/** What was done: stations, searched area and days, by stratum. Sums of what is on record, no estimates. */

import type { StationWithTransects, SurveyInHand } from '../survey/observation.ts';

export interface EffortRow {
  readonly name: string;
  readonly areaHa: number | null;
  readonly stations: number;
  readonly transectsSearched: number;
  readonly transectsLost: number;
  readonly transectsBlank: number;
  readonly searchedAreaM2: number;
  readonly days: number;
}

/** One row per stratum of the survey in the order given, then the whole survey. */
export function effortRows(
  survey: SurveyInHand,
  strata: readonly { name: string; areaHa: number | null }[],
): EffortRow[] {
  const rows = strata.map((stratum) =>
    effortOf(
      stratum,
      survey.stations.filter((station) => station.stratum.name === stratum.name),
    ),
  );
  const known = strata.every((stratum) => stratum.areaHa !== null) && strata.length > 0;
  const areaHa = known ? strata.reduce((sum, stratum) => sum + (stratum.areaHa ?? 0), 0) : null;
  return [...rows, effortOf({ name: survey.survey.name, areaHa }, survey.stations)];
}

function effortOf(
  place: { name: string; areaHa: number | null },
  stations: readonly StationWithTransects[],
): EffortRow {
  const transects = stations.flatMap((station) => station.transects);
  const lost = transects.filter(({ status }) => status === 'lost' || status === 'not done');
  const blank = transects.filter((each) => !lost.includes(each) && !each.noneSeen && each.tallies.size === 0);
  const searched = transects.filter((each) => !lost.includes(each) && !blank.includes(each));
  return {
    ...place,
    stations: stations.length,
    transectsSearched: searched.length,
    transectsLost: lost.length,
    transectsBlank: blank.length,
    searchedAreaM2: searched.reduce((sum, each) => sum + each.areaCm2, 0) / 10_000,
    days: stationsPerDay(stations).length,
  };
}

/** Stations worked on each day, in the order of days. */
export function stationsPerDay(
  stations: readonly StationWithTransects[],
): { readonly date: string; readonly stations: readonly string[] }[] {
  const days = new Map<string, string[]>();
  for (const { record } of stations) days.set(record.date, [...(days.get(record.date) ?? []), record.code]);
  return [...days]
    .map(([date, codes]) => ({ date, stations: codes }))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1));
}

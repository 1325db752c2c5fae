/** A survey without some of its stations or belts. */

import type { SurveyInHand } from '../../survey/observation.ts';

export interface DataInQuestion {
  readonly station: string;
  /** Null for the whole station. */
  readonly transect: string | null;
}

/** A station left without a belt goes with them: it would look like one whose sheet was never filled. */
export function withoutData(survey: SurveyInHand, doubtful: readonly DataInQuestion[]): SurveyInHand {
  const byStation = Map.groupBy(doubtful, (one) => one.station);
  const stations = survey.stations.flatMap((station) => {
    const named = byStation.get(station.record.code);
    if (named === undefined) return [station];
    if (named.some((one) => one.transect === null)) return [];
    const codes = new Set(named.map((one) => one.transect));
    const transects = station.transects.filter(({ record }) => !codes.has(record.code));
    return transects.length === 0 ? [] : [{ ...station, transects }];
  });
  return { ...survey, stations };
}

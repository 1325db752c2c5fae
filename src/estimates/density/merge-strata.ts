import type { SurveyInHand } from '../../survey/observation.ts';
import type { Stratum } from '../../survey/words.ts';

/**
 * The survey with strata of like habitat taken as one, named "a + b", its area the sum of theirs.
 *
 * The remedy for a stratum with a lone station, which has no spread of its own. The merge is the officer's
 * decision and stands in the settings of the answer. Strata that no station of this survey lies in change
 * nothing; the area of the merged stratum is unknown when one of theirs is.
 */
export function mergeStrata(survey: SurveyInHand, merges: readonly (readonly string[])[]): SurveyInHand {
  if (merges.length === 0) return survey;
  const known = new Map(survey.stations.map(({ stratum }) => [stratum.name, stratum]));
  const mergedByName = new Map<string, Stratum>();
  for (const names of merges) {
    const strata = names.map((name) => known.get(name)).filter((stratum) => stratum !== undefined);
    const merged = together(strata);
    if (merged !== null) for (const { name } of strata) mergedByName.set(name, merged);
  }
  const stations = survey.stations.map((station) => ({
    ...station,
    stratum: mergedByName.get(station.stratum.name) ?? station.stratum,
  }));
  return { ...survey, stations };
}

function together(strata: readonly Stratum[]): Stratum | null {
  const [first] = strata;
  if (first === undefined || strata.length < 2) return null;
  const areaHa = strata.reduce<number | null>(
    (total, { areaHa: own }) => (total === null || own === null ? null : total + own),
    0,
  );
  return { ...first, name: strata.map(({ name }) => name).join(' + '), areaHa };
}

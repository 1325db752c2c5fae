/** The surveys of the book, and everything a sheet of one of them can name. */

import type { Store } from '../../survey/store.ts';
import { readBookWords } from '../take-in-hand.ts';
import { targetsOf } from '../targets.ts';
import type { SurveyRow, SurveyWords } from './survey-schemas.ts';

/** Oldest first. */
export async function surveyList(store: Store): Promise<readonly SurveyRow[]> {
  const words = await readBookWords(store);
  const protocols = new Map(words.protocols.map((one) => [one.id, one.name]));
  const stations = new Map<string, number>();
  for (const { surveyId } of await store.all('station')) {
    stations.set(surveyId, (stations.get(surveyId) ?? 0) + 1);
  }
  return words.surveys.map((survey) => ({
    survey,
    protocol: protocols.get(survey.protocolId ?? '') ?? null,
    stations: stations.get(survey.id) ?? 0,
  }));
}

/** Null when the survey is not in the book. */
export async function surveyWords(store: Store, surveyId: string): Promise<SurveyWords | null> {
  const words = await readBookWords(store);
  const survey = words.surveys.find((one) => one.id === surveyId);
  if (survey === undefined) return null;
  const targets = targetsOf(words, survey);
  const stations = (await store.all('station')).filter((one) => one.surveyId === surveyId);
  return {
    dataVersion: await store.dataVersion(),
    survey,
    protocol: words.protocols.find((one) => one.id === survey.protocolId) ?? null,
    strata: [...words.strata],
    species: [...words.species],
    targets: targets.species.map((one) => one.id),
    targetsMadeFrom: targets.madeFrom,
    limits: [...words.limits],
    sites: names(stations.map((one) => one.site)),
    zones: names(stations.map((one) => one.zone)),
    recorders: names(stations.map((one) => one.recorder)),
  };
}

function names(given: readonly (string | null)[]): string[] {
  return [...new Set(given)].filter((name) => name !== null).sort();
}

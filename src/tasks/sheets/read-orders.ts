/** The work of the screens that only reads: the same over the book and over the records a screen has kept. */

import type { DensitySettings } from '../../estimates/density/density-settings.ts';
import type { Language } from '../../report/catalogue/sentence.ts';
import type { ScreenLanguage } from '../../report/catalogue/server-words.ts';
import { speciesNames } from '../../report/species-names.ts';
import type { Store } from '../../survey/store.ts';
import { checkSurveys } from '../check-survey.ts';
import { estimateDensity } from '../estimate-density.ts';
import { estimateSizes, type SizesRequest } from '../estimate-sizes.ts';
import { densityRow, problemRow, sizesRow } from './answer-rows.ts';
import { type ExplainRequest, explainCount } from './explain-count.ts';
import { stationList } from './station-list.ts';

export type ReadOrder =
  | {
      readonly task: 'densities';
      readonly survey: string;
      readonly species: string | null;
      readonly settings: DensitySettings;
    }
  | { readonly task: 'sizes'; readonly request: SizesRequest }
  | { readonly task: 'problems'; readonly survey: string; readonly surveyId: string; readonly today: string }
  | { readonly task: 'stations'; readonly surveyId: string }
  | { readonly task: 'explain'; readonly request: ExplainRequest };

/** The answer as its schema in `answer-schemas.ts` or `survey-schemas.ts` has it. */
export function readRows(order: ReadOrder, language: ScreenLanguage, store: Store): Promise<object> {
  switch (order.task) {
    case 'densities':
      return estimateDensity(store, order).then(({ answers, species, dataVersion }) => {
        const reader = { nameOf: speciesNames(species), language };
        return { dataVersion, rows: answers.map((answer) => densityRow(answer, reader)) };
      });
    case 'sizes':
      return estimateSizes(store, order.request).then(({ answers, species, dataVersion }) => {
        const reader = { nameOf: speciesNames(species), language };
        return { dataVersion, rows: answers.map((answer) => sizesRow(answer, reader)) };
      });
    case 'problems':
      return problems(order, store, language);
    case 'stations':
      return stationList(store, { ...order, language }).then(async (stations) => ({
        dataVersion: await store.dataVersion(),
        stations,
      }));
    case 'explain':
      return explainCount(store, order.request);
  }
}

async function problems(
  order: { readonly survey: string; readonly surveyId: string; readonly today: string },
  store: Store,
  language: Language,
) {
  const { checked, dataVersion } = await checkSurveys(store, order);
  const { stations } = await store.surveyRecords(order.surveyId, { lengths: false });
  const ids = new Map(stations.map((station) => [station.code, station.id]));
  return { dataVersion, problems: checked.map((one) => problemRow(one, ids, language)) };
}

/** The book, its surveys, their words and stations. */

import { readySurvey, readyWords } from '../../tasks/sheets/new-survey.ts';
import { savedSchema } from '../../tasks/sheets/sheet-schemas.ts';
import { surveyList, surveyWords } from '../../tasks/sheets/survey-list.ts';
import { surveyRecordsSchema } from '../../tasks/sheets/survey-records-schemas.ts';
import {
  addWordsSchema,
  bookSchema,
  newSurveySchema,
  stationListSchema,
  surveyListSchema,
  surveyWordsSchema,
} from '../../tasks/sheets/survey-schemas.ts';
import { surveyOf, surveyParams, toolsNow } from '../common-schemas.ts';
import { Refusal } from '../refusal.ts';
import { jsonText, route } from '../route.ts';
import { written } from '../written.ts';

export const surveyRoutes = [
  route({
    method: 'get',
    path: '/api/book',
    summary: 'the book, the program, the data version',
    answer: bookSchema,
    handle: async (_, { store, version, device, today }) => ({
      ...(await store.info()),
      version,
      dataVersion: await store.dataVersion(),
      device,
      today: today(),
    }),
  }),
  route({
    method: 'get',
    path: '/api/surveys',
    summary: 'surveys, oldest first',
    answer: surveyListSchema,
    handle: async (_, { store }) => ({
      dataVersion: await store.dataVersion(),
      surveys: await surveyList(store),
    }),
  }),
  route({
    method: 'post',
    path: '/api/surveys',
    summary: 'a new survey with protocol, strata, species and targets, as one act',
    body: newSurveySchema,
    answer: savedSchema,
    handle: ({ body }, house) =>
      house.queue.save({
        // All new surveys one after the other: they share strata and species.
        thing: 'surveys',
        ready: async () => written(await readySurvey(body, toolsNow(house), house.newId), house),
      }),
  }),
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/words',
    summary: 'everything a sheet of this survey can name',
    params: surveyParams,
    answer: surveyWordsSchema,
    handle: async ({ params }, { store }) => {
      const words = await surveyWords(store, params.surveyId);
      if (words === null) throw new Refusal('no-such-survey');
      return words;
    },
  }),
  route({
    method: 'post',
    path: '/api/surveys/{surveyId}/words',
    summary: 'adds strata, species and targets',
    params: surveyParams,
    body: addWordsSchema,
    answer: savedSchema,
    handle: async ({ params: { surveyId }, body }, house) => {
      await surveyOf(house, surveyId);
      const { newId } = house;
      return house.queue.save({
        thing: 'surveys',
        ready: async () =>
          written(await readyWords(body, { surveyId, frame: [], tools: toolsNow(house), newId }), house),
      });
    },
  }),
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/stations',
    summary: 'every station with what is still missing',
    params: surveyParams,
    answer: stationListSchema,
    handle: async ({ params: { surveyId }, language }, house) => {
      await surveyOf(house, surveyId);
      return jsonText(await house.read({ task: 'stations', surveyId, language }));
    },
  }),
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/records',
    summary:
      'all that its numbers and questions rest on, for a screen that works them out without the server',
    params: surveyParams,
    answer: surveyRecordsSchema,
    handle: async ({ params: { surveyId }, language }, house) => {
      await surveyOf(house, surveyId);
      return jsonText(await house.read({ task: 'records', surveyId, language }));
    },
  }),
];

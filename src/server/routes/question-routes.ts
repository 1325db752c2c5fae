/** Questions about the data, their answers, and the history of every record. */

import * as z from 'zod';
import { answerProblem } from '../../tasks/answer.ts';
import { givenAnswer } from '../../tasks/sheets/answer-rows.ts';
import {
  answeredSchema,
  giveAnswerSchema,
  historyListSchema,
  problemListSchema,
} from '../../tasks/sheets/answer-schemas.ts';
import { optionalId, optionalText, surveyOf, surveyParams } from '../common-schemas.ts';
import { Refusal } from '../refusal.ts';
import { jsonText, route } from '../route.ts';
import { whenFree } from '../when-free.ts';

const historyQuery = z.object({
  record: optionalId,
  survey: optionalText,
  station: optionalText,
  transect: optionalText,
  swim: z.coerce.number().int().positive().optional(),
  species: optionalText,
  limit: z.coerce.number().int().min(1).max(10_000).default(200),
});

export const questionRoutes = [
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/problems',
    summary: 'questions, open and answered',
    params: surveyParams,
    answer: problemListSchema,
    handle: async ({ params: { surveyId }, language }, house) => {
      const { name: survey } = await surveyOf(house, surveyId);
      const order = { task: 'problems', survey, surveyId, today: house.today(), language } as const;
      return jsonText(await house.read(order));
    },
  }),
  route({
    method: 'post',
    path: '/api/surveys/{surveyId}/answers',
    summary: 'answers a question; "none seen" marks the blank belts in the same act',
    params: surveyParams,
    body: giveAnswerSchema,
    answer: answeredSchema,
    handle: async ({ params: { surveyId }, body }, house) => {
      const { name: survey } = await surveyOf(house, surveyId);
      const { store, now, newId, today, device } = house;
      const { requestId, who, why, device: typedOn, ...question } = body;
      if (await store.actWritten(requestId)) {
        return { answered: 0, markedNoneSeen: 0, dataVersion: await store.dataVersion() };
      }
      const signature = { who, why, at: now().toISOString(), device: typedOn ?? device };
      // The act bears the identity of the request, so that it is known when it comes again.
      const asRequest: typeof store = {
        ...store,
        apply: (changes, signed) => store.apply(changes, signed, () => requestId),
      };
      const tools = { store: asRequest, signature, newId, today: today() };
      const result = await whenFree(() => answerProblem({ ...question, survey }, tools), house);
      const { answered, markedNoneSeen, theirs, dataVersion } = result;
      if (theirs !== null) throw new Refusal('answer-changed', {}, { theirs: givenAnswer(theirs) });
      return { answered: answered.length, markedNoneSeen, dataVersion };
    },
  }),
  route({
    method: 'get',
    path: '/api/history',
    summary: 'what changed, by whom, when and why; newest last',
    query: historyQuery,
    answer: historyListSchema,
    handle: async ({ query, language }, house) => {
      const { record: recordId, swim, ...names } = query;
      const request = { ...names, recordId, swim: swim ?? null };
      return jsonText(await house.read({ task: 'history', request, language }));
    },
  }),
];

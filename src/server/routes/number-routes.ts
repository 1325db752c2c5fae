/** Densities, sizes, and where a number comes from; the report page. */

import * as z from 'zod';
import { defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import { densityListSchema, explainSchema, sizesListSchema } from '../../tasks/sheets/answer-schemas.ts';
import { optionalText, scopes, surveyOf, surveyParams } from '../common-schemas.ts';
import { jsonText, route } from '../route.ts';
import { reportPolicy } from '../security-headers.ts';

const confidence = z.coerce.number().min(0.5).max(0.999).default(0.95);
const densityQuery = z.object({
  by: scopes.default('survey'),
  species: optionalText,
  interval: z.enum(['clumped', 'lognormal', 't', 'percentile', 'bca']).default('clumped'),
  confidence,
  acceptWho: optionalText,
  acceptWhy: optionalText,
});
const sizesQuery = z.object({
  by: scopes.default('survey'),
  species: optionalText,
  limitMm: z.coerce.number().positive().optional(),
  classMm: z.coerce.number().min(1).max(1000).default(20),
  confidence,
});
const reportQuery = z.object({
  positions: z.enum(['exact', 'rounded', 'none']).default('rounded'),
  decision: optionalText,
});

export const numberRoutes = [
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/densities',
    summary: 'animals per hectare and in stock, with intervals',
    params: surveyParams,
    query: densityQuery,
    answer: densityListSchema,
    handle: async ({ params, query, language }, house) => {
      const { name: survey } = await surveyOf(house, params.surveyId);
      const { species, acceptWho: who, acceptWhy: why, ...chosen } = query;
      const acceptance = who !== null && why !== null ? { who, why } : null;
      const settings = { ...defaultDensitySettings, ...chosen, acceptance };
      return jsonText(await house.read({ task: 'densities', survey, species, settings, language }));
    },
  }),
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/sizes',
    summary: 'lengths raised to the counts',
    params: surveyParams,
    query: sizesQuery,
    answer: sizesListSchema,
    handle: async ({ params, query, language }, house) => {
      const { name: survey } = await surveyOf(house, params.surveyId);
      const request = { ...query, survey, limitMm: query.limitMm ?? null };
      return jsonText(await house.read({ task: 'sizes', request, language }));
    },
  }),
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/explain',
    summary: 'stations, belts and animals behind a number',
    params: surveyParams,
    query: z.object({ species: z.string().min(1), station: optionalText }),
    answer: explainSchema,
    handle: async ({ params, query, language }, house) => {
      const { name: survey } = await surveyOf(house, params.surveyId);
      return jsonText(await house.read({ task: 'explain', request: { ...query, survey }, language }));
    },
  }),
  route({
    method: 'get',
    path: '/report/{surveyId}',
    summary: 'the report page, made at once',
    params: surveyParams,
    query: reportQuery,
    answer: null,
    handle: async ({ params, query, language, signal }, house) => {
      const { name: survey } = await surveyOf(house, params.surveyId);
      const order = {
        ...query,
        task: 'report',
        survey,
        classMm: 20,
        today: house.today(),
        language,
      } as const;
      return reportResponse(await house.work.long(order, { signal, onStep: () => {} }));
    },
  }),
];

export function reportResponse(html: string): Response {
  const headers = { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': reportPolicy };
  return new Response(html, { headers });
}

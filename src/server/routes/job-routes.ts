/** Long work: started, watched, given up, its result fetched. */

import * as z from 'zod';
import { jobListSchema, jobSchema, startReportSchema } from '../../tasks/sheets/answer-schemas.ts';
import { surveyOf } from '../common-schemas.ts';
import { jobEvents } from '../job-events.ts';
import { jsonText, route } from '../route.ts';
import { reportResponse } from './number-routes.ts';

const params = z.object({ jobId: z.uuid() });
const importQuery = z.object({
  name: z.string().min(1).max(300),
  who: z.string().min(1).max(200),
  why: z.string().min(1).max(200).default('import'),
  dryRun: z.enum(['yes', 'no']).default('no'),
});

export const jobRoutes = [
  route({
    method: 'post',
    path: '/api/jobs/report',
    summary: 'starts the report page',
    body: startReportSchema,
    status: 202,
    answer: jobSchema,
    handle: async ({ body, language }, house) => {
      const { surveyId, ...chosen } = body;
      const { name: survey } = await surveyOf(house, surveyId);
      return house.jobs.start('report', {
        task: 'report',
        survey,
        ...chosen,
        today: house.today(),
        language,
      });
    },
  }),
  route({
    method: 'post',
    path: '/api/jobs/import',
    summary: 'starts the import of one CSV or XLSX; the body is its bytes',
    query: importQuery,
    bytes: { accepts: ['application/octet-stream'], limitMb: 200 },
    status: 202,
    answer: jobSchema,
    handle: async ({ query, bytes, language }, { jobs, now, device }) => {
      const { name, who, why, dryRun } = query;
      const signature = { who, why, at: now().toISOString(), device };
      return jobs.start('import', {
        task: 'import',
        name,
        bytes,
        dryRun: dryRun === 'yes',
        signature,
        language,
      });
    },
  }),
  route({
    method: 'get',
    path: '/api/jobs',
    summary: 'jobs since the server was started',
    answer: jobListSchema,
    handle: async (_, { jobs }) => ({ jobs: jobs.all() }),
  }),
  route({
    method: 'get',
    path: '/api/jobs/{jobId}',
    summary: 'one job',
    params,
    answer: jobSchema,
    handle: async ({ params: { jobId } }, { jobs }) => jobs.find(jobId),
  }),
  route({
    method: 'get',
    path: '/api/jobs/{jobId}/events',
    summary: 'the job at every change, as server-sent events',
    params,
    answer: null,
    handle: async ({ params: { jobId } }, { jobs }) => jobEvents(jobs, jobId),
  }),
  route({
    method: 'get',
    path: '/api/jobs/{jobId}/result',
    summary: 'the report as HTML, the import as JSON',
    params,
    answer: null,
    handle: async ({ params: { jobId } }, { jobs }) => {
      const result = jobs.result(jobId);
      return jobs.find(jobId).kind === 'report' ? reportResponse(result) : jsonText(result);
    },
  }),
  route({
    method: 'delete',
    path: '/api/jobs/{jobId}',
    summary: 'cancels a job',
    params,
    answer: jobSchema,
    handle: async ({ params: { jobId } }, { jobs }) => jobs.cancel(jobId),
  }),
];

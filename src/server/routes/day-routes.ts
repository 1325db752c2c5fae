/** Boat days. Times are added up and compared with typed limits; no decompression is computed. */

import * as z from 'zod';
import { dayList, readDay, readyDay } from '../../tasks/sheets/day.ts';
import { savedSchema } from '../../tasks/sheets/sheet-schemas.ts';
import { dayInBookSchema, dayListSchema, saveDaySchema } from '../../tasks/sheets/survey-schemas.ts';
import { surveyOf, surveyParams, toolsNow } from '../common-schemas.ts';
import { Refusal } from '../refusal.ts';
import { route } from '../route.ts';
import { written } from '../written.ts';

const params = z.object({ surveyId: z.uuid(), date: z.iso.date() });
const path = '/api/surveys/{surveyId}/days/{date}';

export const dayRoutes = [
  route({
    method: 'get',
    path: '/api/surveys/{surveyId}/days',
    summary: 'boat days, oldest first',
    params: surveyParams,
    answer: dayListSchema,
    handle: async ({ params: { surveyId }, language }, house) => {
      await surveyOf(house, surveyId);
      const days = await dayList(surveyId, { ...toolsNow(house), language });
      return { dataVersion: await house.store.dataVersion(), days };
    },
  }),
  route({
    method: 'get',
    path,
    summary: 'one boat day, its dives added up',
    params,
    answer: dayInBookSchema,
    handle: async ({ params: place, language }, house) => {
      await surveyOf(house, place.surveyId);
      return readDay(place, { ...toolsNow(house), language });
    },
  }),
  route({
    method: 'put',
    path,
    summary: 'saves a boat day',
    params,
    body: saveDaySchema,
    answer: savedSchema,
    handle: async ({ params: place, body, language }, house) => {
      await surveyOf(house, place.surveyId);
      return house.queue.save({
        thing: `${place.surveyId} ${place.date}`,
        ready: async () => {
          const ready = await readyDay(place, body, toolsNow(house));
          if (ready.state !== 'stale') return written(ready, house);
          const theirs = await readDay(place, { ...toolsNow(house), language });
          throw new Refusal('day-changed', {}, { theirs });
        },
      });
    },
  }),
];

/** Sheets: one read, one saved. */

import * as z from 'zod';
import { compareSheets } from '../../tasks/sheets/compare-sheets.ts';
import { readSheet } from '../../tasks/sheets/read-sheet.ts';
import { readySheet } from '../../tasks/sheets/save-sheet.ts';
import { readySheetAway } from '../../tasks/sheets/sheet-away.ts';
import {
  savedSchema,
  saveSheetSchema,
  sheetAwaySchema,
  sheetInBookSchema,
} from '../../tasks/sheets/sheet-schemas.ts';
import { surveyOf, toolsNow } from '../common-schemas.ts';
import { invalidRequest } from '../mount.ts';
import { Refusal } from '../refusal.ts';
import { route } from '../route.ts';
import { written } from '../written.ts';

const params = z.object({ surveyId: z.uuid(), stationId: z.uuid() });
const path = '/api/surveys/{surveyId}/sheets/{stationId}';

export const sheetRoutes = [
  route({
    method: 'get',
    path,
    summary: 'one sheet with its revision',
    params,
    answer: sheetInBookSchema,
    handle: async ({ params: place }, house) => {
      const sheet = await readSheet(place, toolsNow(house));
      if (sheet !== null) return sheet;
      await surveyOf(house, place.surveyId);
      throw new Refusal('no-such-station');
    },
  }),
  route({
    method: 'put',
    path,
    summary: 'saves a sheet; answered when it is on disk',
    params,
    body: saveSheetSchema,
    answer: savedSchema,
    handle: async ({ params: place, body }, house) => {
      const { station } = body.sheet;
      if (station.id !== place.stationId || station.surveyId !== place.surveyId) {
        const issue = { code: 'custom', path: ['sheet', 'station'], params: { right: 'address-station' } };
        throw invalidRequest([issue], body);
      }
      return house.queue.save({
        thing: place.stationId,
        ready: async () => {
          const ready = await readySheet(place, body, toolsNow(house));
          if (ready.state !== 'stale') return written(ready, house);
          const { theirs, base } = ready;
          const yours = body.sheet;
          const differences = theirs === null ? [] : compareSheets(theirs.sheet, yours);
          throw new Refusal('sheet-changed', {}, { theirs, yours, base, differences });
        },
      });
    },
  }),
  route({
    method: 'post',
    path: `${path}/away`,
    summary: 'withdraws a sheet typed by mistake, with a reason; refused while photos hang on its station',
    params,
    body: sheetAwaySchema,
    answer: savedSchema,
    handle: async ({ params: place, body }, house) =>
      house.queue.save({
        thing: place.stationId,
        ready: async () => {
          const ready = await readySheetAway(place, body, toolsNow(house));
          if (ready.state === 'no such station') throw new Refusal('no-such-station');
          if (ready.state === 'photos hang') throw new Refusal('photos-on-station', { photos: ready.photos });
          if (ready.state !== 'stale') return written(ready, house);
          throw new Refusal('sheet-not-as-seen', {}, { theirs: ready.theirs });
        },
      }),
  }),
];

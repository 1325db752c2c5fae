/** Every route of the server, in the order of an officer's evening. */

import type { Route } from './route.ts';
import { dayRoutes } from './routes/day-routes.ts';
import { jobRoutes } from './routes/job-routes.ts';
import { numberRoutes } from './routes/number-routes.ts';
import { photoRoutes } from './routes/photo-routes.ts';
import { questionRoutes } from './routes/question-routes.ts';
import { sheetRoutes } from './routes/sheet-routes.ts';
import { surveyRoutes } from './routes/survey-routes.ts';

export const routes: readonly Route[] = [
  ...surveyRoutes,
  ...sheetRoutes,
  ...dayRoutes,
  ...questionRoutes,
  ...numberRoutes,
  ...photoRoutes,
  ...jobRoutes,
];

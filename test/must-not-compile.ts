/**
 * Things that must not compile. Each `@ts-expect-error` is a test: if the line below it ever compiles,
 * the type check of the whole project fails.
 */

import { stratumSamples } from '../src/estimates/density/stratum-sample.ts';
import type { Problem, Reason } from '../src/survey/message.ts';
import type { StationObservation, StationWithTransects } from '../src/survey/observation.ts';
import type { Change } from '../src/survey/store.ts';

declare const station: StationWithTransects;

// @ts-expect-error an observation is made by observeSpecies alone: nobody declares a zero by hand
export const handMade: StationObservation = {
  station,
  state: 'observed',
  animals: 0,
  searchedAreaCm2: 1,
  selection: null,
};

// @ts-expect-error estimators take observations, never bare counts
stratumSamples([{ animals: 3, searchedAreaCm2: 800_000 }], null, { estimator: 'auto', selection: 'all' });

export const reason: Reason = {
  // @ts-expect-error a reason without a sentence in the catalogue does not exist
  code: 'because',
  parameters: {},
};

// @ts-expect-error a problem says where it is
export const placeless: Problem = {
  code: 'not-a-number',
  severity: 'stop',
  value: 'x',
  parameters: {},
  suggestion: null,
};

export const mixedUp: Change = {
  kind: 'station',
  recordId: '1',
  // @ts-expect-error a change carries the record of its own kind, here no stratum
  after: { id: '1', name: 'reef', areaHa: 3 },
};

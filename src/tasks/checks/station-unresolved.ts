import { stationCheck } from './check.ts';

/** A station without a single transect: blank is not zero. */
export const check = stationCheck('station-unresolved', ({ transects, laterSwims }) =>
  transects.length + laterSwims.length === 0 ? {} : null,
);

import { stationCheck } from './check.ts';
import { plannedEffort } from './planned-effort.ts';

/** A seventh belt where six were to be swum: extra effort, or a sheet of another station. */
export const check = stationCheck('more-transects-than-planned', ({ transects }, { inHand }) => {
  const planned = plannedEffort(inHand).transects;
  if (planned === null || transects.length <= planned) return null;
  const last = transects.slice(planned).map(({ record }) => record.code);
  return { value: transects.length, parameters: { planned, last: last.join(', ') } };
});

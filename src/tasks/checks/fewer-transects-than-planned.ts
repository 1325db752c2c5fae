import { stationCheck } from './check.ts';
import { plannedEffort } from './planned-effort.ts';

/** Belts that are neither done nor marked lost or not done: nobody can tell whether they were empty. */
export const check = stationCheck('fewer-transects-than-planned', ({ transects, record }, { inHand }) => {
  const planned = plannedEffort(inHand).transects;
  if (planned === null || transects.length === 0 || transects.length >= planned) return null;
  if (record.note !== null) return null;
  return { value: transects.length, parameters: { planned, missing: planned - transects.length } };
});

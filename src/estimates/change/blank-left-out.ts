import type { Reason } from '../../survey/message.ts';
import type { StationObservation } from '../../survey/observation.ts';

/** Stations that wait for an answer and were let pass by name: they are named with the result, since a blank may be a zero. */
export function blankLeftOut(unresolved: readonly StationObservation[]): readonly Reason[] {
  if (unresolved.length === 0) return [];
  const stations = unresolved.map((one) => one.station.record.code).join(', ');
  return [{ code: 'change-blank-left-out', parameters: { stations } }];
}

import { nearestName } from '../../survey/nearest-name.ts';
import { stationCheck } from './check.ts';
import { plannedFor } from './ground.ts';

/**
 * A station of a planned survey that its plan does not have, has dropped, or keeps as a spare nobody called up. One
 * that is marked random is asked by hand-picked-marked-random; one marked hand-picked says itself that no draw gave it.
 */
export const check = stationCheck('station-not-in-plan', ({ record }, { inHand, ground }) => {
  const planned = plannedFor(inHand.survey.name, ground);
  if (planned === null || record.selection === 'hand-picked') return null;
  const its = planned.get(record.code);
  const plan = its?.plan ?? [...planned.values()][0]?.plan ?? '';
  if (its !== undefined) {
    if (its.station.role === 'planned') return null;
    return { value: states[its.station.role], parameters: { plan } };
  }
  if (record.selection === 'random') return null;
  return { value: 'not', parameters: { plan }, suggestion: nearestName(record.code, planned.keys()) };
});

const states = { spare: 'a spare that nobody called up', dropped: 'dropped' } as const;

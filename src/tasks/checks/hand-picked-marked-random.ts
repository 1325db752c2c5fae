import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import type { StationWithTransects } from '../../survey/observation.ts';
import { type CheckContext, stationCheck } from './check.ts';
import { plannedFor } from './ground.ts';
import { visitedSpot } from './positions.ts';

/**
 * A station marked random or fixed that no plan drew, or that was picked by hand in a plan or in another survey: it
 * speaks for itself and not for the area, for life. Codes are used again, so in another survey the same code counts
 * only within 100 m (ours).
 */
export const check = stationCheck('hand-picked-marked-random', (station, context) => {
  const { selection } = station.record;
  if (selection !== 'random' && selection !== 'fixed') return null;
  const why = whyNotDrawn(station, context);
  return why === null ? null : { value: selection, parameters: { why }, suggestion: 'hand-picked' };
});

function whyNotDrawn(station: StationWithTransects, context: CheckContext): string | null {
  const { code, selection } = station.record;
  const { inHand, ground } = context;
  const planned = plannedFor(inHand.survey.name, ground);
  const its = planned?.get(code);
  if (its?.station.selection === 'hand-picked') return `plan ${its.plan} has it as picked by hand`;
  const before = pickedBefore(station, context);
  if (before !== null) return `it was picked by hand in ${before}`;
  if (planned === null || its !== undefined || selection === 'fixed') return null;
  return `plan ${[...planned.values()][0]?.plan ?? ''} did not draw it`;
}

const samePlaceM = 100;

function pickedBefore({ record }: StationWithTransects, { inHand, ground }: CheckContext): string | null {
  const spot = visitedSpot(record);
  if (spot === null) return null;
  const found = ground.handPicked.find(
    (one) =>
      one.code === record.code &&
      one.surveyId !== inHand.survey.id &&
      roughDistanceM(one.spot, spot) <= samePlaceM,
  );
  return found?.where ?? null;
}

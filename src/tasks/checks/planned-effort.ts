/** What a belt and a station of a survey were meant to be: by the protocol, else by what nearly all of them are. */

import type { SurveyInHand } from '../../survey/observation.ts';
import { isSearched } from './check.ts';

export interface PlannedEffort {
  readonly lengthM: number | null;
  readonly widthM: number | null;
  readonly transects: number | null;
  readonly from: 'protocol' | 'survey';
}

/** Worked out once per survey in hand: three checks ask for it. */
export function plannedEffort(inHand: SurveyInHand): PlannedEffort {
  let planned = remembered.get(inHand);
  if (planned === undefined) {
    planned = workOut(inHand);
    remembered.set(inHand, planned);
  }
  return planned;
}

const remembered = new WeakMap<SurveyInHand, PlannedEffort>();

function workOut({ protocol, stations }: SurveyInHand): PlannedEffort {
  if (protocol !== null) {
    const { lengthM, widthM, transectsPerStation, layout } = protocol;
    const timed = layout === 'timed';
    return {
      lengthM: timed ? null : lengthM,
      widthM: timed ? null : widthM,
      transects: transectsPerStation,
      from: 'protocol',
    };
  }
  const belts = stations.flatMap(({ transects }) => transects.filter(isSearched));
  const whole = belts.filter(({ status }) => status === 'done');
  return {
    lengthM: nearlyAll(whole.map(({ record }) => record.lengthM)),
    widthM: nearlyAll(belts.map(({ record }) => record.widthM)),
    transects: nearlyAll(stations.map(({ transects }) => transects.length)),
    from: 'survey',
  };
}

/** The value of at least three quarters of at least eight: fewer agree by chance, or not at all. */
function nearlyAll(values: readonly (number | null)[]): number | null {
  if (values.length < 8) return null;
  const times = new Map<number | null, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  for (const [value, n] of times) if (4 * n >= 3 * values.length) return value;
  return null;
}

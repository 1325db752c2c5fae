/** Second swims that are in no comparison of divers, by belt and reason. */

import type { Reason } from '../../survey/message.ts';
import { classifyTransect, type SurveyInHand, type TransectWithTallies } from '../../survey/observation.ts';

/**
 * Which later swims are not set against a first one, and why: another area was searched, one of the two was lost or
 * never answered, or it is neither swim 1 nor swim 2 of its belt. Empty where every later swim is compared.
 */
export function swimsLeftOut(inHand: SurveyInHand): readonly Reason[] {
  const otherArea: string[] = [];
  const notSearched: string[] = [];
  const alone: string[] = [];
  for (const { record, transects, laterSwims } of inHand.stations) {
    for (const later of laterSwims) {
      const { code, swim } = later.record;
      const first = transects.find((one) => one.record.code === code && one.record.swim + 1 === swim);
      const belt = `${record.code}/${code}`;
      if (first === undefined) alone.push(`${belt} (${swim})`);
      else if (first.areaCm2 !== later.areaCm2) otherArea.push(belt);
      else if (!searchedBoth(inHand, first, later)) notSearched.push(belt);
    }
  }
  return [
    ...named('observers-swim-other-area', otherArea),
    ...named('observers-swim-not-searched', notSearched),
    ...named('observers-swim-alone', alone),
  ];
}

function searchedBoth(
  { targets }: SurveyInHand,
  first: TransectWithTallies,
  later: TransectWithTallies,
): boolean {
  const wasSearched = (transect: TransectWithTallies, i: number) => {
    const state = classifyTransect(transect, targets[i]!);
    return state === 'counted' || state === 'zero';
  };
  return targets.some((_, i) => wasSearched(first, i) && wasSearched(later, i));
}

type Code = 'observers-swim-other-area' | 'observers-swim-not-searched' | 'observers-swim-alone';

function named(code: Code, belts: readonly string[]): readonly Reason[] {
  return belts.length === 0 ? [] : [{ code, parameters: { belts: belts.join(', '), count: belts.length } }];
}

/** How the belts of a plan are worked: as typed, else by the protocol. */

import {
  type Planned,
  type PlanProblem,
  planned,
  planProblem,
  refused,
} from '../../planning/size/plan-problem.ts';
import { numberProblems, wholeProblems } from '../../planning/size/typed-numbers.ts';
import type { Store } from '../../survey/store.ts';
import { protocolNamed } from './protocol-named.ts';

export interface TypedSeries {
  readonly belts: number | null;
  readonly lengthM: number | null;
  readonly gapM: number | null;
  readonly widthM: number | null;
}

export interface SeriesToLay {
  readonly transects: number;
  readonly lengthM: number;
  readonly gapM: number;
  readonly widthM: number | null;
}

export async function seriesToLay(
  store: Store,
  typed: TypedSeries,
  protocolName: string | null,
): Promise<Planned<SeriesToLay>> {
  const named = await protocolNamed(store, protocolName);
  const protocol = named.value;
  if (protocol === null && named.problems.length > 0) return refused(named.problems);
  const layout = protocol?.layout ?? 'series';
  if (layout !== 'series')
    return refused([planProblem('plan-layout-not-laid', { layout: layoutWords[layout] })]);
  const transects = typed.belts ?? protocol?.transectsPerStation ?? null;
  const lengthM = typed.lengthM ?? protocol?.lengthM ?? null;
  const gapM = typed.gapM ?? protocol?.gapM ?? (transects === 1 ? 0 : null);
  const widthM = typed.widthM ?? protocol?.widthM ?? null;
  const missing = [
    ...(transects === null ? ['the number of belts (--belts 6)'] : []),
    ...(lengthM === null ? ['their length (--length 40)'] : []),
    ...(gapM === null ? ['the gap between them (--gap 10)'] : []),
  ];
  if (transects === null || lengthM === null || gapM === null) {
    return refused([planProblem('plan-belts-unknown', { missing: missing.join(', ') })]);
  }
  const wrong: readonly PlanProblem[] = [
    ...wholeProblems('belts', transects, { atLeast: 1, atMost: 50 }),
    ...numberProblems('beltLengthM', lengthM, { above: 0, atMost: 2000 }),
    ...numberProblems('gapM', gapM, { atLeast: 0, atMost: 2000 }),
    ...(widthM === null ? [] : numberProblems('beltWidthM', widthM, { above: 0, atMost: 200 })),
  ];
  return wrong.length > 0 ? refused(wrong) : planned({ transects, lengthM, gapM, widthM });
}

const layoutWords = { parallel: 'parallel belts', quadrats: 'quadrats', timed: 'timed searches', series: '' };

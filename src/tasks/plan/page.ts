/** Gathers what a plan page says. */

import type { PlanPageInput } from '../../report/plan-page/plan-page-input.ts';
import type { Store } from '../../survey/store.ts';
import { expectedPrecision } from './expected-precision.ts';
import { planShown } from './show.ts';

export interface PlanPageRequest
  extends Pick<
    PlanPageInput,
    'stationsPerDay' | 'dayCost' | 'positionDetail' | 'programVersion' | 'generatedOn'
  > {
  readonly plan: string;
  /** The earlier survey behind the precision; null for the latest one. */
  readonly pilot: string | null;
}

export async function planPageInput(store: Store, request: PlanPageRequest): Promise<PlanPageInput> {
  const { plan, against, dataVersion } = await planShown(store, request.plan);
  const { name, invented } = await store.info();
  const { stationsPerDay, dayCost, positionDetail, programVersion, generatedOn } = request;
  return {
    ...{ book: { name, invented }, name: plan.name, content: plan.content, against, dataVersion },
    areas: await store.all('mapArea'),
    precision: await expectedPrecision(store, plan.content, request.pilot),
    ...{ stationsPerDay, dayCost, positionDetail, programVersion, generatedOn },
  };
}

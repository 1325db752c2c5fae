/** The plan that was asked for by name, and the plans of a survey. */

import { Failure } from '../../survey/failure.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import type { Store } from '../../survey/store.ts';
import type { Plan } from '../../survey/words.ts';

export async function planNamed(store: Store, name: string): Promise<Plan> {
  const plans = await store.all('plan');
  const plan = plans.find((one) => one.name === name);
  if (plan !== undefined) return plan;
  const known = plans.map((one) => one.name);
  const nearest = nearestName(name, known) ?? '';
  throw new Failure('unknown-plan-name', { name, nearest, known: known.slice(0, 12).join(', ') });
}

/** Who acts, with what: given by the edge. */
export interface PlanTools {
  readonly store: Store;
  /** Who, when and on which device; the reason is said by the task. */
  readonly signature: { readonly who: string; readonly at: string; readonly device: string };
  readonly newId: () => string;
  /** ISO day. */
  readonly today: string;
}

/** One act of revision: the plan as it stands from now on. */
export async function keepPlan(tools: PlanTools, plan: Plan, why: string): Promise<void> {
  const { store, signature, newId } = tools;
  await store.apply([{ kind: 'plan', recordId: plan.id, after: plan }], { ...signature, why }, newId);
}

/** A station that cannot be worked gives its place to the next of the list; the reason stays with the plan. */

import { replaceStation } from '../../planning/draw/replace-station.ts';
import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { Plan } from '../../survey/words.ts';
import { drawOf, withDraw } from './plan-content.ts';
import { keepPlan, type PlanTools, planNamed } from './plan-named.ts';

export interface ReplaceResult {
  readonly plan: Plan;
  /** Null after a stop. */
  readonly dropped: PlannedStation | null;
  readonly replacement: PlannedStation | null;
  readonly sparesLeft: number;
  readonly problems: readonly PlanProblem[];
  readonly dataVersion: string;
}

export async function planReplace(
  request: { readonly name: string; readonly code: string; readonly why: string },
  tools: PlanTools,
): Promise<ReplaceResult> {
  const plan = await planNamed(tools.store, request.name);
  const { who } = tools.signature;
  const { code, why: reason } = request;
  const done = replaceStation(drawOf(plan.content), { code, reason, who, date: tools.today });
  const nothing = { plan, dropped: null, replacement: null, sparesLeft: 0 };
  if (done.value === null) {
    const problems = done.problems.map((problem) => withNearest(problem, plan));
    return { ...nothing, problems, dataVersion: await tools.store.dataVersion() };
  }
  const content = withDraw(plan.content, done.value);
  const after = { ...plan, content };
  await keepPlan(tools, after, `plan ${plan.name}: ${code} replaced: ${reason.trim()}`);
  const stratum = content.stations.find((one) => one.code === code)!.stratum;
  return {
    plan: after,
    dropped: content.stations.find((one) => one.code === code)!,
    replacement: content.stations.find((one) => one.replaces === code) ?? null,
    sparesLeft: content.stations.filter((one) => one.role === 'spare' && one.stratum === stratum).length,
    problems: done.problems,
    dataVersion: await tools.store.dataVersion(),
  };
}

function withNearest(problem: PlanProblem, { content }: Plan): PlanProblem {
  if (problem.code !== 'plan-unknown-station') return problem;
  const code = String(problem.parameters['code']);
  const known = content.stations.map((one) => one.code);
  const nearest = nearestName(code, known) ?? '';
  return planProblem('plan-unknown-station', { code, nearest });
}

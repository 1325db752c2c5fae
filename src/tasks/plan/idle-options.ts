import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import type { PlanDrawRequest } from './draw-request.ts';

/** What was asked for and would have no effect: refused, because a plan that ignores its officer looks like one that obeys. */
export function idleOptions(request: PlanDrawRequest): readonly PlanProblem[] {
  const { stations, total, strata, panel, spares } = request;
  const needs = (option: string, needed: string) =>
    planProblem('plan-option-needs', { option, needs: needed });
  const isByArea = total !== null && total.rule === 'proportional';
  const planned = stations.map(({ stratum }) => stratum);
  const elsewhere = spares.filter(({ stratum }) =>
    total === null ? !planned.includes(stratum) : strata.length > 0 && !strata.includes(stratum),
  );
  return [
    ...(strata.length > 0 && total === null ? [needs('--stratum', '--total')] : []),
    ...(panel?.survey === '' ? [needs('--panel', '--revisit')] : []),
    ...(isByArea && total.pilot !== null ? [needs('--pilot', '--rule neyman')] : []),
    ...(isByArea && total.species.length > 0 ? [needs('--species', '--rule neyman')] : []),
    ...(total?.rule === 'neyman' && total.pilot === null ? [needs('--rule neyman', '--pilot')] : []),
    ...elsewhere.map(({ stratum }) => needs(`--spares "${stratum}"`, 'stations in that stratum')),
  ];
}

import type { LaidStation } from '../../planning/ground/lay-stations.ts';
import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import type { PlanContent } from '../../survey/plan-words.ts';
import type { LayRequest } from './lay.ts';
import { metresInside } from './metres-inside.ts';

/** What the officer must hear before the boat leaves; spares only where they do not fit. */
export function layingFindings(
  content: PlanContent,
  laid: ReadonlyMap<string, LaidStation>,
  { date, along }: Pick<LayRequest, 'date' | 'along'>,
): readonly PlanProblem[] {
  const problems: PlanProblem[] = [];
  for (const { code, stratum, role, belts } of content.stations) {
    const search = laid.get(code)?.search;
    if (search === undefined) continue;
    if (!search.startsInside) problems.push(planProblem('plan-start-off-ground', { code, stratum }));
    if (!search.fits) {
      const { insideM, inside } = search.best;
      const bearingDeg = Math.round(belts[0]!.trueBearingDeg) % 360;
      const numbers = { insideM: metresInside(insideM, inside.laidM), laidM: inside.laidM, bearingDeg };
      problems.push(planProblem('plan-belts-do-not-fit', { code, stratum, ...numbers }));
    } else if (search.slackDeg < narrowDeg && role === 'planned') {
      problems.push(planProblem('plan-belts-narrow-way', { code, slackDeg: search.slackDeg }));
    }
    if (laid.get(code)!.declination.cautions.includes('weak-horizontal-field'))
      problems.push(planProblem('plan-weak-field', { code }));
  }
  const asked = new Set(along.map(({ code }) => code));
  const free = [...laid.values()].filter(({ code, search }) => isFree(search) && !asked.has(code));
  if (free.length > 0) problems.push(planProblem('plan-bearing-free', { stations: free.length }));
  const outdated = [...laid.values()].find(({ declination }) =>
    declination.cautions.includes('outside-model-validity'),
  )?.declination;
  if (outdated === undefined) return problems;
  const { model, validFromYear, validToYear } = outdated;
  return [
    ...problems,
    planProblem('plan-model-outdated', {
      model,
      validFromYear: String(validFromYear),
      validToYear: String(validToYear),
      date,
    }),
  ];
}

/** No bearing does worse: the search then stays with the first it tried, which is north. */
function isFree({ fits, slackDeg, best }: LaidStation['search']): boolean {
  return fits && slackDeg >= 180 && best.bearingDeg === 0;
}

/** Divers hold a compass course to about this (our own choice). */
const narrowDeg = 5;

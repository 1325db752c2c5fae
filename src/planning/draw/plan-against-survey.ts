import type { PlanContent } from '../../survey/plan-words.ts';

export interface PlanAgainstStratum {
  readonly stratum: string;
  /** Stations the plan asks for now, replacements counted in the place of what they replace, hand-picked ones beside. */
  readonly planned: number;
  readonly visited: number;
  /** Stations given up, with the next of the list or with none in their place. */
  readonly replaced: number;
  readonly handPickedPlanned: number;
  readonly handPickedVisited: number;
  /** Codes of planned stations that the survey does not have. */
  readonly notVisited: readonly string[];
}

export interface PlanAgainstSurvey {
  readonly strata: readonly PlanAgainstStratum[];
  readonly planned: number;
  readonly visited: number;
  readonly replaced: number;
  /** Codes worked that the plan does not ask for: dropped ones, spares nobody called up, and strangers. */
  readonly notInPlan: readonly string[];
}

/**
 * What became of a plan: stations planned, visited and replaced, by stratum, with the codes of those that differ.
 *
 * A station counts as visited when the survey has its code, whatever came of it. Codes must agree to the letter;
 * capitals do not count.
 */
export function planAgainstSurvey(
  plan: PlanContent,
  stations: readonly { readonly code: string }[],
): PlanAgainstSurvey {
  const bare = (code: string) => code.trim().toLowerCase();
  const worked = new Set(stations.map(({ code }) => bare(code)));
  const asked = plan.stations.filter(({ role }) => role === 'planned');
  const strata = plan.strata.map(({ name }): PlanAgainstStratum => {
    const own = asked.filter(({ stratum }) => stratum === name);
    const picked = own.filter(({ selection }) => selection === 'hand-picked');
    const drawn = own.filter(({ selection }) => selection !== 'hand-picked');
    const visited = (some: typeof own) => some.filter(({ code }) => worked.has(bare(code))).length;
    return {
      ...{ stratum: name, planned: drawn.length, visited: visited(drawn) },
      replaced: plan.replacements.filter(({ stratum }) => stratum === name).length,
      ...{ handPickedPlanned: picked.length, handPickedVisited: visited(picked) },
      notVisited: own.filter(({ code }) => !worked.has(bare(code))).map(({ code }) => code),
    };
  });
  const known = new Set(asked.map(({ code }) => bare(code)));
  const total = (of: (row: PlanAgainstStratum) => number) => strata.reduce((sum, row) => sum + of(row), 0);
  return {
    strata,
    ...{ planned: total((row) => row.planned), visited: total((row) => row.visited) },
    replaced: total((row) => row.replaced),
    notInPlan: stations.map(({ code }) => code).filter((code) => !known.has(bare(code))),
  };
}

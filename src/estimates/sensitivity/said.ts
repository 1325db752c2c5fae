/** What is said of a given density, so that it can be seen whether it turns. */

import type { DensityAnswer } from '../answers.ts';
import { shareBelow } from '../status/belief-shares.ts';
import { byDesign } from '../status/compare-density.ts';
import type { ReferenceUsed } from '../status/status-answer.ts';
import { statusClassOf } from '../status/status-class.ts';
import type { Said } from './sensitivity-answer.ts';

/** As the status says it: by the belief where there is one, else by the design. */
export function saidOf(density: DensityAnswer, reference: ReferenceUsed | null): Said | null {
  if (reference === null || density.densityPerHa === null || density.animals === 0) return null;
  const level = reference.content;
  return classified(density.belief === null ? byDesign(density, level) : shareBelow(density.belief, level));
}

export function classified(chance: number | null): Said | null {
  return chance === null ? null : { probabilityBelow: chance, statusClass: statusClassOf(chance) };
}

/** The t and percentile intervals have no chance of their own here: only the log-normal one is a distribution of k1. */
export function designSaid(
  made: DensityAnswer,
  interval: string,
  reference: ReferenceUsed | null,
): Said | null {
  if (interval !== 'lognormal' || reference === null) return null;
  return classified(byDesign(made, reference.content));
}

/** "likely below" and "below" are one statement, more or less sure; turned is what leads to another decision. */
export function side({ statusClass }: Said): 'below' | 'cannot tell' | 'above' {
  if (statusClass === 'cannot tell') return statusClass;
  return statusClass === 'below' || statusClass === 'likely below' ? 'below' : 'above';
}

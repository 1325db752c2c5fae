import type { Reason } from '../../survey/message.ts';
import type { DensityAnswer } from '../answers.ts';
import type { HarvestStock, LowerLimit } from './harvest-answer.ts';

/** The smaller of the two limits, or one of them by name. */
export type LowerUse = 'safer' | 'clumped' | 'lognormal';

export interface LowerChoice {
  /** Answers whose two-sided confidence leaves out on each side what the one-sided limit leaves out below. */
  readonly clumped: DensityAnswer;
  readonly lognormal: DensityAnswer;
  readonly use: LowerUse;
}

/**
 * The stock of a survey with its lower limits, or why there is none: nothing seen, no spread, no area, or held.
 *
 * The lower end of an equal-tailed 80 % interval is the one-sided 90 % limit. For two-sided intervals the clumped-count
 * one keeps its promise best; of its lower end alone the log-normal one does (docs/methods/harvest.md), so the smaller of
 * the two is taken unless one is named. Where the clumped-count interval cannot be
 * made (few stations of a zone) its answer is log-normal already, and then stands alone.
 */
export function countedStock({ clumped, lognormal, use }: LowerChoice): HarvestStock | Reason {
  const { densityPerHa, standardErrorPerHa, degreesOfFreedom, areaHa, totalAnimals } = clumped;
  if (densityPerHa === null)
    return clumped.reason ?? { code: 'no-spread', parameters: { where: clumped.scope.name } };
  if (clumped.animals === 0) return { code: 'none-seen', parameters: { species: clumped.species } };
  if (areaHa === null || totalAnimals === null) {
    return clumped.reason ?? { code: 'area-unknown', parameters: { where: clumped.scope.name } };
  }
  const limits = [limitOf(clumped), limitOf(lognormal)].filter((one) => one !== null);
  const lower = chosen(limits, use);
  if (standardErrorPerHa === null || lower === undefined) {
    return clumped.reason ?? { code: 'no-spread', parameters: { where: clumped.scope.name } };
  }
  return {
    typed: false,
    densityPerHa,
    cv: standardErrorPerHa / densityPerHa,
    degreesOfFreedom,
    areaHa,
    animals: totalAnimals,
    lower,
    otherLower: limits.find(({ method }) => method !== lower.method) ?? null,
    counted: {
      stations: clumped.stations,
      stationsWithSpecies: clumped.stationsWithSpecies,
      animals: clumped.animals,
    },
  };
}

function chosen(limits: readonly LowerLimit[], use: LowerUse): LowerLimit | undefined {
  if (use === 'safer') return limits.toSorted((a, b) => a.animals - b.animals)[0];
  return limits.find(({ method }) => method === use) ?? limits[0];
}

function limitOf({ intervalPerHa, totalInterval, intervalMethod }: DensityAnswer): LowerLimit | null {
  if (intervalPerHa === null || totalInterval === null) return null;
  const method = intervalMethod === 'clumped' ? 'clumped' : 'lognormal';
  return { method, perHa: intervalPerHa[0], animals: totalInterval[0] };
}

import type { Reason } from '../../survey/message.ts';
import type { DensityAnswer } from '../answers.ts';
import { shareBelow } from './belief-shares.ts';
import { compareMethods } from './compare-methods.ts';
import type { MethodUsed } from './count-method.ts';
import { probabilityBelow } from './probability-below.ts';
import type { Comparison, ReferenceUsed } from './status-answer.ts';
import { statusClassOf } from './status-class.ts';

export interface ComparisonSettings {
  /** A reference of another method let through by name. */
  readonly accepted: boolean;
}

/** One density set against one reference, or held with the reason. */
export function compareDensity(
  density: DensityAnswer,
  used: MethodUsed,
  reference: ReferenceUsed,
  settings: ComparisonSettings,
): Comparison {
  const verdict = compareMethods(used, reference.content);
  const limitations = settings.accepted && verdict.held !== null ? [verdict.held] : verdict.limitations;
  const held = settings.accepted ? null : verdict.held;
  const base = { reference, held, limitations, ...nothing };
  if (held !== null) return base;
  if (density.densityPerHa === null) return { ...base, held: density.reason };
  if (density.animals === 0) return { ...base, bound: boundOf(density, reference) };
  const level = { densityPerHa: reference.content.densityPerHa, cv: reference.content.cv };
  const designProbabilityBelow = byDesign(density, level);
  const fromBelief = density.belief === null ? null : shareBelow(density.belief, level);
  const chance = fromBelief ?? designProbabilityBelow;
  if (chance === null) return { ...base, held: withoutSpread(density) };
  return {
    ...base,
    probabilityBelow: chance,
    probabilityFrom: fromBelief === null ? 'design' : 'clumped-count belief',
    designProbabilityBelow,
    statusClass: statusClassOf(chance),
  };
}

const nothing = {
  probabilityBelow: null,
  probabilityFrom: null,
  designProbabilityBelow: null,
  statusClass: null,
  bound: null,
} as const;

export function byDesign(
  { densityPerHa, standardErrorPerHa, degreesOfFreedom }: DensityAnswer,
  level: { readonly densityPerHa: number; readonly cv: number | null },
): number | null {
  if (densityPerHa === null || densityPerHa === 0 || standardErrorPerHa === null) return null;
  return probabilityBelow({ densityPerHa, cv: standardErrorPerHa / densityPerHa, degreesOfFreedom }, level);
}

/** The clumped bound, the wider of the two: none seen is never "absent". */
function boundOf(density: DensityAnswer, reference: ReferenceUsed): Comparison['bound'] {
  const perHa = density.intervalPerHa?.[1] ?? density.scatteredBoundPerHa;
  return perHa === null || perHa === undefined
    ? null
    : { perHa, isBelow: perHa < reference.content.densityPerHa };
}

function withoutSpread(density: DensityAnswer): Reason {
  return density.reason ?? { code: 'no-spread', parameters: { where: density.scope.name } };
}

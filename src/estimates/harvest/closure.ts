import type { Closure } from './harvest-answer.ts';

export interface ClosureRule {
  readonly limitPerHa: number;
  readonly source: string;
  /** Greatest chance of being below the limit that the manager will bear. */
  readonly risk: number;
}

export interface ChanceBelow {
  /** Share of the clumped-count belief; null where there is none. */
  readonly ofBelief: number | null;
  readonly byDesign: number | null;
  /** Upper bound of the density where none was seen, else null. */
  readonly noneSeenBoundPerHa: number | null;
}

/**
 * The closure rule: closed where the chance that the density lies below the limit is greater than the chosen risk.
 *
 * The chance is that of the belief where there is one (the default of the house), else of the design. The belief errs
 * upward on purpose, so where the design alone says that the risk is exceeded, it closes: as with the lower limit, of
 * which the smaller is taken, a stock is never open by one of two reckonings and closed by the other. Where none was
 * seen there is no chance, and nothing that speaks for a density above the limit: closed. Null where a density has no
 * spread: nothing can be told then, and the answer says so. Limit and risk are the manager's; there is no default limit. Source: METHODS k.
 */
export function closureOf(rule: ClosureRule, chance: ChanceBelow): Closure | null {
  const { ofBelief, byDesign } = chance;
  const onlyDesignCloses = ofBelief !== null && ofBelief <= rule.risk && (byDesign ?? 0) > rule.risk;
  const isDesign = ofBelief === null || onlyDesignCloses;
  const probabilityBelow = isDesign ? byDesign : ofBelief;
  const boundPerHa = chance.noneSeenBoundPerHa;
  if (boundPerHa !== null) return { ...rule, ...noneSeen, boundPerHa };
  if (probabilityBelow === null) return null;
  return {
    ...rule,
    boundPerHa,
    probabilityBelow,
    probabilityFrom: isDesign ? 'design' : 'clumped-count belief',
    beliefProbabilityBelow: ofBelief,
    designProbabilityBelow: byDesign,
    closed: probabilityBelow > rule.risk,
  };
}

const noneSeen = {
  probabilityBelow: null,
  probabilityFrom: 'none seen',
  beliefProbabilityBelow: null,
  designProbabilityBelow: null,
  closed: true,
} as const;

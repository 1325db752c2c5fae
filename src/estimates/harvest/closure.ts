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
 * The chance is that of the belief where there is one (the default of the house), else of the design. Where none was
 * seen there is no chance, and nothing that speaks for a density above the limit: closed. Null where a density has no
 * spread: nothing can be told then, and the answer says so. Limit and risk are the manager's; there is no default limit. Source: METHODS k.
 */
export function closureOf(rule: ClosureRule, chance: ChanceBelow): Closure | null {
  const probabilityBelow = chance.ofBelief ?? chance.byDesign;
  const boundPerHa = chance.noneSeenBoundPerHa;
  if (boundPerHa !== null) return { ...rule, ...noneSeen, boundPerHa };
  if (probabilityBelow === null) return null;
  return {
    ...rule,
    boundPerHa,
    probabilityBelow,
    probabilityFrom: chance.ofBelief === null ? 'design' : 'clumped-count belief',
    designProbabilityBelow: chance.byDesign,
    closed: probabilityBelow > rule.risk,
  };
}

const noneSeen = {
  probabilityBelow: null,
  probabilityFrom: 'none seen',
  designProbabilityBelow: null,
  closed: true,
} as const;

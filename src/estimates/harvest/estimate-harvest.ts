/** Harvest options of one species: stock, lower limit, legal share, catches at chosen rates, closure, and other choices. */

import type { Reason } from '../../survey/message.ts';
import { type ChanceBelow, type ClosureRule, closureOf } from './closure.ts';
import type { ChosenRate, HarvestAnswer } from './harvest-answer.ts';
import { harvestOptions, type OptionChoices, type OptionInput, type Taken } from './harvest-options.ts';
import { catchAt, legalStock } from './legal-stock.ts';

export interface HarvestChoices extends OptionChoices {
  readonly rates: readonly ChosenRate[];
  /** One-sided, of the lower limit. */
  readonly confidence: number;
  readonly limitReference: { readonly densityPerHa: number; readonly source: string } | null;
  readonly risk: number;
}

export interface HarvestInput {
  readonly survey: string | null;
  readonly species: string | null;
  readonly taken: Taken | Reason;
  readonly chanceBelow: (densityPerHa: number) => ChanceBelow;
  readonly withLimit: OptionInput['withLimit'];
  readonly outsideZone: OptionInput['outsideZone'];
  readonly zones: readonly string[];
  readonly cautions: readonly Reason[];
}

/** Fewest different rates that are worked out: one alone would read like advice, and so would one given three times. */
export const fewestRates = 3;

export function estimateHarvest(input: HarvestInput, choices: HarvestChoices): HarvestAnswer {
  const { taken, survey, species, zones, cautions } = input;
  const { confidence, rates } = choices;
  const closure = closureFor(input, choices);
  const ruleUntold = closure === null ? limitGiven(choices) : null;
  const base = { survey, species, confidence, zones, cautions, ...nothing, ruleUntold };
  if ('code' in taken) return { ...base, closure, reason: taken };
  const legal = legalStock(taken.stock, taken.legal, confidence);
  const used = new Set(rates.map(({ rate }) => rate)).size < fewestRates ? [] : rates;
  return {
    ...base,
    closure,
    stock: taken.stock,
    legal: taken.legal,
    legalStock: legal,
    weight: taken.weight,
    weightReason: taken.weightReason,
    catches: used.map((rate) => catchAt(rate, { stock: taken.stock, legal, weight: taken.weight })),
    options: harvestOptions({ ...input, base: taken, rates: used, confidence, choices }),
    cautions: [...cautions, ...(taken.weight?.cautions ?? [])],
  };
}

const nothing = {
  stock: null,
  legal: null,
  legalStock: null,
  weight: null,
  weightReason: null,
  catches: [],
  options: [],
  reason: null,
} as const;

function limitGiven({ limitReference }: HarvestChoices): HarvestAnswer['ruleUntold'] {
  if (limitReference === null) return null;
  return { limitPerHa: limitReference.densityPerHa, source: limitReference.source };
}

/** Told even where no catch can be: a stock may be closed for want of anything else to go by. */
function closureFor({ chanceBelow }: HarvestInput, { limitReference, risk }: HarvestChoices) {
  if (limitReference === null) return null;
  const rule: ClosureRule = { limitPerHa: limitReference.densityPerHa, source: limitReference.source, risk };
  return closureOf(rule, chanceBelow(limitReference.densityPerHa));
}

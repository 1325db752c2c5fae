/** What another choice would mean: another minimum size, a closed zone, rotation, a quota. All are offered, none advised. */

import type { Reason } from '../../survey/message.ts';
import type {
  ChosenRate,
  HarvestOption,
  HarvestStock,
  LegalShare,
  LegalStock,
  LegalWeight,
} from './harvest-answer.ts';
import { catchAt, legalStock } from './legal-stock.ts';

/** Stock, legal share and weight for one set of choices. */
export interface Taken {
  readonly stock: HarvestStock;
  readonly legal: LegalShare;
  readonly weight: LegalWeight | null;
  readonly weightReason: Reason | null;
}

export interface OptionChoices {
  readonly otherLimitMm: number | null;
  readonly closedZone: string | null;
  readonly rotationYears: number | null;
  readonly quota: { readonly animals: number } | { readonly tonnes: number } | null;
}

export interface OptionInput {
  readonly base: Taken;
  readonly rates: readonly ChosenRate[];
  readonly confidence: number;
  readonly choices: OptionChoices;
  /** The same stock taken otherwise; null where only a survey could tell. */
  readonly withLimit: ((limitMm: number) => Taken | Reason) | null;
  readonly outsideZone: ((zone: string) => Taken | Reason) | null;
}

export function harvestOptions(input: OptionInput): readonly HarvestOption[] {
  const { choices, withLimit, outsideZone } = input;
  const { otherLimitMm, closedZone, rotationYears, quota } = choices;
  const options: HarvestOption[] = [];
  if (otherLimitMm !== null && withLimit !== null) {
    options.push(takenOtherwise(input, 'minimum-size', otherLimitMm, withLimit(otherLimitMm)));
  }
  if (closedZone !== null && outsideZone !== null) {
    options.push(takenOtherwise(input, 'closed-zone', closedZone, outsideZone(closedZone)));
  }
  if (rotationYears !== null) options.push(rotation(input, rotationYears));
  if (quota !== null) options.push(quotaOption(input, quota));
  return options;
}

/** Shares stay those of the whole stock, so that the lines of the table can be compared. */
function takenOtherwise(
  { base, rates, confidence }: OptionInput,
  kind: 'minimum-size' | 'closed-zone',
  choice: string | number,
  taken: Taken | Reason,
): HarvestOption {
  if ('code' in taken) return { kind, choice, legalLowerAnimals: null, catches: [], reason: taken };
  const legal = legalStock(taken.stock, taken.legal, confidence);
  const basis = { stock: base.stock, legal, weight: taken.weight };
  const catches = rates.map((rate) => catchAt(rate, basis));
  return { kind, choice, legalLowerAnimals: legal.lowerAnimals, catches, reason: taken.weightReason };
}

/** One part of the area is open each year and the others rest; the rate is taken of the open part. */
function rotation({ base, rates, confidence }: OptionInput, years: number): HarvestOption {
  const legal = legalStock(base.stock, base.legal, confidence);
  const basis = { stock: base.stock, legal, weight: base.weight };
  const catches = rates.map((rate) => catchAt(rate, basis, 1 / years));
  return {
    kind: 'rotation',
    choice: years,
    legalLowerAnimals: legal.lowerAnimals / years,
    catches,
    reason: null,
  };
}

function quotaOption(
  { base, confidence }: OptionInput,
  quota: NonNullable<OptionChoices['quota']>,
): HarvestOption {
  const legal = legalStock(base.stock, base.legal, confidence);
  const { animals, tonnes } = inBothUnits(quota, base.weight);
  return {
    kind: 'quota',
    choice: 'animals' in quota ? `${quota.animals} animals` : `${quota.tonnes} t`,
    animals,
    tonnes,
    shareOfStock: animals === null ? null : animals / base.stock.animals,
    shareOfLegal: animals === null ? null : shareOf(animals, legal),
    reason: animals === null ? base.weightReason : null,
  };
}

function shareOf(animals: number, legal: LegalStock): number | null {
  return legal.lowerAnimals === 0 ? null : animals / legal.lowerAnimals;
}

function inBothUnits(quota: NonNullable<OptionChoices['quota']>, weight: LegalWeight | null) {
  if ('animals' in quota) {
    return { animals: quota.animals, tonnes: weight === null ? null : (quota.animals * weight.grams) / 1e6 };
  }
  return { animals: weight === null ? null : (quota.tonnes * 1e6) / weight.grams, tonnes: quota.tonnes };
}

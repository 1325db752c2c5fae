/** Reads a stock typed as words and numbers, for arithmetic without a survey. */

import { InvalidArgumentError } from 'commander';
import type { TypedHarvest } from '../tasks/harvest.ts';

const words = ['density', 'cv', 'df', 'area', 'share', 'share-cv', 'weight'] as const;
const needed = ['density', 'cv', 'area', 'share'] as const;

/** "density 46.2, cv 0.24, area 875, share 0.38, weight 0.52": per hectare, hectares, and kilograms a legal animal. */
export function typedOption(text: string): TypedHarvest {
  const found = new Map<string, number>();
  for (const part of text.split(/[,;]/)) {
    const [, word, number] = /^\s*([a-z-]+)\s+([\d.]+)\s*(?:per ha|ha|kg)?\s*$/.exec(part) ?? [];
    const value = Number(number);
    if (word === undefined || !(words as readonly string[]).includes(word) || !(value > 0)) {
      throw new InvalidArgumentError(
        `"${part.trim()}" is not understood: ${how}; the words are ${words.join(', ')}`,
      );
    }
    found.set(word, value);
  }
  const missing = needed.filter((word) => !found.has(word));
  if (missing.length > 0)
    throw new InvalidArgumentError(
      `${missing.join(', ')} ${missing.length === 1 ? 'is' : 'are'} missing: ${how}`,
    );
  if (found.get('share')! > 1) throw new InvalidArgumentError('the share of legal animals goes from 0 to 1');
  return {
    densityPerHa: found.get('density')!,
    cv: found.get('cv')!,
    degreesOfFreedom: found.get('df') ?? null,
    areaHa: found.get('area')!,
    legalShare: found.get('share')!,
    legalShareCv: found.get('share-cv') ?? null,
    meanWeightKg: found.get('weight') ?? null,
  };
}

const how = 'write "density 46.2, cv 0.24, area 875, share 0.38, weight 0.52" (per ha, ha, kg)';

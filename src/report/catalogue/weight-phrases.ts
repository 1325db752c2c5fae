/** How weights are said: a pair, a mean weight, where they come from, a table of biomass. Numbers come formatted. */

import { weightPhrasesFr } from './french/weight-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  states: { live: 'live', gutted: 'gutted', salted: 'salted', dried: 'dried' },
  measures: {
    'body relaxed': 'body relaxed',
    'body contracted': 'body contracted',
    'basal diameter': 'basal diameter',
    'shell length': 'shell length',
  },
  curve: (formula: string, lengthUnit: string, weightUnit: string, state: string) =>
    `${formula}, L in ${lengthUnit}, W in ${weightUnit} ${state}`,
  rangeNotTold: 'lengths it was made from not told',
  range: (fromMm: string, toMm: string) => `from animals of ${fromMm} to ${toMm} mm`,
  spread: (spread: string) => `spread ${spread} in ln W`,
  animals: (n: string) => `${n} animals`,
  mean: (grams: string, state: string) => `${grams} g ${state}`,
  meanError: (grams: string) => `standard error ${grams} g`,
  meanLength: (mm: string) => `mean length ${mm} mm`,
  between: '; ',
  or: ', or ',
  /** What the program itself names as a source: "24 animals weighed in this book". */
  source: (source: string) => source,
  memory: (source: string) => `from memory, not checked: ${source}`,
  basis: (species: string, told: string, from: string) => `${species}: ${told} (${from})`,
  fit: (explained: string, factor: string, slope: string) =>
    `the line explains ${explained} of the spread of ln W; mean weights are ${factor} times the curve; slope of the geometric mean line ${slope}`,
  allRows: 'All rows',
  andMore: (rows: string, more: number) => `${rows} and ${more} more`,
  noteOf: (rows: string, note: string) => `${rows}: ${note}`,
  largest: (species: string, tonnes: string, between: string, state: string) =>
    `${species}, ${tonnes} t (${between} t), ${state}`,
  heads: {
    where: 'Where',
    measured: 'Measured of animals',
    meanG: 'Mean weight, g',
    kgPerHa: 'kg per ha',
    tonnes: 'Tonnes',
    interval: (share: string) => `${share} interval`,
  },
  allStrata: 'All sampled strata',
  someOf: (some: string, all: string) => `${some} of ${all}`,
  caption: 'Weight by stratum',
} as const;

export type WeightPhrases = SameShape<typeof english>;

export function weightPhrases(language: Language): WeightPhrases {
  return language === 'fr' ? weightPhrasesFr : english;
}

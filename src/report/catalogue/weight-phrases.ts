/** How weights are said: a pair, a mean weight, where they come from, a table of biomass. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
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
  animals: (n: string) => counted(n, 'animal'),
  mean: (grams: string, state: string) => `${grams} g ${state}`,
  meanError: (grams: string) => `standard error ${grams} g`,
  meanLength: (mm: string) => `mean length ${mm} mm`,
  between: '; ',
  or: ', or ',
  /** What the program itself names as a source: "24 animals weighed in this book". */
  source: (source: string) => source,
  memory: (source: string) => `from memory, not checked: ${source}`,
  fit: (explained: string, factor: string, slope: string) =>
    `the line explains ${explained} of the spread of ln W; mean weights are ${factor} times the curve; slope of the geometric mean line ${slope}`,
  largest: (species: string, tonnes: string, between: string, state: string) =>
    `${species} with ${tonnes} t (${between} t), ${state}`,
  heads: {
    where: 'Where',
    measured: 'Animals measured',
    meanG: 'Mean weight, g',
    kgPerHa: 'kg per ha',
    tonnes: 'Tonnes',
    interval: (share: string) => `${share} interval`,
  },
  allStrata: 'All sampled strata',
  someOf: (some: string, all: string) => `${some} of ${all}`,
  caption: 'Weight by stratum',
  // where the weights come from
  origins: {
    head: 'Where the weights come from',
    explained:
      'Each animal is weighed by a curve through animals that were measured and weighed: W is the weight of an animal, L its length. Look whether the weight of one animal is plausible. The scatter is one standard deviation of single animals about the curve: about two in three are nearer. Outside the lengths of the weighed animals a weight is a guess.',
    caption: 'Curves of weight on length',
    from: 'From',
    lengths: 'Their lengths, mm',
    curve: 'Curve',
    scatter: 'Scatter',
    one: 'One animal of',
    weighs: (mm: string, grams: string) => `${mm} mm: ${grams} g`,
    outside: 'Outside those lengths',
    noneOutside: 'none',
    notTold: 'not told',
    between: (low: string, high: string) => `${low}\u00a0to\u00a0${high}`,
    units: (formula: string, length: string, weight: string) => `${formula} (${length}, ${weight})`,
  },
  means: {
    head: 'By published mean weights: an order of magnitude only',
    explained:
      'No curve is known for these, so the count is multiplied by mean weights from elsewhere. Mean weights of one species differ by a factor of two to five between places, so the tonnes are a range in which no number is better than another.',
    line: (species: string, tonnes: string, weights: string) =>
      `${species}: ${tonnes}; one animal ${weights}`,
    tonnes: (between: string, animals: string, stations: string) =>
      `${between} t from ${counted(animals, 'animal')} at ${counted(stations, 'station')}`,
    noTonnes: 'no tonnes can be given',
    oneWeight: (grams: string, state: string) => `${grams} g ${state}`,
    weights: (low: string, high: string, state: string) => `${low} to ${high} g ${state}`,
    by: (weights: string, source: string) => `${weights} (${source})`,
  },
  without: 'No weight, and why',
  toRead: 'To be read with the weights',
  weightsOf: (species: string) => `The weights of ${species}`,
  // at the keyboard
  weightsHead: 'Weights',
  pairLine: (species: string, curve: string, from: string) => `${species}: ${curve} (${from})`,
} as const;

export type WeightPhrases = SameShape<typeof english>;

export function weightPhrases(language: Language): WeightPhrases {
  return language === 'fr' ? weightPhrasesFr : english;
}

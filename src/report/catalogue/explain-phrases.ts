/** The formula of a density in words, with the numbers put in. Numbers come formatted. */

import { explainWords } from './explain-words.ts';
import { explainPhrasesFr } from './french/explain-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  mean: (stratum: string, how: string, perHa: string, spread: string) =>
    `mean of ${stratum} = ${how} = ${perHa} per ha; ${spread}`,
  overStations: (sum: string, stations: string) => `${sum} / ${stations} stations`,
  oneStation: 'one station, no standard deviation',
  deviation: (perHa: string) => `standard deviation between stations ${perHa}`,
  byArea: (sum: string, perHa: string, area: string) =>
    `by area: ${sum} = ${perHa} per ha (weights are areas over ${area})`,
  allStrata: 'all strata',
  stock: (perHa: string, areaHa: string, animals: string) =>
    `stock = ${perHa} per ha × ${areaHa} ha = ${animals} animals`,
  noError: 'no standard error',
  error: (terms: string, perHa: string) => `standard error = √(${terms}) = ${perHa} per ha`,
  errorOfStock: (error: string, areaHa: string, animals: string) =>
    `${error}; × ${areaHa} ha = ${animals} animals`,
  freedom: (error: string, degrees: string) => `${error}; degrees of freedom (Satterthwaite) ${degrees}`,
  zero: explainWords.zero,
  lognormal: explainWords.lognormal,
  clumped: explainWords.clumped,
  otherInterval: (method: string) => `interval: ${method}`,
  none: 'none',
  widened: 'widened by what is not known of the weight of one animal (docs/methods/biomass.md)',
  prior: (k: string, spread: string, from: string) =>
    `believed of clumping before the counts: k about ${k}, spread of the log rate about ${spread} (${from})`,
  fromArchive: (strata: string) => `from ${strata} earlier strata of this species and protocol`,
  fromHouse: 'the prior of the house',
} as const;

export type ExplainPhrases = SameShape<typeof english>;

export function explainPhrases(language: Language): ExplainPhrases {
  return language === 'fr' ? explainPhrasesFr : english;
}

/** The formula of a density in words, with the numbers put in. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { explainWords } from './explain-words.ts';
import { explainPhrasesFr } from './french/explain-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

/** The part of a stratum that lies in a site or zone. */
interface InsideStratum {
  readonly stratum: string;
  readonly members: string;
  readonly stations: string;
  readonly weight: string;
  readonly share: string;
  readonly mean: string;
}

const english = {
  mean: (stratum: string, how: string, perHa: string, spread: string) =>
    `mean of ${stratum} = ${how} = ${perHa} per ha; ${spread}`,
  overStations: (sum: string, stations: string) => `${sum} / ${counted(stations, 'station')}`,
  oneStation: 'one station, no standard deviation',
  deviation: (perHa: string) => `standard deviation between stations ${perHa}`,
  byArea: (sum: string, perHa: string, area: string) =>
    `by area: ${sum} = ${perHa} per ha (weights are areas over ${area})`,
  allStrata: 'all strata',
  stock: (perHa: string, areaHa: string, animals: string) =>
    `stock = ${perHa} per ha × ${areaHa} ha = ${counted(animals, 'animal')}`,
  noError: 'no standard error',
  error: (terms: string, perHa: string) => `standard error = √(${terms}) = ${perHa} per ha`,
  errorOfStock: (error: string, areaHa: string, animals: string) =>
    `${error}; × ${areaHa} ha = ${counted(animals, 'animal')}`,
  freedom: (error: string, degrees: string) => `${error}; degrees of freedom (Satterthwaite) ${degrees}`,
  // a site or zone
  inside: ({ stratum, members, stations, weight, share, mean }: InsideStratum) =>
    `inside ${stratum}: ${members} of ${counted(stations, 'station')}, so ${weight} × ${members} / ${stations} = ${share} of the area; mean ${mean} per ha`,
  byThoseAreas: (terms: string, total: string, perHa: string) =>
    `by those areas: (${terms}) / ${total} = ${perHa} per ha`,
  stockInside: (perHa: string, areaHa: string, animals: string) =>
    `stock = ${perHa} per ha × ${areaHa} ha (estimated from the stations inside) = ${counted(animals, 'animal')}`,
  errorOfStockInside: (animals: string) =>
    `standard error ${counted(animals, 'animal')}: the area inside is itself estimated, and all stations of these strata enter`,
  errorInside: (terms: string, perHa: string) =>
    `standard error = √(sum over strata of n × s² of the stations’ contributions) = √(${terms}) = ${perHa} per ha; stations outside contribute 0 and stay in`,
  // a mean length
  standsFor:
    'each measured animal stands for the counted ones of its belt (count / measured), and those for the stratum’s area (area / stations × 10000 / m²)',
  meanLength: (lengths: string, animals: string, meanMm: string) =>
    `mean length = sum of animals × length / sum of animals = ${lengths} / ${animals} = ${meanMm} mm`,
  errorOfLength: (terms: string, errorMm: string) =>
    `standard error = √(sum over strata of n × s² of the stations’ (animals × (length − mean)) / all animals) = √(${terms}) = ${errorMm} mm; stations without animals stay in`,
  // a biomass
  gramsByPair: (pair: string, source: string) =>
    `grams of a station = sum over its animals of the weight of each length, by ${pair} (${source})`,
  forMeanWeights: (pair: string, factor: string) => `${pair}, × ${factor} for mean weights`,
  gramsByMean: (means: string, source: string) => `grams of a station = animals × ${means} (${source})`,
  or: ', or ',
  sourceFromMemory: (source: string) => `${source}; from memory, not checked`,
  converted: (ratio: string, from: string, to: string, source: string) =>
    `then × ${ratio}, from ${from} to ${to} (${source})`,
  zero: explainWords.zero,
  lognormal: explainWords.lognormal,
  clumped: explainWords.clumped,
  otherInterval: (method: string) => `interval: ${method}`,
  none: 'none',
  widened: 'widened by what is not known of the weight of one animal (docs/methods/biomass.md)',
  prior: (k: string, spread: string, from: string) =>
    `believed of clumping before the counts: k about ${k}, spread of the log rate about ${spread} (${from})`,
  fromArchive: (strata: string) =>
    `from ${counted(strata, 'earlier stratum', 'earlier strata')} of this species and protocol`,
  fromHouse: 'the prior of the house',
} as const;

export type ExplainPhrases = SameShape<typeof english>;

export function explainPhrases(language: Language): ExplainPhrases {
  return language === 'fr' ? explainPhrasesFr : english;
}

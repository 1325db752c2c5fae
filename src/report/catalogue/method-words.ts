/** How the numbers were worked out, in sentences, with the sources by author and year. */

import type { IntervalMethod } from '../../estimates/shapes.ts';
import { formatShare } from '../numbers.ts';
import { intervalNamesFr, methodParagraphsFr } from './french/method-words.ts';
import type { Language } from './language.ts';

export type IntervalNames = Readonly<Record<IntervalMethod | 'poisson', string>>;

const english: IntervalNames = {
  clumped: 'clumped counts',
  lognormal: 'log-normal',
  t: 't',
  percentile: 'bootstrap, percentile',
  bca: 'bootstrap, BCa',
  poisson: 'Poisson bound',
};

/** What an interval is made by, as it stands in a table. */
export function intervalNames(language: Language): IntervalNames {
  return language === 'fr' ? intervalNamesFr : english;
}

export interface MethodSettings {
  readonly interval: IntervalMethod;
  readonly confidence: number;
  readonly seed: number;
}

/** The paragraphs of the section on methods. */
export function methodParagraphs(settings: MethodSettings, language: Language = 'en'): readonly string[] {
  if (language === 'fr') return methodParagraphsFr(settings);
  return [
    'The station is the unit. The animals of its belts are added up and divided by the area searched; belts of one station are never taken for independent places (Hurlbert 1984). Lost belts leave the count and the area alike; a belt cut short counts with the length that was searched; a searched and empty belt is a zero.',
    'Each stratum counts by its mapped area, never by how many stations the boat happened to visit (stratified mean: Cochran 1977, chapter 5). Where some stations searched less than two thirds of the plan, a stratum takes the sum of its animals over the sum of its area (ratio of sums: Cochran 1977, chapter 6). Degrees of freedom are Satterthwaite’s (1946). A stratum with one station gives a mean and no spread.',
    intervalParagraph(settings),
    `Where no animal was seen, the answer is a bound and not zero: the highest density at which a survey like this one would still see nothing in ${formatShare(1 - settings.confidence)} of cases. Scattered animals follow the Poisson distribution, clumped ones the negative binomial, whose bound is higher.`,
    'Lengths are raised belt by belt to the animals counted there. The share at or above a size limit uses the same weights, and its spread comes from the differences between stations.',
  ];
}

function intervalParagraph({ interval, confidence, seed }: MethodSettings): string {
  const caution =
    'With fewer than 10 stations where a species was found, the real uncertainty may be larger than the interval shows.';
  return `${intervalSentences(interval, formatShare(confidence), seed)} ${caution}`;
}

function intervalSentences(interval: IntervalMethod, sure: string, seed: number): string {
  switch (interval) {
    case 'clumped':
      return `The interval asks which densities could have given these counts if animals lie in clumps, under two models of clumping (negative binomial, and log-normal Poisson) weighed by how well each fits. It holds ${sure} of what is believed, half of the rest on either side; the darkness of the band is the same belief (seed ${seed}).`;
    case 'lognormal':
      return `The interval takes the estimate as log-normal and multiplies and divides it by one factor, with Student’s t on the degrees of freedom (Buckland and others 1993). It holds the true density in about ${sure} of surveys when counts are not too clumped, and less often when they are.`;
    case 't':
      return `The interval is the estimate plus and minus Student’s t times the standard error. It is meant to hold in ${sure} of surveys; for clumped animals it holds less often and may reach below zero.`;
    case 'percentile':
    case 'bca':
      return `The interval comes from drawing whole stations again within each stratum (bootstrap: Davison and Hinkley 1997; seed ${seed}). It is meant to hold in ${sure} of surveys; with fewer than 20 stations it holds less often.`;
  }
}

/** How a density is said beside its band, in a sentence and in a table. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { densityPhrasesFr } from './french/density-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  // beside a band
  noAnswerYet: 'no answer yet',
  notRecorded: 'not recorded',
  noSpread: 'no spread',
  stationsShort: (stations: string) => `${stations} st.`,
  perHa: (density: string) => `${density} per ha`,
  of: (some: string, all: string) => `${some} of ${all}`,
  inTable: '… in full in the table below',
  // in a sentence
  noAnswer: 'No answer',
  sure: (share: string) => `${share} sure`,
  sureBelow: (share: string) => `${share} sure below`,
  spreadUnknown: ' (how far off this may be cannot be known)',
  between: (sure: string, low: string, high: string) => ` (${sure} between ${low} and ${high})`,
  recordedAt: (some: string, all: string, animals: string) =>
    `recorded at ${some} of ${counted(all, 'station')}, ${animals}`,
  animals: (count: string, one: boolean) => `${count} ${one ? 'animal' : 'animals'}`,
  unseen: (stations: string, areaM2: string) =>
    `not recorded at ${stations === '1' ? 'the 1 station' : `any of ${stations} stations`} (${areaM2} m² searched)`,
  ifScattered: (bound: string) => `${bound} per ha if scattered`,
  ifClumped: (bound: string) => `, below ${bound} if clumped`,
  below: (bound: string) => `below ${bound}`,
  boundOr: (bound: string) => ` or ${bound}`,
  stock: (stock: string, range: string, areaHa: string) => `; about ${stock}${range} in ${areaHa}\u00a0ha`,
  stockRange: (low: string, high: string) => ` (${low} to ${high})`,
  // under a figure of bands
  bandsExplained:
    'The darker the band, the more the counts speak for that density. The tall tick is the estimate, the hair lines are the ' +
    'ends of the interval. Where none was recorded the band fades from zero: the full hair line is the bound if animals lie in ' +
    'clumps, the dotted one the bound if they are scattered. The axis runs evenly at its left end, so that zero has a place, and ' +
    'further right each equal step multiplies.',
  tickLeftOfDarkest:
    'Where only a few animals were seen, the tick stands left of the darkest part: the truth is then more often above what was seen than below.',
  tickBelowDarkest:
    'Where only a few animals were seen, the tick stands below the darkest part: the truth is then more often above what was seen than below.',
  axis: (even: string) => `animals per hectare: even up to ${even}, then multiplying`,
  // in a table
  heads: {
    foundAt: 'Found at, stations',
    animals: 'Animals',
    searched: 'Searched, m²',
    density: 'Animals per ha',
    error: 'Standard error',
    interval: (share: string) => `${share} interval, per ha`,
    method: 'Interval by',
    stock: 'Animals in all',
  },
  intervalsBy: (caption: string, method: string) => `${caption}; intervals by ${method}`,
  unknown: 'unknown',
  // notes below it
  allRows: 'All rows',
  noteOfRows: (rows: string, note: string) => `${rows}: ${note}.`,
  speciesIn: (species: string, where: string) => `${species} in ${where}`,
  upperEnds:
    'The upper end of one stratum can stand above that of all strata together: each interval keeps its own promise, and in a sum errors average out, so that the sum’s is drawn less wide. Ends are never added up or taken from each other.',
  zeroStrata:
    'Strata where a species was not recorded add a little to the upper end of its interval, and not nothing.',
  kBySource: (source: string, ks: string) => `k, ${source}: ${ks}`,
  zeroBounds: (told: string) =>
    `Not recorded: the first bound holds if animals lie in clumps (${told}), the second if they are scattered.`,
  sources: { archive: 'archive', default: 'default', chosen: 'chosen' },
} as const;

export type DensityPhrases = SameShape<typeof english>;

export function densityPhrases(language: Language): DensityPhrases {
  return language === 'fr' ? densityPhrasesFr : english;
}

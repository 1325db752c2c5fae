/** How a change and a trend are said, in sentences and in a table. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { changePhrasesFr } from './french/change-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

interface TrendSaid {
  readonly species: string;
  readonly told: string;
  readonly perYear: string;
  readonly share: string;
  readonly low: string;
  readonly high: string;
  readonly surveys: string;
  readonly strata: string;
}

/** Animals and stations of two surveys. */
interface TwoSeen {
  readonly animals: string;
  readonly stations: string;
  readonly animalsLater: string;
  readonly stationsLater: string;
}

const english = {
  told: {
    lower: 'lower',
    higher: 'higher',
    'probably lower': 'probably lower',
    'probably higher': 'probably higher',
    'cannot tell': 'cannot tell',
  },
  notProven: (told: string, share: string) => `${told}, not proven at ${share}`,
  noneBefore: (low: string) => `none seen before; at least ${low} as many`,
  noneBeforeUntold: 'none seen before, which does not prove a rise',
  noneLaterUntold: 'none seen later, which does not prove a fall',
  noneLater: (most: string) => `none seen later; at most ${most} of what it was`,
  atLeast: (ratio: string, low: string) => `${ratio} (at least ${low})`,
  range: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  times: (n: string) => `${n} times`,
  overTenThousand: 'over 10\u202f000 times',
  hardlyAny: 'surveys like these would hardly tell even the loss of all animals',
  tellAFall: (to: string) => `surveys like these tell, 8 times in 10, a fall to ${to} of what it was`,
  halvingEach: (could: string, stations: string) =>
    `${could}; a halving would take two surveys of about ${stations} stations each`,
  halvingToo: (could: string) => `${could}, so a halving too`,
  halvingMore: (could: string, stations: string) =>
    `${could}; about ${counted(stations, 'more station')} would tell a halving`,
  // over all surveys
  noTrend: (species: string) => `${species}: no trend can be given`,
  trendTold: {
    falling: 'falling',
    rising: 'rising',
    'cannot tell': 'cannot tell whether it falls or rises',
  },
  trend: ({ species, told, perYear, share, low, high, surveys, strata }: TrendSaid) =>
    `${species}: ${told}: ${perYear} a year (${share} interval ${low} to ${high}), over ${surveys} surveys of ${strata}`,
  trendShort: ({ species, told, perYear, share, low, high, surveys }: Omit<TrendSaid, 'strata'>) =>
    `${species}: ${told}: ${perYear} a year (${share} interval ${low} to ${high}), over ${surveys} surveys`,
  overThousandPercent: 'more than +1\u202f000\u00a0%',
  // on the page
  animals: (n: string, one: boolean) => `${n} ${one ? 'animal' : 'animals'}`,
  stations: (n: string, one: boolean) => `${n} ${one ? 'station' : 'stations'}`,
  colon: (head: string, rest: string) => `${head}: ${rest}`,
  semicolon: '; ',
  inZone: (zone: string) => `zone ${zone}`,
  toldWith: (told: string, numbers: string) => `${told}: ${numbers}`,
  perHaSeen: (from: string, to: string, n: TwoSeen) =>
    `${from} to ${to} per ha (${n.animals} at ${n.stations}, then ${n.animalsLater} at ${n.stationsLater})`,
  seen: (n: TwoSeen) => `${n.animals} at ${n.stations} before, ${n.animalsLater} at ${n.stationsLater} now`,
  zone: (zone: string, perHa: string, seen: { readonly animals: string; readonly stations: string }) =>
    `${zone} ${perHa} per ha (${seen.animals} at ${seen.stations})`,
  zoneBetween: (
    zone: string,
    perHa: string,
    seen: { readonly between: string; readonly animals: string; readonly stations: string },
  ) => `${zone} ${perHa} per ha (${seen.between}; ${seen.animals} at ${seen.stations})`,
  sides: (head: string, sides: readonly (readonly [side: string, species: string])[]) =>
    `${head}: ${sides.map(([side, species]) => `${side}: ${species}`).join('; ')}.`,
  heads: {
    perHa: 'Per ha',
    told: 'Told',
    change: 'Change',
    halving: 'Stations to tell a halving',
    perYear: 'A year',
    interval: (share: string) => `${share} interval`,
    onTheLine: 'Surveys on the line',
  },
  caption: (share: string) => `Change, with its ${share} interval`,
  wholeGroup: 'All that both surveys worked',
  zoneGroup: (zone: string) => `Zone ${zone}`,
  /** Beside the densities of a change. */
  commonWeights:
    'The densities beside a change are over the part that both surveys worked, each stratum or zone with the same weight in both, so they may differ from those of the whole survey.',
  byLuck: (compared: string, expected: string) =>
    `${compared} comparisons stand here. Even if nothing had changed anywhere, about ${expected} of them might be called lower or higher by luck alone, and more of them “probably” so: one change among many that cannot be told is weak evidence.`,
  brokenBefore: (survey: string, why: string) => `No line leads to ${survey}: ${why}.`,
  theTrend: 'The trend',
  trendCaption: 'A line through the surveys, percent a year',
  trendOver: (surveys: string, strata: string) =>
    `Over ${surveys} surveys, in the strata that all of them worked: ${strata}. A line through the logarithms of the densities, each survey weighed by its own spread.`,
  someOf: (some: string, all: string) => `${some} of ${all}`,
  falling: 'falling',
  to: ' to ',
  rising: 'rising',
  trendCannotTell: 'cannot tell',
  aboutEach: (stations: string) => `about ${stations} each`,
  theseWouldDo: 'these would do',
  aboutMore: (stations: string) => `about ${stations} more`,
} as const;

export type ChangePhrases = SameShape<typeof english>;

export function changePhrases(language: Language): ChangePhrases {
  return language === 'fr' ? changePhrasesFr : english;
}

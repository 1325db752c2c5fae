/** The first page in short, plain lines. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { briefPhrasesFr } from './french/brief-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  howMuch: 'How much?',
  upOrDown: 'Up or down?',
  healthy: 'Healthy?',
  take: 'What may be taken?',
  which:
    'The species whose change is told or is the largest, and those whose answer waits; the others, and the numbers behind these lines, stand below. Nothing here is a decision.',
  limits: (limits: string) => `The surveys can be compared with limits only: ${limits}`,
  stock: (animals: string, areaHa: string) => `about ${animals} in ${areaHa} ha`,
  stockBetween: (animals: string, areaHa: string, sure: string, between: string) =>
    `about ${animals} in ${areaHa} ha (${sure} sure: ${between})`,
  perHa: (perHa: string) => `${perHa} per ha`,
  perHaBetween: (perHa: string, sure: string, between: string) =>
    `${perHa} per ha (${sure} sure: ${between})`,
  noSpread: 'how far off this may be cannot be known',
  seen: (animals: string, some: string, all: string) =>
    `${animals} seen, at ${some} of ${counted(all, 'station')}`,
  zones: (zones: string) => `by zone, per ha: ${zones}`,
  zone: (zone: string, perHa: string) => `${zone} ${perHa}`,
  zoneTold: (zone: string, told: string, numbers: string) => `in zone ${zone} ${told}, ${numbers}`,
  since: (told: string, from: string, numbers: string) => `${told}, since ${from}: ${numbers}`,
  openSince: (from: string, low: string, high: string) =>
    `cannot tell since ${from}: anything from ${low} to ${high} fits the counts`,
  openSinceTimes: (from: string, low: string, high: string) =>
    `cannot tell since ${from}: anything from ${low} to ${high} as many fits the counts`,
  atStations: (sentence: string, stations: string) => `${sentence}, at these ${stations} stations only`,
  trend: (told: string, perYear: string, surveys: string) =>
    `over all ${surveys} surveys ${told}, ${perYear} a year`,
  trendOpen: (surveys: string) => `nor can a trend be told over all ${surveys} surveys`,
  trendOpenToo: (surveys: string) => `over all ${surveys} surveys no trend can be told`,
  sides: {
    below: 'below',
    'likely below': 'likely below',
    'cannot tell': 'cannot tell whether below or above',
    'likely above': 'likely above',
    above: 'above',
  },
  beside: (side: string, perHa: string, source: string) =>
    `${side} the published ${perHa} per ha (${source})`,
  besideOwn: (side: string, perHa: string, source: string) => `${side} your own ${perHa} per ha (${source})`,
  boundBelow: (bound: string) => `not recorded, below ${bound} per ha, and so below`,
  noneToCompare: 'no published density that was counted in the same way is known here',
  notSetBeside: 'not set beside a published density, since how far off this one may be is not known',
  mature: (share: string, between: string, sizeMm: string) =>
    `${share} (${between}) are of mature size, ${sizeMm} mm or more`,
  matureRange: (low: string, high: string, sizesMm: string) =>
    `${low} to ${high} are of mature size, by which of the published sizes is taken (${sizesMm} mm)`,
  or: ' or ',
  closed: (limitPerHa: string, chance: string) =>
    `nothing, by the rule that was chosen: the chance of being below ${limitPerHa} per ha is ${chance}`,
  closedNoneSeen: 'nothing, by the rule that was chosen: none was recorded',
  open: (limitPerHa: string, chance: string) =>
    `open by the rule that was chosen (chance of being below ${limitPerHa} per ha ${chance})`,
  noRate: 'no rate was given, and none is assumed',
  options: (options: string) => `options for the manager: ${options}`,
} as const;

export type BriefPhrases = SameShape<typeof english>;

export function briefPhrases(language: Language): BriefPhrases {
  return language === 'fr' ? briefPhrasesFr : english;
}

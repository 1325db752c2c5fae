/** How a catch is worked out, step by step, and when nothing should be taken. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { harvestPhrasesFr } from './french/harvest-phrases.ts';
import { harvestWords } from './harvest-words.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  rule: (closed: boolean, limitPerHa: string, chance: string, risk: string) =>
    `By the rule that was chosen: ${closed ? 'closed' : 'open'}. The chance that the density is below the limit of ${limitPerHa} per ha is ${chance}, ${closed ? 'more' : 'not more'} than the chosen risk of ${risk}.`,
  ruleNoneSeen: (limitPerHa: string, bound: string) =>
    `By the rule that was chosen: closed. None was recorded (below ${bound} per ha), so nothing speaks for a density above the limit of ${limitPerHa} per ha.`,
  ruleUntold: (limitPerHa: string, source: string) =>
    `Whether the rule says open or closed cannot be told: the chance of being below the limit of ${limitPerHa} per ha (${source}) is not known here. Not known is not open.`,
  limitNoneSeen: (perHa: string, source: string, bound: string) =>
    `limit reference ${perHa} per ha (${source}); none was recorded, below ${bound} per ha: there is no chance to work out, and the rule says closed`,
  limitReference: (perHa: string, source: string, chance: string, from: string) =>
    `limit reference ${perHa} per ha (${source}); chance of being below it ${chance} (${from})`,
  fromDesign: 'log-normal, by the design',
  fromClumped: 'clumped counts',
  besideClumped: (from: string, chance: string) => `${from}; by the clumped counts ${chance}`,
  besideDesign: (from: string, chance: string) => `${from}, by the design alone ${chance}`,
  closedWhere: (comparison: string, closed: boolean) =>
    `closed where that chance is greater than the chosen risk: ${comparison}, so ${closed ? 'closed' : 'open'}`,
  stock: (perHa: string, areaHa: string, animals: string, origin: string) =>
    `stock = density × area = ${perHa} per ha × ${areaHa} ha = ${counted(animals, 'animal')} (${origin})`,
  typed: 'typed',
  everySize: 'every size may be taken',
  typedFrom: (source: string) => `typed; ${source}`,
  countedAt: (animals: string, some: string, all: string) =>
    `${counted(animals, 'animal')} at ${some} of ${counted(all, 'station')}`,
  lower: (share: string, how: string, perHa: string, animals: string) =>
    `lower limit of the stock, one-sided ${share}, ${how}: ${perHa} per ha, in all ${counted(animals, 'animal')}`,
  otherLower: (how: string, animals: string, why: string) =>
    `beside it, ${how}: ${counted(animals, 'animal')} (${why})`,
  smallerUsed: 'the smaller one is used',
  notUsed: 'not used, as asked',
  clumped: 'clumped counts',
  lognormal: (formula: string, quantile: string, of: string) =>
    `log-normal ${formula}, ${quantile} from ${of}`,
  normal: 'normal',
  tWith: (degreesOfFreedom: string) => `t with ${degreesOfFreedom} degrees of freedom`,
  legal: (lower: string, share: string, animals: string) =>
    `legal animals = lower limit × share of legal size = ${lower} × ${share} = ${counted(animals, 'animal')}`,
  joint: (formula: string, animals: string) =>
    `beside it, with the uncertainty of the share as well (joint CV ${formula}; log-normal): ${counted(animals, 'animal')}`,
  share: (share: string, limitMm: string, source: string, measured: string) =>
    `${share} (at or above ${limitMm} mm, ${source}; ${measured})`,
  measured: (n: string) => `${n} measured`,
  measuredBetween: (n: string, between: string) => `${n} measured, ${between} %`,
  meanWeight: (kg: string, state: string, source: string) =>
    `mean weight of a legal animal: ${kg} kg ${state} (${source})`,
  states: { live: 'live', gutted: 'gutted', salted: 'salted', dried: 'dried' },
  catch: (percent: string, product: string, animals: string) =>
    `catch at ${percent} = ${product} = ${counted(animals, 'animal')}`,
  catchWeight: (animals: string, kg: string, total: string) => `${animals}; × ${kg} kg = ${total} kg`,
  option: (animals: string, percent: string) => `${counted(animals, 'animal')} a year at ${percent}`,
  heads: {
    rate: 'Rate a year',
    tonnes: 'Tonnes',
    ofStock: 'Of the whole stock',
    source: 'Source of the rate',
  },
  caption: 'Catch a year, from the lower limit of the stock',
  paper: {
    ruleHead: 'The closure rule',
    rule: (limitPerHa: string, source: string, risk: string) =>
      `Nothing is taken of a species where the chance that its density is below ${limitPerHa} per ha (${source}) is greater than the chosen risk of ${risk}.`,
    ruleCaption: 'Species by species',
    ruleHeads: {
      found: 'Animals, at stations',
      perHa: 'Per ha',
      chance: 'Chance of being below',
      design: 'By the design alone',
      told: 'By the rule',
    },
    seen: (animals: string, some: string, all: string) => `${animals} at ${some} of ${all}`,
    noneSeen: 'none recorded',
    closed: 'closed',
    open: 'open',
    catchHead: 'What the rates would give',
    catchExplained:
      'A catch is a rate times the legal animals in the lower limit of the stock. Where the rule says closed the catch is 0, and the numbers say what it would be if it were open. The arithmetic stands under “Where does this number come from?”.',
    closedGroup: (species: string) => `${species}: closed by the rule, so 0; were it open`,
    openGroup: (species: string) => `${species}: open by the rule`,
    without: 'No catch, and why',
    toRead: 'To be read with the catches',
  },
  allZones: (zones: string) =>
    `The stock behind these catches is that of all zones together (${zones}), closed ones included: what lies in a closed zone may not be taken outside it. “slateline harvest --closed-zone” leaves one out.`,
  sampledOnly: harvestWords.sampledOnly,
} as const;

export type HarvestPhrases = SameShape<typeof english>;

export function harvestPhrases(language: Language): HarvestPhrases {
  return language === 'fr' ? harvestPhrasesFr : english;
}

/** "typed" where nothing else is known; else the source that was typed with it. */
export function standingNote(source: string, language: Language): string {
  const words = harvestPhrases(language);
  if (source === english.typed) return words.typed;
  return source === english.everySize ? words.everySize : words.typedFrom(source);
}

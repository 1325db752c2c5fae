/** How a density is set against a published one, and a size against a mark. Numbers come formatted. */

import type { StatusClass } from '../../estimates/status/status-class.ts';
import type { CountMethod } from '../../survey/value-words.ts';
import { statusPhrasesFr } from './french/status-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  classes: {
    below: 'below',
    'likely below': 'likely below',
    'cannot tell': 'cannot tell whether it is below or above',
    'likely above': 'likely above',
    above: 'above',
  } satisfies Record<StatusClass, string>,
  /** In a cell, where what it is set against stands beside it. */
  sides: { below: 'below', 'likely below': 'likely below', 'likely above': 'likely above', above: 'above' },
  notCompared: (against: string, reason: string) => `not compared with ${against}: ${reason}`,
  notComparedWith: (against: string, reason: string) => `Not compared with ${against}. ${reason}`,
  compared: (told: string, against: string, chance: string) =>
    `${told} ${against}: chance of being below it ${chance}`,
  fromDesign: 'by the design',
  fromClumped: 'clumped counts',
  besideDesign: (from: string, chance: string) => `${from}; by the design alone ${chance}`,
  boundBelow: (bound: string, against: string) =>
    `not recorded, below ${bound} per ha, and so below ${against}`,
  boundOpen: (bound: string, against: string) =>
    `not recorded, below ${bound} per ha: too little was searched to say whether that is below ${against}`,
  ownDensity: 'your own density',
  publishedDensity: 'the published density',
  reference: (kind: string, perHa: string, told: string) => `${kind} ${perHa} per ha (${told})`,
  andOthers: (first: string) => `${first} and others`,
  memory: 'from memory, not checked',
  derived: 'worked out from published numbers',
  methods: {
    belts: 'belts',
    quadrats: 'quadrats',
    'timed search': 'timed search',
    'towed observer': 'towed observer',
    'night search': 'night search',
    'deep dive': 'deep dive',
    'reef-front search': 'reef-front search',
    'not stated': 'not stated',
  } satisfies Record<CountMethod, string>,
  almostCertain: 'over 0.99',
  almostImpossible: 'under 0.01',
  mark: (what: string, limitMm: string, told: string) => `${what}, ${limitMm} mm (${told})`,
  shareUnknown: (mark: string) => `Share at or above the ${mark}: not known`,
  shareUnknownAs: (mark: string, reason: string) => `Share at or above the ${mark}: not known; ${reason}`,
  noInterval: 'no interval',
  share: (share: string, between: string, mark: string) => `${share} (${between}) at or above the ${mark}`,
  atMaturity: 'size at first maturity',
  atLimit: 'size limit of the book',
  paper: {
    caption: 'Densities of this survey beside published ones',
    heads: {
      published: 'Published, per ha',
      source: 'Source',
      here: 'This survey, per ha',
      told: 'This survey is',
      chance: 'Chance of being below',
      design: 'By the design alone',
      countedBy: 'Counted by',
      why: 'Why not compared',
      mark: 'Size',
      markMm: 'Size, mm',
      share: 'At or above it',
      measured: 'Animals measured',
    },
    here: (perHa: string, between: string) => `${perHa} (${between})`,
    notRecorded: (bound: string) => `not recorded, below ${bound}`,
    cannotTell: 'cannot be told',
    own: 'your own',
    fromMemory: (source: string) => `${source}\u00a0†`,
    memoryNote:
      '† From memory: nobody has compared the number with its source. Look it up before anything is decided by it.',
    heldHead: 'Published densities that were not compared',
    heldExplained:
      'What one way of counting finds says nothing about what another would have found, so these stay beside the survey without a comparison.',
    heldCaption: 'Each with the reason',
    otherWay: 'counted in another way than this survey',
    wayNotTold: 'the way of counting is not told',
    sharesCaption: 'Shares of the animals at or above a size',
    share: (share: string, between: string) => `${share} (${between})`,
    someOf: (some: string, all: string) => `${some} of ${all}`,
  },
} as const;

export type StatusPhrases = SameShape<typeof english>;

export function statusPhrases(language: Language): StatusPhrases {
  return language === 'fr' ? statusPhrasesFr : english;
}

/** Whether an answer stands, in sentences and in a table. Numbers come formatted. */

import { sensitivityPhrasesFr } from './french/sensitivity-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  nothingToTry: (reason: string) => `${reason}: there is nothing to try otherwise.`,
  oneEach: 'Each stratum has one station: none can be left out.',
  range: (perHa: string, least: string, most: string) =>
    `One station left out at a time, ${perHa} per ha becomes ${least} at least and ${most} at most.`,
  without: (perHa: string, station: string) => `${perHa} (without ${station})`,
  holds: (
    where: { readonly station: string; readonly stratum: string },
    share: string,
    some: string,
    all: string,
  ) => `${where.station} (${where.stratum}) holds ${share} of the animals (${some} of ${all})`,
  noneWithout: 'without it none was recorded',
  moves: (perHa: string, change: string) => `without it the density is ${perHa} per ha, ${change}`,
  rests: (holds: string, moves: string) => `The answer rests on one station: ${holds}; ${moves}.`,
  leans: (holds: string, moves: string) => `The answer leans on one station: ${holds}; ${moves}.`,
  stands: (station: string, moves: string) =>
    `The answer stands: no station moves it by more than a fifth. The most does ${station}: ${moves}.`,
  noDifferent: 'no different',
  less: (share: string) => `${share} less`,
  more: (share: string) => `${share} more`,
  explained:
    'One station is left out at a time. An answer rests on one station where its density moves by more than a third without it, or where what is said of a published density turns; it leans on one where its density moves by more than a fifth; else it stands.',
  heads: {
    verdict: 'Verdict',
    animals: 'Animals',
    perHa: 'Per ha',
    least: 'Least without one',
    most: 'Most without one',
    station: 'Station that moves it most',
    share: 'Its animals',
    change: 'Change without it',
  },
  restsCell: 'rests\u00a0on\u00a0one',
  ofAll: (some: string, share: string) => `${some} (${share})`,
  stationIn: (station: string, stratum: string) => `${station}, ${stratum}`,
  leansCell: 'leans\u00a0on\u00a0one',
  standsCell: 'stands',
  caption: 'One station left out at a time',
} as const;

export type SensitivityPhrases = SameShape<typeof english>;

export function sensitivityPhrases(language: Language): SensitivityPhrases {
  return language === 'fr' ? sensitivityPhrasesFr : english;
}

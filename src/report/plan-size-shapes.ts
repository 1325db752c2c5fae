/** What the lines and tables of `plan size` are made from; the task gives more than this. */

import type { Species } from '../survey/words.ts';

/** One line of the curve of a species, as the task gives it. */
export interface SizeLine {
  readonly stations: number;
  readonly boatDays: number | null;
  readonly cost: number | null;
  readonly cv: number;
  readonly cvAssured: number;
  readonly fallAssured: number;
  readonly riseAssured: number;
  readonly fallEach: number;
  readonly riseEach: number;
  readonly told: number | null;
  readonly falseAlarm: number | null;
}

export interface SizeOfSpecies {
  readonly subject: {
    readonly name: string;
    readonly densityPerHa: number;
    readonly clumpingK: number | null;
    readonly factor: number;
    readonly pilotCv: number | null;
    readonly animals: number | null;
    readonly stationsWithSpecies: number | null;
  };
  readonly target: number;
  readonly stations: number | null;
  readonly stationsAsSeen: number | null;
  readonly stationsBestSplit: number | null;
  readonly stationsEach: number | null;
  readonly transects: {
    readonly now: number;
    readonly best: number;
    readonly likeness: number;
    readonly cvNowOverBest: number;
  } | null;
  readonly rows: readonly SizeLine[];
}

export interface SizeToTell {
  readonly species: readonly SizeOfSpecies[];
  readonly pilot: { readonly survey: string; readonly stations: number } | null;
  readonly need: { readonly stations: number; readonly species: string; readonly isEach: boolean } | null;
  readonly reach: number | null;
  readonly bookSpecies: readonly Species[];
}

export interface SizeSettings {
  readonly decision: string | null;
  readonly goal: 'cv' | 'margin' | 'change';
  readonly power: number;
  readonly confidence: number;
  readonly assurance: number;
  readonly stationsPerDay: number | null;
  readonly dayCost: number | null;
  readonly simulations: number;
  readonly mostTried: number;
}

/** The name people use. */
export type NameOf = (species: string) => string;

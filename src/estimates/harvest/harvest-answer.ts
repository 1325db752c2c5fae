/** What may be taken, as the command line, the report and the screens receive it: every number that was put in is here. */

import type { Reason } from '../../survey/message.ts';
import type { WeightState } from '../biomass/biomass-answer.ts';
import type { Interval } from '../shapes.ts';

/** One lower limit of a density and of the stock, one-sided. */
export interface LowerLimit {
  readonly method: 'clumped' | 'lognormal';
  readonly perHa: number;
  readonly animals: number;
}

/** The stock a share is taken of. */
export interface HarvestStock {
  readonly typed: boolean;
  readonly densityPerHa: number;
  readonly cv: number;
  readonly degreesOfFreedom: number | null;
  readonly areaHa: number;
  readonly animals: number;
  /** The one the catch is worked out from, and the other beside it. */
  readonly lower: LowerLimit;
  readonly otherLower: LowerLimit | null;
  /** Null where the density was typed. */
  readonly counted: {
    readonly stations: number;
    readonly stationsWithSpecies: number;
    readonly animals: number;
  } | null;
}

/** Share of the animals that may be taken by their size. */
export interface LegalShare {
  /** Null where every size may be taken, or the share was typed. */
  readonly limitMm: number | null;
  readonly source: string;
  readonly typed: boolean;
  readonly share: number;
  readonly interval: Interval | null;
  readonly cv: number | null;
  /** Measured animals behind it; null where it was typed or every size may be taken. */
  readonly measured: number | null;
}

/** Mean weight of the animals that may be taken. */
export interface LegalWeight {
  readonly grams: number;
  readonly state: WeightState;
  readonly source: string;
  readonly typed: boolean;
  readonly cautions: readonly Reason[];
}

export interface ChosenRate {
  /** Share of the legal stock a year. */
  readonly rate: number;
  readonly source: string;
}

export interface Catch extends ChosenRate {
  /** From the lower limit of the legal stock. */
  readonly animals: number;
  readonly tonnes: number | null;
  /** Of the whole stock as estimated, undersized animals included. */
  readonly shareOfStock: number;
  /** From the estimate itself, beside it: what is given up for being on the safe side. */
  readonly pointAnimals: number;
}

export interface LegalStock {
  readonly lowerAnimals: number;
  readonly pointAnimals: number;
  /** Of density and share together, taken as independent; null where the share has no spread. */
  readonly jointCv: number | null;
  /** Log-normal lower limit with the joint coefficient of variation. */
  readonly jointLowerAnimals: number | null;
}

export interface Closure {
  readonly limitPerHa: number;
  readonly source: string;
  /** Null where none was seen: there is a bound, and no chance. */
  readonly probabilityBelow: number | null;
  readonly probabilityFrom: 'clumped-count belief' | 'design' | 'none seen';
  /** One-sided upper bound where none was seen, else null. */
  readonly boundPerHa: number | null;
  readonly beliefProbabilityBelow: number | null;
  readonly designProbabilityBelow: number | null;
  /** The risk the manager chose. */
  readonly risk: number;
  readonly closed: boolean;
}

/** One thing that could be done otherwise, with what it would mean at each rate. */
export type HarvestOption =
  | {
      readonly kind: 'minimum-size' | 'closed-zone' | 'rotation';
      /** Millimetres, the zone's name, or the years between two openings. */
      readonly choice: string | number;
      readonly legalLowerAnimals: number | null;
      readonly catches: readonly Catch[];
      readonly reason: Reason | null;
    }
  | {
      readonly kind: 'quota';
      readonly choice: string;
      readonly animals: number | null;
      readonly tonnes: number | null;
      readonly shareOfStock: number | null;
      /** Of the lower limit of the legal stock: the rate a year that this quota is. */
      readonly shareOfLegal: number | null;
      readonly reason: Reason | null;
    };

export interface HarvestAnswer {
  readonly survey: string | null;
  readonly species: string | null;
  /** One-sided, of the lower limit. */
  readonly confidence: number;
  readonly stock: HarvestStock | null;
  readonly legal: LegalShare | null;
  readonly legalStock: LegalStock | null;
  readonly weight: LegalWeight | null;
  /** Why there are no tonnes. */
  readonly weightReason: Reason | null;
  readonly catches: readonly Catch[];
  readonly closure: Closure | null;
  /** The limit reference that was given and by which nothing can be told; null where none was given, or it can. */
  readonly ruleUntold: { readonly limitPerHa: number; readonly source: string } | null;
  readonly options: readonly HarvestOption[];
  /** Zones that the stations lie in: all of them are in the stock unless one is named closed. */
  readonly zones: readonly string[];
  /** Why no catch can be worked out. */
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

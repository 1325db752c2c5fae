/** Does it stand? As the command line, the report and the screens receive it. */

import type { Reason } from '../../survey/message.ts';
import type { DensityAnswer } from '../answers.ts';
import type { Interval } from '../shapes.ts';
import type { ReferenceUsed } from '../status/status-answer.ts';
import type { StatusClass } from '../status/status-class.ts';
import type { WithoutStation } from './leave-one-out.ts';

/** What is said of the reference, and how sure. */
export interface Said {
  readonly probabilityBelow: number;
  readonly statusClass: StatusClass;
}

export interface StationInfluence extends WithoutStation {
  readonly shareOfAnimals: number;
  /** Relative change of the density when it is left out: -0.46 is 46 % less. */
  readonly change: number;
  /** By the design; null without a reference or a spread. */
  readonly said: Said | null;
}

/** One other way of making the same answer. */
export interface Variant {
  readonly kind:
    | 'without-station'
    | 'without-questioned'
    | 'house-prior'
    | 'wide-prior'
    | 'lognormal'
    | 't'
    | 'percentile';
  /** The station, or the stations left out; empty for another method. */
  readonly stations: readonly string[];
  readonly densityPerHa: number | null;
  readonly intervalPerHa: Interval | null;
  readonly change: number | null;
  readonly said: Said | null;
  readonly reason: Reason | null;
}

/** stands: nothing tried here changes it much; leans: one station moves it by a fifth; rests: by a third, or turns the statement about the reference. */
export type Verdict = 'stands' | 'leans' | 'rests';

export interface SensitivityAnswer {
  readonly density: DensityAnswer;
  readonly reference: ReferenceUsed | null;
  /** Why the reference is not used. */
  readonly referenceHeld: Reason | null;
  /** What the default answer says of the reference. */
  readonly said: Said | null;
  readonly verdict: Verdict | null;
  /** The greatest mover first. */
  readonly stations: readonly StationInfluence[];
  readonly lowest: StationInfluence | null;
  readonly highest: StationInfluence | null;
  readonly variants: readonly Variant[];
  /** Variants and stations with which the statement about the reference is another one. */
  readonly turned: readonly string[];
  readonly reason: Reason | null;
}

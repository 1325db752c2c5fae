/** What is asked of the size of a survey, and what is answered. */

import type { PlanProblem } from '../planning/size/plan-problem.ts';
import type { CurvePoint } from '../planning/size/precision-curve.ts';
import type { Species } from '../survey/words.ts';
import type { UnseenSpecies } from './pilot.ts';
import type { SizeSubject, TypedSpecies } from './size-subject.ts';

export type SizeGoalKind = 'cv' | 'margin' | 'change';

export interface SizeRequest {
  /** An earlier survey of the book; null where typed values are used. */
  readonly survey: string | null;
  readonly typed: readonly TypedSpecies[];
  /** Empty for every target of the survey; a target of its own for a species, else null. */
  readonly species: readonly { readonly name: string; readonly target: number | null }[];
  readonly goal: SizeGoalKind;
  readonly target: number;
  readonly power: number;
  readonly confidence: number;
  /** In this share of pilots the plan is large enough. */
  readonly assurance: number;
  readonly stationsPerDay: number | null;
  readonly days: number | null;
  readonly dayCost: number | null;
  readonly mostStations: number | null;
  /** Of reaching and leaving a station, and of one transect, in one unit; null when not asked. */
  readonly stationCost: number | null;
  readonly transectCost: number | null;
  readonly simulations: number;
  readonly seed: number;
}

export interface SpeciesSize {
  readonly subject: SizeSubject;
  readonly target: number;
  /** What to plan: with the pilot's factor. Null when the most stations tried are not enough. */
  readonly stations: number | null;
  /** The same if the earlier survey had the spread right. */
  readonly stationsAsSeen: number | null;
  /** The same with the stations split to suit this species. */
  readonly stationsBestSplit: number | null;
  /** A change told against a first survey of the same size; null for other goals and beyond the most tried. */
  readonly stationsEach: number | null;
  readonly rows: readonly SizeRow[];
  /** How many transects at a station the costs ask for; null when not asked or not known. */
  readonly transects: TransectAdvice | null;
  /** CV and smallest fall at many sizes, for a picture. */
  readonly curve: readonly CurvePoint[];
}

export interface TransectAdvice {
  readonly now: number;
  readonly best: number;
  /** Share of the variance of single transects that lies between stations. */
  readonly likeness: number;
  /** The CV with the present number over that with the best, for the same money. */
  readonly cvNowOverBest: number;
}

export interface SizeRow extends CurvePoint {
  readonly cost: number | null;
  /** Smallest fall and rise told between two surveys of this size. */
  readonly fallEach: number;
  readonly riseEach: number;
  /** Simulated shares against the earlier survey, or one of the same size; for the goal of a change only. */
  readonly told: number | null;
  readonly falseAlarm: number | null;
}

export interface SizeResult {
  readonly species: readonly SpeciesSize[];
  readonly unseen: readonly UnseenSpecies[];
  /** Stations of the earlier survey; null without one. */
  readonly pilot: { readonly survey: string; readonly stations: number } | null;
  /** The largest need that can be met, and the species that has it. */
  readonly need: { readonly stations: number; readonly species: string; readonly isEach: boolean } | null;
  /** As many stations as can be worked: the days or the limit given; else those of the earlier survey. */
  readonly reach: number | null;
  readonly problems: readonly PlanProblem[];
  readonly bookSpecies: readonly Species[];
  readonly dataVersion: string | null;
}

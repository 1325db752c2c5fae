import type { ClumpedIntervals } from '../../estimates/clumped/clumped-intervals.ts';
import { normalQuantile } from '../../maths/distributions.ts';
import type { SeededRandom } from '../../maths/random.ts';
import {
  beliefOf,
  logErrorOf,
  type Told,
  toldByBelief,
  toldByLogRatio,
  toldByNoneSeen,
} from './change-told.ts';
import { expectations } from './expectations.ts';
import type { EarlierEstimate, RehearsalSpecies, RehearsalStratum } from './rehearsal-request.ts';
import { type SimulatedSurvey, surveySimulator } from './simulated-survey.ts';

export interface RehearsedChange {
  /** The true change: 0.5 a halving. */
  readonly factor: number;
  /** Shares of the simulated surveys whose report would say so; the rest stays undecided. */
  readonly toldFall: number;
  readonly toldRise: number;
  /** Share that tells the change in its true direction (for 1: in either, which would be wrong). */
  readonly told: number;
  /** Standard error of `told` from the number of simulated surveys. */
  readonly simulationError: number;
}

export interface RehearsalSettings {
  readonly interval: 'clumped' | 'lognormal';
  readonly changeTest: 'log-ratio' | 'belief';
  readonly surveys: number;
  readonly confidence: number;
  readonly intervals: ClumpedIntervals;
  readonly random: SeededRandom;
}

/**
 * One change rehearsed: the planned survey carried out many times after it, each compared with the earlier estimate.
 *
 * The truth behind the earlier estimate is taken at the middles of 25 equally likely parts of a log-normal around it.
 */
export function rehearsedChange(
  strata: readonly RehearsalStratum[],
  species: RehearsalSpecies & { readonly earlier: EarlierEstimate },
  factor: number,
  settings: RehearsalSettings,
): RehearsedChange {
  const { earlier } = species;
  const { densityPerHa } = expectations(strata, species);
  const simulators = Array.from({ length: earlier.cv === 0 ? 1 : parts }, (_, i) => {
    const truth = earlier.densityPerHa * Math.exp(logErrorOf(earlier.cv) * normalQuantile((i + 0.5) / parts));
    const before = earlier.cv === 0 ? earlier.densityPerHa : truth;
    return surveySimulator(strata, species, (before * factor) / densityPerHa);
  });
  let falls = 0;
  let rises = 0;
  for (let i = 0; i < settings.surveys; i++) {
    const part = partOf(i, settings.surveys, simulators.length);
    const survey = simulators[part]!(settings.random);
    const told = toldOf(survey, { strata, species, settings });
    falls += Number(told === 'fall');
    rises += Number(told === 'rise');
  }
  const toldFall = falls / settings.surveys;
  const toldRise = rises / settings.surveys;
  const told = factor === 1 ? toldFall + toldRise : factor < 1 ? toldFall : toldRise;
  const simulationError = Math.sqrt((told * (1 - told)) / settings.surveys);
  return { factor, toldFall, toldRise, told, simulationError };
}

/**
 * Which part of the belief about the earlier truth the survey of this number starts from: whole rounds over all of
 * them, and the surveys left over spread evenly. Ten surveys on the ten lowest parts would tell falls far too often.
 */
function partOf(survey: number, surveys: number, count: number): number {
  const left = surveys % count;
  const inRounds = surveys - left;
  if (survey < inRounds) return survey % count;
  return Math.floor(((survey - inRounds + 0.5) * count) / left);
}

function toldOf(
  survey: SimulatedSurvey,
  met: {
    readonly strata: readonly RehearsalStratum[];
    readonly species: RehearsalSpecies & { readonly earlier: EarlierEstimate };
    readonly settings: RehearsalSettings;
  },
): Told {
  const { strata, species, settings } = met;
  const { earlier, clumpingK } = species;
  const { confidence } = settings;
  if (survey.animals === 0) return toldByNoneSeen(survey, earlier, { clumpingK, confidence });
  if (survey.estimate.standardError === null) return 'undecided';
  if (settings.changeTest === 'log-ratio') return toldByLogRatio(survey, earlier, confidence);
  return toldByBelief(beliefOf(survey, strata, settings)!.belief, earlier, confidence);
}

/** Parts of the log-normal belief about the earlier truth. */
const parts = 25;

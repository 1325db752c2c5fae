/** What has to be said beside a number that stands. */

import type { Reason } from '../../survey/message.ts';
import type { Counted } from './answer-scope.ts';
import type { DensityInterval } from './density-interval.ts';
import type { DensitySettings } from './density-settings.ts';
import { membersOf } from './holds.ts';
import { type PointEstimate, populationUnits } from './point-estimate.ts';
import type { ScopeInHand } from './scopes.ts';

interface AnswerSoFar {
  readonly scope: ScopeInHand;
  readonly settings: DensitySettings;
  readonly point: PointEstimate;
  readonly found: DensityInterval;
  readonly hold: Reason | null;
  readonly counted: Counted;
}

/** Below this many stations with animals no interval keeps its promise fully (METHODS 0; a proposal, not published). */
const fewPositiveStations = 10;
/** From this share of a stratum on, the finite population correction matters (Cochran 1977, from memory). */
const largeFraction = 0.05;

export function cautionsOf(answer: AnswerSoFar): readonly Reason[] {
  return [
    accepted(answer),
    zeroBound(answer),
    fewPositive(answer),
    thin(answer),
    unequalEffort(answer),
    emptyStrata(answer),
    large(answer),
    unknownSelection(answer),
  ].filter((reason) => reason !== null);
}

function accepted({ settings, hold }: AnswerSoFar): Reason | null {
  if (settings.acceptance === null || hold === null) return null;
  return { code: 'accepted', parameters: { ...settings.acceptance, held: hold.code } };
}

function zeroBound({ found, settings }: AnswerSoFar): Reason | null {
  if (found.zeroBound === null) return null;
  const percent = Math.round(settings.confidence * 1000) / 10;
  return { code: 'zero-bound', parameters: { ...found.zeroBound, percent } };
}

function fewPositive({ counted, found }: AnswerSoFar): Reason | null {
  const positive = counted.stationsWithSpecies;
  if (positive === 0 || positive >= fewPositiveStations || found.intervalPerHa === null) return null;
  return { code: 'few-positive-stations', parameters: { positive } };
}

function thin({ found }: AnswerSoFar): Reason | null {
  return found.isThin ? { code: 'too-few-for-clumped', parameters: {} } : null;
}

function unequalEffort({ counted }: AnswerSoFar): Reason | null {
  const strata = counted.estimators
    .filter((one) => one.estimator === 'ratio of sums')
    .map((one) => one.stratum);
  return strata.length === 0
    ? null
    : { code: 'ratio-of-sums-used', parameters: { strata: strata.join(', ') } };
}

function emptyStrata({ found }: AnswerSoFar): Reason | null {
  if (found.zeroStrata.length === 0) return null;
  return { code: 'zero-stratum-prior', parameters: { strata: found.zeroStrata.join(', ') } };
}

function large({ scope, settings }: AnswerSoFar): Reason | null {
  if (settings.finitePopulation || scope.scope.by === 'station') return null;
  const fractions = scope.parts.map(({ sample }) => {
    const units = populationUnits(sample);
    return { stratum: sample.stratum.name, fraction: units === null ? 0 : sample.observed.length / units };
  });
  const big = fractions.filter((one) => one.fraction > largeFraction);
  if (big.length === 0) return null;
  const percent = Math.round(100 * Math.max(...big.map((one) => one.fraction)));
  return {
    code: 'finite-population',
    parameters: { strata: big.map((one) => one.stratum).join(', '), percent },
  };
}

function unknownSelection({ scope }: AnswerSoFar): Reason | null {
  const stations = membersOf(scope.parts).filter(({ observation }) => observation.selection === null).length;
  if (stations === 0 || scope.scope.by === 'station') return null;
  return { code: 'selection-not-recorded', parameters: { stations } };
}

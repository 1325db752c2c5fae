/** One answer: what was counted, what it says, what is held or cannot be known, and why. */

import type { Reason } from '../../survey/message.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer } from '../answers.ts';
import { meanWherePresent } from '../mean-where-present.ts';
import { prevalence } from '../prevalence.ts';
import type { Archive } from './archive.ts';
import { cautionsOf } from './cautions.ts';
import { type DensityInterval, densityInterval } from './density-interval.ts';
import type { DensitySettings } from './density-settings.ts';
import { emptyAnswer } from './empty-answer.ts';
import { holdOf, membersOf } from './holds.ts';
import { leftOutOf } from './left-out.ts';
import { withLocalMeanError } from './local-mean-error.ts';
import { type PointEstimate, pointEstimate, valuesWithin, weightOf } from './point-estimate.ts';
import type { ScopeInHand } from './scopes.ts';
import { stockInterval } from './stock-interval.ts';

export interface AnswerContext {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly settings: DensitySettings;
  readonly archive: Pick<Archive, 'intervalsFor'>;
}

export function answerScope(scope: ScopeInHand, context: AnswerContext): DensityAnswer {
  const { survey, species, settings } = context;
  const hold = holdOf(scope, settings);
  const counted = countedIn(scope, context);
  const reason = (settings.acceptance === null ? hold : null) ?? unknowable(scope);
  if (reason !== null) return { ...emptyAnswer(survey, species, scope.scope, reason), ...counted };
  const members = membersOf(scope.parts);
  if (members.every(({ observation }) => observation.selection === 'hand-picked')) {
    return handPickedAnswer(scope, context, counted);
  }
  const usual = withoutStationStock(scope, pointEstimate(scope, settings.finitePopulation));
  const local = settings.variance === 'local mean' ? withLocalMeanError(scope, usual) : null;
  const point = local?.point ?? usual;
  const found = densityInterval(scope, point, context);
  return {
    ...emptyAnswer(survey, species, scope.scope, null),
    ...counted,
    ...numbersOf(point, found, counted.animals, settings.confidence),
    ...presenceOf(scope, context),
    reason: reasonOf(scope, point, counted.animals),
    cautions: [
      ...cautionsOf({ scope, settings, point, found, hold, counted }),
      ...(local === null ? [] : [local.told]),
    ],
  };
}

/** A station speaks for the belts that were swum there; how much area it stands for is a matter of the draw. */
function withoutStationStock(scope: ScopeInHand, point: PointEstimate): PointEstimate {
  return scope.scope.by === 'station' ? { ...point, stock: null, areaHa: null } : point;
}

export type Counted = ReturnType<typeof countedIn>;

function countedIn(scope: ScopeInHand, { species, settings }: AnswerContext) {
  const observations = membersOf(scope.parts).map((one) => one.observation);
  return {
    stations: observations.length,
    stationsWithSpecies: observations.filter((one) => one.animals > 0).length,
    animals: observations.reduce((total, one) => total + one.animals, 0),
    searchedAreaM2: observations.reduce((total, one) => total + one.searchedAreaCm2, 0) / 10_000,
    estimators: scope.parts.map(({ sample }) => ({
      stratum: sample.stratum.name,
      estimator: sample.estimator,
    })),
    leftOut: leftOutOf(scope, species, settings.acceptance),
  };
}

/** What no design can answer: no searched station, or strata to be weighted without their areas. */
function unknowable(scope: ScopeInHand): Reason | null {
  const empty = scope.parts.filter(({ sample }) => sample.observed.length === 0);
  if (empty.length > 0 || membersOf(scope.parts).length === 0) {
    const where = empty.length > 0 ? empty.map(stratumName).join(', ') : scope.scope.name;
    return { code: 'no-searched-area', parameters: { where } };
  }
  const withoutArea = scope.parts.filter(({ sample }) => sample.stratum.areaHa === null);
  if (withoutArea.length === 0) return null;
  if (scope.scope.by !== 'survey' && scope.parts.length === 1) return null;
  return { code: 'stratum-without-area', parameters: { strata: withoutArea.map(stratumName).join(', ') } };
}

function stratumName(part: ScopeInHand['parts'][number]): string {
  return part.sample.stratum.name;
}

/** Places chosen for what was known to be there speak for themselves only: a mean, no spread, no stock. */
function handPickedAnswer(scope: ScopeInHand, context: AnswerContext, counted: Counted): DensityAnswer {
  const point = pointEstimate(scope, false);
  return {
    ...emptyAnswer(context.survey, context.species, scope.scope, null),
    ...counted,
    densityPerHa: point.density.value,
    reason: { code: 'hand-picked-only', parameters: { where: scope.scope.name } },
  };
}

function numbersOf(point: PointEstimate, found: DensityInterval, animals: number, confidence: number) {
  const { density, stock, areaHa } = point;
  // Nothing seen: a spread of zero would be a lie; the bound speaks instead.
  const spread = animals === 0 ? null : density;
  return {
    densityPerHa: density.value,
    standardErrorPerHa: spread?.standardError ?? null,
    degreesOfFreedom: spread?.degreesOfFreedom ?? null,
    intervalPerHa: found.intervalPerHa,
    intervalMethod: found.method,
    scatteredBoundPerHa: found.zeroBound?.scatteredPerHa ?? null,
    belief: found.belief,
    areaHa,
    totalAnimals: stock?.value ?? null,
    totalStandardError: (animals === 0 ? null : stock?.standardError) ?? null,
    totalInterval: stock === null ? null : stockInterval(point, found.intervalPerHa, confidence),
  };
}

/** The share of stations with the species, and the density where it is: two answers, never multiplied by the whole area. */
function presenceOf(scope: ScopeInHand, { settings }: AnswerContext) {
  const strata = scope.parts
    .filter(({ isMember }) => isMember.some(Boolean))
    .map((part) => {
      const { sample, isMember } = part;
      const inside = sample.observed.filter((_, i) => isMember[i]);
      const isPresent = sample.observed.map((one, i) => isMember[i]! && one.animals > 0);
      const values = isPresent.some(Boolean) ? valuesWithin(part, isPresent) : sample.valuesPerHa;
      return {
        name: sample.stratum.name,
        // A stratum of which only some stations belong weighs as much as those stations stand for.
        weight: (weightOf(part) * inside.length) / sample.observed.length,
        values: values.filter((_, i) => isMember[i]),
        present: inside.map((one) => one.animals > 0),
        populationUnits: null,
      };
    });
  const share = prevalence(strata, settings.confidence);
  const present = meanWherePresent(strata, scope.scope.name);
  return {
    prevalence: share.value,
    prevalenceInterval: share.interval,
    meanWherePresentPerHa: present.value,
  };
}

function reasonOf(scope: ScopeInHand, point: PointEstimate, animals: number): Reason | null {
  if (scope.scope.by === 'station') return { code: 'one-station', parameters: { station: scope.scope.name } };
  if (animals === 0) return null;
  if (point.density.reason !== null) return point.density.reason;
  const withoutArea = scope.parts.filter(({ sample }) => sample.stratum.areaHa === null);
  if (withoutArea.length === 0) return null;
  return { code: 'stratum-without-area', parameters: { strata: withoutArea.map(stratumName).join(', ') } };
}

/** The interval that was asked for, the belief behind the fading band, or the bound when nothing was seen. */

import { seededRandom } from '../../maths/random.ts';
import { sum } from '../../maths/variance.ts';
import type { Belief } from '../answers.ts';
import { bcaInterval, percentileInterval, resampledMeans } from '../bootstrap.ts';
import { containing } from '../clumped/belief.ts';
import { combineStrata } from '../clumped/combine-strata.ts';
import { zeroBelief } from '../clumped/zero-stratum.ts';
import { lognormalInterval } from '../lognormal-interval.ts';
import type { Interval, IntervalMethod } from '../shapes.ts';
import { tInterval } from '../t-interval.ts';
import { clumpedUpperBoundPerHa, poissonUpperBoundPerHa } from '../zero-count-bound.ts';
import type { AnswerContext } from './answer-scope.ts';
import { defaultClumpingK } from './density-settings.ts';
import { membersOf } from './holds.ts';
import { type PointEstimate, weightOf } from './point-estimate.ts';
import type { ScopeInHand } from './scopes.ts';

export interface ZeroBound {
  readonly scatteredPerHa: number;
  readonly clumpedPerHa: number;
  readonly k: number;
  readonly source: 'archive' | 'default' | 'chosen';
}

export interface DensityInterval {
  readonly intervalPerHa: Interval | null;
  readonly method: IntervalMethod | null;
  readonly belief: Belief | null;
  readonly zeroBound: ZeroBound | null;
  /** Strata without animals whose belief rests on the prior for empty strata. */
  readonly zeroStrata: readonly string[];
  /** The clumped-count interval was asked for, and too few stations of a stratum belong to the scope. */
  readonly isThin: boolean;
}

const none: DensityInterval = {
  intervalPerHa: null,
  method: null,
  belief: null,
  zeroBound: null,
  zeroStrata: [],
  isThin: false,
};

export function densityInterval(
  scope: ScopeInHand,
  point: PointEstimate,
  context: AnswerContext,
): DensityInterval {
  const members = membersOf(scope.parts);
  if (scope.scope.by === 'station') return none;
  if (members.every(({ observation }) => observation.animals === 0)) return zeroInterval(scope, context);
  if (point.density.standardError === null) return none;
  const asked = context.settings.interval;
  if (asked === 'clumped' && !isThinlySpread(scope)) return clumpedInterval(scope, point, context);
  const method = asked === 'clumped' ? 'lognormal' : asked;
  const intervalPerHa = designInterval(point, method, context);
  return intervalPerHa === null ? none : { ...none, intervalPerHa, method, isThin: asked === 'clumped' };
}

/** Fewest stations in a stratum from which the clumped-count model can learn about a part of it. */
const fewestMembers = 3;

/**
 * A site or zone often holds one or two stations of a stratum. From those the clumped-count model learns
 * next to nothing and its upper end runs to where the grid was cut; the design knows the whole stratum.
 */
function isThinlySpread({ scope, parts }: ScopeInHand): boolean {
  if (scope.by === 'survey' || scope.by === 'stratum') return false;
  const members = parts.map(({ isMember }) => isMember.filter(Boolean).length);
  return members.some((n) => n > 0 && n < fewestMembers);
}

function designInterval(
  { density, resampleFrom }: PointEstimate,
  method: Exclude<IntervalMethod, 'clumped'>,
  { settings }: AnswerContext,
): Interval | null {
  const { confidence, seed, draws } = settings;
  if (method === 't') return tInterval(density, confidence);
  if (method === 'lognormal') return lognormalInterval(density, confidence);
  const means = resampledMeans(resampleFrom, seededRandom(seed), draws);
  if (method === 'percentile') return percentileInterval(means, confidence);
  const bca = bcaInterval({ means, value: density.value!, strata: resampleFrom }, confidence);
  return bca?.interval ?? null;
}

/** Strata are independent: their beliefs are summed by the area that their member stations stand for. */
function clumpedInterval(scope: ScopeInHand, point: PointEstimate, context: AnswerContext): DensityInterval {
  const intervals = context.archive.intervalsFor(context.species, context.survey);
  const zeroStrata: string[] = [];
  const strata = scope.parts.flatMap((part) => {
    const inside = part.sample.observed.filter((_, i) => part.isMember[i]);
    if (inside.length === 0) return [];
    const counts = inside.map((one) => ({ animals: one.animals, areaM2: one.searchedAreaCm2 / 10_000 }));
    const weight = (weightOf(part) * inside.length) / part.sample.observed.length;
    if (counts.some((count) => count.animals > 0))
      return [{ weight, posterior: intervals.posterior(counts) }];
    zeroStrata.push(part.sample.stratum.name);
    return [{ weight, posterior: intervals.zeroStratum(counts.map((count) => count.areaM2)) }];
  });
  const combined = combineStrata(strata, context.settings.confidence);
  return {
    ...none,
    intervalPerHa: containing(combined.intervalPerHa, point.density.value!),
    method: 'clumped',
    belief: { densityPerHa: combined.band.densityPerHa, weight: combined.band.relativeWeight },
    zeroStrata: strata.length > 1 ? zeroStrata : [],
  };
}

/** Nothing seen: from zero to the one-sided bound, clumped by default, scattered beside it. */
function zeroInterval(scope: ScopeInHand, context: AnswerContext): DensityInterval {
  const { settings, archive, species, survey } = context;
  const areasM2 = membersOf(scope.parts).map(({ observation }) => observation.searchedAreaCm2 / 10_000);
  const priors = archive.intervalsFor(species, survey).priors;
  const fromArchive = priors.source === 'archive' ? priors.negativeBinomialK.median : null;
  const k = settings.clumpingK ?? fromArchive ?? defaultClumpingK;
  const source = settings.clumpingK !== null ? 'chosen' : fromArchive !== null ? 'archive' : 'default';
  const areasHa = areasM2.map((areaM2) => areaM2 / 10_000);
  const scatteredPerHa = poissonUpperBoundPerHa(sum(areasHa), settings.confidence);
  const clumpedPerHa = clumpedUpperBoundPerHa(areasHa, k, settings.confidence);
  if (scatteredPerHa === null || clumpedPerHa === null) return none;
  const band = zeroBelief(areasM2, k);
  return {
    ...none,
    intervalPerHa: [0, clumpedPerHa],
    method: 'clumped',
    belief: { densityPerHa: band.densityPerHa, weight: band.relativeWeight },
    zeroBound: { scatteredPerHa, clumpedPerHa, k, source },
  };
}

import { chiSquareQuantile, logGamma } from '../maths/distributions.ts';
import { findMaximum, findRoot } from '../maths/search.ts';
import { sum } from '../maths/variance.ts';

/** Counts of one species at stations, and what was searched there, in hectares. */
export interface CountsOverAreas {
  readonly animals: readonly number[];
  readonly areasHa: readonly number[];
}

export interface NegativeBinomialFit {
  /** 'poisson' when the counts are no more clumped than chance: k is then without limit (null). */
  readonly model: 'negative binomial' | 'poisson';
  readonly densityPerHa: number;
  /** Variance of a count is m + m^2 / k. */
  readonly clumpingK: number | null;
  readonly logLikelihood: number;
  /** Profile-likelihood interval; the upper end is null when the counts do not bound it. */
  readonly densityIntervalPerHa: readonly [low: number, high: number | null];
  /** The upper end is null when no finite k is excluded; the whole is null for a Poisson fit. */
  readonly clumpingInterval: readonly [low: number, high: number | null] | null;
}

/**
 * Density in animals per hectare and clumping k of station counts, by maximum likelihood of the negative
 * binomial with mean density times area; how clumped the animals are, for bounds and planning.
 *
 * With unequal areas it is not the ratio of sums. Assumes independent random stations of one stratum.
 * Null without stations or without animals. Throws when an area is not positive.
 * Cost: about 10 000 passes over the stations.
 * Source: Bliss and Fisher 1953 (from memory); R MASS glm.nb and profile likelihood.
 */
export function negativeBinomialFit(counts: CountsOverAreas, confidence = 0.95): NegativeBinomialFit | null {
  if (counts.areasHa.some((area) => !(area > 0)))
    throw new Error('negativeBinomialFit requires positive areas');
  const animals = sum(counts.animals);
  if (animals === 0) return null;
  const profile = profiles(counts, animals / sum(counts.areasHa));
  const best = profile.bestLogK();
  const isPoisson = best.at > Math.log(poissonK);
  const logK = isPoisson ? logKEnd : best.at;
  const drop = chiSquareQuantile(confidence, 1) / 2;
  const logDensity = profile.logDensityGiven(logK);
  const density = profile.ends(profile.heightAtDensity, { at: logDensity, height: best.value - drop });
  const k = isPoisson ? null : profile.ends(profile.heightAtK, { at: logK, height: best.value - drop });
  return {
    model: isPoisson ? 'poisson' : 'negative binomial',
    densityPerHa: Math.exp(logDensity),
    clumpingK: isPoisson ? null : Math.exp(logK),
    logLikelihood: best.value,
    densityIntervalPerHa: [
      Math.exp(density.low ?? -Infinity),
      density.high === null ? null : Math.exp(density.high),
    ],
    clumpingInterval: k && [Math.exp(k.low ?? -Infinity), k.high === null ? null : Math.exp(k.high)],
  };
}

/**
 * The density and k of `negativeBinomialFit`, and the lowest k that its 95 % profile interval allows (also where the
 * best fit is Poisson): for screening many species, at a twentieth of the cost. Null without animals.
 */
export function negativeBinomialScreen(counts: CountsOverAreas): {
  readonly densityPerHa: number;
  /** Null for Poisson. */
  readonly clumpingK: number | null;
  readonly lowestK: number;
} | null {
  const animals = sum(counts.animals);
  if (animals === 0) return null;
  const profile = profiles(counts, animals / sum(counts.areasHa));
  const best = profile.bestLogK(1e-3);
  const isPoisson = best.at > Math.log(poissonK);
  const logK = isPoisson ? logKEnd : best.at;
  const top = { at: logK, height: best.value - chiSquareQuantile(0.95, 1) / 2 };
  return {
    densityPerHa: Math.exp(profile.logDensityGiven(logK)),
    clumpingK: isPoisson ? null : Math.exp(logK),
    lowestK: Math.exp(endOf(profile.heightAtK, top, -1, 1e-3) ?? logKStart),
  };
}

/** Beyond this k the variance differs from Poisson by less than any survey could tell. */
const poissonK = 1e5;
const logKStart = Math.log(1e-5);
const logKEnd = Math.log(1e7);

function profiles(counts: CountsOverAreas, ratioPerHa: number) {
  const logRatio = Math.log(ratioPerHa);
  const factorials = sum(counts.animals.map((count) => logGamma(count + 1)));
  const logLikelihood = (logDensity: number, logK: number) =>
    logLikelihoodOf(counts, Math.exp(logDensity), Math.exp(logK)) - factorials;
  const logDensityGiven = (logK: number) => bestLogDensity(counts, Math.exp(logK), logRatio);
  const heightAtK = (logK: number) => logLikelihood(logDensityGiven(logK), logK);
  const kBracket = { low: logKStart, high: logKEnd };
  const heightAtDensity = (logDensity: number) =>
    findMaximum((logK) => logLikelihood(logDensity, logK), kBracket, 1e-7).value;
  return {
    heightAtK,
    heightAtDensity,
    logDensityGiven,
    ends,
    bestLogK: (tolerance?: number) => findMaximum(heightAtK, kBracket, tolerance),
  };
}

/** Sum over stations of the log probability, without the factorials of the counts. */
function logLikelihoodOf(counts: CountsOverAreas, densityPerHa: number, k: number): number {
  let total = 0;
  for (let i = 0; i < counts.animals.length; i++) {
    const count = counts.animals[i]!;
    const expected = densityPerHa * counts.areasHa[i]!;
    total += count * Math.log(expected) - (k + count) * Math.log1p(expected / k) + logRisingPower(k, count);
  }
  return total;
}

/** ln of k (k + 1) … (k + count - 1) / k^count; summed for small counts because two large gammas would cancel. */
function logRisingPower(k: number, count: number): number {
  if (count > 400 && k < 1e4) return logGamma(k + count) - logGamma(k) - count * Math.log(k);
  let total = 0;
  for (let j = 1; j < count; j++) total += Math.log1p(j / k);
  return total;
}

/** For a given k the score falls steadily with the density, so one crossing is the best density. */
function bestLogDensity(counts: CountsOverAreas, k: number, logRatio: number): number {
  const score = (logDensity: number) => {
    const density = Math.exp(logDensity);
    let total = 0;
    for (let i = 0; i < counts.animals.length; i++) {
      const expected = density * counts.areasHa[i]!;
      total += (counts.animals[i]! - expected) / (1 + expected / k);
    }
    return total;
  };
  let width = 1;
  while (score(logRatio - width) <= 0 || score(logRatio + width) >= 0) width *= 2;
  return findRoot(score, { low: logRatio - width, high: logRatio + width }, 1e-12);
}

/** Where a profile falls to the wanted height on either side of its top; null when it never does. */
function ends(heightAt: (x: number) => number, top: { readonly at: number; readonly height: number }) {
  return { low: endOf(heightAt, top, -1, 1e-9), high: endOf(heightAt, top, 1, 1e-9) };
}

function endOf(
  heightAt: (x: number) => number,
  top: { readonly at: number; readonly height: number },
  direction: 1 | -1,
  tolerance: number,
): number | null {
  const above = (x: number) => heightAt(x) - top.height;
  for (let step = 0.25, inside = top.at; step < 32; step *= 2) {
    const outside = top.at + direction * step;
    if (above(outside) < 0) {
      const bracket = { low: Math.min(inside, outside), high: Math.max(inside, outside) };
      return findRoot(above, bracket, tolerance);
    }
    inside = outside;
  }
  return null;
}

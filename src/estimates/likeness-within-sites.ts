import { mean, sum } from '../maths/variance.ts';

export interface LikenessWithinSites {
  readonly betweenMeanSquare: number;
  readonly withinMeanSquare: number;
  /** Stations per site, adjusted for unequal numbers. */
  readonly stationsPerSite: number;
  readonly betweenVariance: number;
  /** Share of the variance that lies between sites; negative estimates are given as they come. */
  readonly intraclassCorrelation: number | null;
  /** How many times larger the variance is than if the stations had been independent. */
  readonly designEffect: number | null;
}

/**
 * How alike the stations of one site are, from the analysis of variance of one factor.
 * Null with fewer than two sites or without a site of two stations. Source: Snedecor and Cochran 1980
 * (from memory).
 */
export function likenessWithinSites(sites: readonly (readonly number[])[]): LikenessWithinSites | null {
  const groups = sites.filter((site) => site.length > 0);
  const n = sum(groups.map((site) => site.length));
  if (groups.length < 2 || n === groups.length) return null;
  const centre = mean(groups.flat());
  const betweenSquares = sum(groups.map((site) => site.length * (mean(site) - centre) ** 2));
  const withinSquares = sum(groups.flatMap((site) => site.map((value) => (value - mean(site)) ** 2)));
  const betweenMeanSquare = betweenSquares / (groups.length - 1);
  const withinMeanSquare = withinSquares / (n - groups.length);
  const stationsPerSite = (n - sum(groups.map((site) => site.length ** 2)) / n) / (groups.length - 1);
  const betweenVariance = (betweenMeanSquare - withinMeanSquare) / stationsPerSite;
  const variance = betweenVariance + withinMeanSquare;
  const intraclassCorrelation = variance > 0 ? betweenVariance / variance : null;
  const designEffect =
    intraclassCorrelation === null ? null : 1 + (stationsPerSite - 1) * intraclassCorrelation;
  return {
    betweenMeanSquare,
    withinMeanSquare,
    stationsPerSite,
    betweenVariance,
    intraclassCorrelation,
    designEffect,
  };
}

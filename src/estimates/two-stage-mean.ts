import { betweenUnitVariance } from '../maths/between-unit-variance.ts';
import { sum } from '../maths/variance.ts';
import type { Reason } from '../survey/message.ts';

/** One visited site (reef, community) and the stations worked there. */
export interface SiteValues {
  readonly name: string;
  readonly values: readonly number[];
  /** Stations the site could hold. */
  readonly stationsInSite: number;
}

export interface TwoStageEstimate {
  readonly value: number | null;
  readonly total: number | null;
  /** Both stages with their finite population corrections. */
  readonly standardError: number | null;
  readonly totalStandardError: number | null;
  /** Between sites alone, as if drawn with replacement: the wider one, to report with few sites. */
  readonly ultimateClusterStandardError: number | null;
  /** Sites minus one. */
  readonly degreesOfFreedom: number | null;
  readonly reason: Reason | null;
}

/**
 * Mean over sites drawn first and stations drawn within them, in the unit of the values.
 *
 * A station stands for (sites in all / sites visited) times (stations in the site / stations worked).
 * Stations of one site are alike: the spread comes from the sites. Assumes both draws were random.
 *
 * Without sites: null, 'no-station'. With one site: no standard error, 'lone-station'. A site with one
 * station of many has no spread inside: only the ultimate-cluster error is given, with the site named.
 * Source: Cochran 1977, chapters 10 and 11 (from memory); R survey svydesign(ids = ~site + station).
 */
export function twoStageMean(sites: readonly SiteValues[], sitesInAll: number): TwoStageEstimate {
  const visited = sites.filter((site) => site.values.length > 0);
  if (visited.length === 0) return { ...unknown, reason: { code: 'no-station', parameters: { where: '' } } };
  const weights = visited.map(
    (site) => (sitesInAll / visited.length) * (site.stationsInSite / site.values.length),
  );
  const total = sum(visited.map((site, i) => weights[i]! * sum(site.values)));
  const units = sum(visited.map((site, i) => weights[i]! * site.values.length));
  const value = total / units;
  const ofMean = twoStageVariance(visited, sitesInAll, (y, i) => (weights[i]! * (y - value)) / units);
  const ofTotal = twoStageVariance(visited, sitesInAll, (y, i) => weights[i]! * y);
  return {
    value,
    total,
    standardError: rootOrNull(ofMean.variance),
    totalStandardError: rootOrNull(ofTotal.variance),
    ultimateClusterStandardError: rootOrNull(ofMean.ultimateCluster),
    degreesOfFreedom: visited.length > 1 ? visited.length - 1 : null,
    reason:
      ofMean.lone.length === 0
        ? null
        : { code: 'lone-station', parameters: { strata: ofMean.lone.join(', ') } },
  };
}

const unknown: TwoStageEstimate = {
  value: null,
  total: null,
  standardError: null,
  totalStandardError: null,
  ultimateClusterStandardError: null,
  degreesOfFreedom: null,
  reason: null,
};

function twoStageVariance(
  sites: readonly SiteValues[],
  sitesInAll: number,
  contribution: (value: number, site: number) => number,
) {
  const byStation = sites.map((site, i) => ({
    name: site.name,
    contributions: site.values.map((value) => contribution(value, i)),
    populationUnits: site.stationsInSite,
  }));
  const siteTotals = {
    name: sites.map((site) => site.name).join(', '),
    contributions: byStation.map((site) => sum(site.contributions)),
  };
  const ultimate = betweenUnitVariance([{ ...siteTotals, populationUnits: null }]);
  const between = betweenUnitVariance([{ ...siteTotals, populationUnits: sitesInAll }]);
  const within = betweenUnitVariance(byStation);
  const seen = Math.min(1, sites.length / sitesInAll);
  const variance =
    between.variance === null || within.variance === null ? null : between.variance + seen * within.variance;
  const lone = between.loneStrata.length > 0 ? between.loneStrata : within.loneStrata;
  return { variance, ultimateCluster: ultimate.variance, lone };
}

function rootOrNull(variance: number | null): number | null {
  return variance === null ? null : Math.sqrt(variance);
}

import { expect, test } from 'vitest';
import b4 from '../../test/vectors/b4_two_stage.json' with { type: 'json' };
import b7 from '../../test/vectors/b7_published_api.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { likenessWithinSites } from './likeness-within-sites.ts';
import { simpleMean } from './simple-mean.ts';
import { twoStageMean } from './two-stage-mean.ts';

interface StagedRows {
  readonly site: readonly number[];
  readonly values: readonly number[];
  readonly stationsInSite: readonly number[];
}

function sitesOf(rows: StagedRows) {
  return [...new Set(rows.site)].map((site) => ({
    name: String(site),
    values: rows.values.filter((_, i) => rows.site[i] === site),
    stationsInSite: rows.stationsInSite[rows.site.indexOf(site)]!,
  }));
}

const { data, expected, tolerance_relative: tolerance } = b4;
const sites = sitesOf({ site: data.site, values: data.y, stationsInSite: data.N_st });

// Authority: vector b4 (R 4.2.2, survey svydesign(ids = ~site + station, fpc = ~M + N)).
test('five of twenty-two sites: the spread comes from the sites', () => {
  const estimate = twoStageMean(sites, 22);
  expected.weights.forEach((weight, i) => {
    const site = sites.find((candidate) => candidate.name === String(data.site[i]))!;
    near((22 / sites.length) * (site.stationsInSite / site.values.length), weight, tolerance);
  });
  near(estimate.value, expected.mean, tolerance);
  near(estimate.standardError, expected.se_two_stage_fpc, tolerance);
  near(estimate.ultimateClusterStandardError, expected.se_ultimate_cluster, tolerance);
  near(estimate.total, expected.total, tolerance);
  near(estimate.totalStandardError, expected.se_total, tolerance);
  expect(estimate.degreesOfFreedom).toBe(expected.df);
});

// Authority: vector b4.
test('stations of one site taken as independent would understate the error', () => {
  const plain = simpleMean({ name: 'all', values: data.y, populationUnits: null });
  near(plain.standardError, expected.se_if_stations_independent, tolerance);
});

// Authority: vector b4 (R aov).
test('stations of one site are alike', () => {
  const likeness = likenessWithinSites(sites.map((site) => site.values))!;
  near(likeness.betweenMeanSquare, expected.anova_ms_between, tolerance);
  near(likeness.withinMeanSquare, expected.anova_ms_within, tolerance);
  near(likeness.stationsPerSite, expected.n0, tolerance);
  near(likeness.betweenVariance, expected.var_between, tolerance);
  near(likeness.intraclassCorrelation, expected.icc, tolerance);
  near(likeness.designEffect, expected.design_effect_approx, tolerance);
});

// Authority: published 670.81, SE 30.099 (from memory); to 1e-9 vector b7 (R survey svymean of apiclus2).
test('published school data in two stages', () => {
  const { dnum, api00, fpc1, fpc2 } = b7.data.apiclus2;
  const estimate = twoStageMean(sitesOf({ site: dnum, values: api00, stationsInSite: fpc2 }), fpc1[0]!);
  expect(estimate.value?.toFixed(2)).toBe('670.81');
  expect(estimate.standardError?.toFixed(3)).toBe('30.099');
  near(estimate.value, b7.expected.clus2_mean, b7.tolerance_relative);
  near(estimate.standardError, b7.expected.clus2_se, b7.tolerance_relative);
  expect(estimate.degreesOfFreedom).toBe(b7.expected.clus2_df);
});

test('no site, one site, and a site with one station of many say what is missing', () => {
  const site = (name: string, values: number[]) => ({ name, values, stationsInSite: 10 });
  expect(twoStageMean([], 5)).toMatchObject({ value: null, reason: { code: 'no-station' } });
  expect(twoStageMean([site('a', [3, 5])], 5)).toMatchObject({
    value: 4,
    standardError: null,
    degreesOfFreedom: null,
  });
  const lone = twoStageMean([site('a', [3, 5]), site('b', [1])], 5);
  expect(lone).toMatchObject({
    standardError: null,
    reason: { code: 'lone-station', parameters: { strata: 'b' } },
  });
  expect(lone.ultimateClusterStandardError).toBeGreaterThan(0);
  expect(likenessWithinSites([[1], [2]])).toBeNull();
  expect(
    likenessWithinSites([
      [3, 3],
      [3, 3],
    ])?.intraclassCorrelation,
  ).toBeNull();
});

test('no animal at any site is zero with an error of zero', () => {
  const zero = twoStageMean(
    [
      { name: 'a', values: [0, 0], stationsInSite: 9 },
      { name: 'b', values: [0, 0], stationsInSite: 9 },
    ],
    4,
  );
  expect(zero).toMatchObject({ value: 0, total: 0, standardError: 0, ultimateClusterStandardError: 0 });
});

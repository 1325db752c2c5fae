import { describe, expect, test } from 'vitest';
import h2 from '../../test/vectors/h2_local_mean_variance.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { sampleVariance } from '../maths/variance.ts';
import { localMeanVariance, spreadMean } from './local-mean.ts';
import { neighbourWeights } from './neighbour-weights.ts';

const { data, expected, tolerance_relative: tolerance } = h2;
const distance = (i: number, j: number) => Math.hypot(data.x[i]! - data.x[j]!, data.y[i]! - data.y[j]!);
const inclusion = data.z.map(() => data.pi);

describe('the local-mean variance', () => {
  // Authority: vector h2 (R with ginv, re-implemented from the published script; Stevens and Olsen 2003).
  test('is what R finds, and smaller than the usual one where neighbours are alike', () => {
    const found = localMeanVariance({ values: data.z, inclusion, distance });
    near(found.total, expected.total, tolerance);
    near(Math.sqrt(found.varianceOfTotal!), expected.se_total_local, tolerance);
    const mean = spreadMean([{ name: 'reef', weight: 400, values: data.z, distance }]);
    near(mean.value, expected.mean, tolerance);
    near(mean.standardError, expected.se_mean_local, tolerance);
    near(Math.sqrt(sampleVariance(data.z)! / data.z.length), expected.se_mean_srs, tolerance);
  });

  // Authority: definition; the weights a station receives and those it gives add up to one.
  test('rests on weights that add up to one both ways', () => {
    const weights = neighbourWeights({ inclusion, distance })!;
    data.z.forEach((_, i) => {
      const add = (some: typeof weights) => some.reduce((total, one) => total + one.weight, 0);
      near(add(weights.filter((one) => one.of === i)), 1, 1e-9);
      near(add(weights.filter((one) => one.neighbour === i)), 1, 1e-9);
    });
  });

  test('does not depend on the order of the stations or the unit of length', () => {
    const turned = data.z.map((_, i) => data.z.length - 1 - i);
    const first = localMeanVariance({ values: data.z, inclusion, distance }).varianceOfTotal!;
    const other = localMeanVariance({
      values: turned.map((i) => data.z[i]!),
      inclusion,
      distance: (i, j) => 1000 * distance(turned[i]!, turned[j]!),
    });
    near(other.varianceOfTotal, first, 1e-9);
  });

  // Authority: by hand: values 1, 2, 6 with mean 3 and variance 7; of the mean 7/3.
  test('is the usual formula for three stations, and unknown for one', () => {
    const three = { values: [1, 2, 6], inclusion: [3, 3, 3], distance: () => 1 };
    const found = localMeanVariance(three);
    expect(found.method).toBe('simple');
    near(found.varianceOfTotal, 7 / 3, 1e-12);
    const lone = spreadMean([{ name: 'reef', weight: 1, values: [4], distance: () => 0 }]);
    expect(lone).toMatchObject({ value: 4, standardError: null });
    expect(spreadMean([{ name: 'reef', weight: 1, values: [], distance: () => 0 }]).value).toBeNull();
  });

  test('is zero where all stations are alike, and stands stations on one spot', () => {
    const same = { values: data.z.map(() => 5), inclusion, distance: () => 0 };
    near(localMeanVariance(same).varianceOfTotal, 0, 1e-9);
  });
});

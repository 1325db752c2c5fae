import { describe, expect, test } from 'vitest';
import e1 from '../../../test/vectors/e1_length_weight.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { builtInValues } from '../../survey/built-in-values/built-in-values.ts';
import type { LengthWeight } from '../../survey/value-words.ts';
import { fitLengthWeight } from './fit-length-weight.ts';
import { lengthWeightLine, weightOfLengthG } from './length-weight-line.ts';
import { isPossibleWeight } from './plausible-weight.ts';

const { expected, tolerance_relative: tolerance } = e1;
const weighings = e1.data.L_mm.map((lengthMm, i) => ({ lengthMm, weightG: e1.data.W_g[i]! }));
const fit = fitLengthWeight(weighings, 'live')!;

describe('a length-weight line through weighed animals', () => {
  // Authority: vector e1 (R 4.2.2, lm and vcov).
  test('has the two numbers, their covariance and the spread about it', () => {
    near(fit.lnA, expected.ln_a, tolerance);
    near(fit.pair.a, expected.a, tolerance);
    near(fit.pair.b, expected.b, tolerance);
    near(fit.pair.covariance!.lnAVariance, expected.se_ln_a ** 2, tolerance);
    near(fit.pair.covariance!.lnABCovariance, expected.cov, tolerance);
    near(fit.pair.covariance!.bVariance, expected.se_b ** 2, tolerance);
    near(fit.pair.residualSdLn! ** 2, expected.sigma2, tolerance);
    near(fit.rSquared, expected.r2, tolerance);
    near(fit.geometricMeanSlope, expected.b_GM_regression, tolerance);
  });

  // Authority: vector e1.
  test('gives mean weights with either correction, and both are above the curve', () => {
    near(fit.correction, expected.CF, tolerance);
    near(fit.smearing, expected.smearing, tolerance);
    const line = lengthWeightLine(fit.pair);
    expected.predict_L.forEach((lengthMm, i) => {
      near(weightOfLengthG(line, lengthMm), expected.mean_W_CF[i]!, tolerance);
      near(weightOfLengthG({ ...line, correction: 1 }, lengthMm), expected.median_W[i]!, tolerance);
    });
  });

  // Authority: vector e1 (a_if_cm); then an invariance: an animal weighs the same in whatever unit its length is written.
  test('is the same line in centimetres, covariance included', () => {
    const inCm = fitLengthWeight(
      weighings.map((one) => ({ ...one, lengthMm: one.lengthMm / 10 })),
      'live',
    )!.pair;
    near(inCm.a, expected.a_if_cm, tolerance);
    const back = lengthWeightLine({ ...inCm, lengthUnit: 'cm' });
    const line = lengthWeightLine(fit.pair);
    near(weightOfLengthG(back, 180), weightOfLengthG(line, 180), 1e-9);
    near(back.covariance!.lnAVariance, line.covariance!.lnAVariance, 1e-8);
    near(back.covariance!.lnABCovariance, line.covariance!.lnABCovariance, 1e-8);
  });

  // By hand: kilograms are a thousand grams.
  test('in kilograms weighs a thousand times as many grams', () => {
    const inKg: LengthWeight = { ...fit.pair, weightUnit: 'kg' };
    near(
      weightOfLengthG(lengthWeightLine(inKg), 150),
      1000 * weightOfLengthG(lengthWeightLine(fit.pair), 150),
      1e-12,
    );
  });

  // Our own rule: five animals and three different lengths.
  test('is not drawn through four animals, nor through animals of two lengths', () => {
    expect(fitLengthWeight(weighings.slice(0, 4), 'live')).toBeNull();
    const two = weighings.map((one, i) => ({ ...one, lengthMm: i % 2 === 0 ? 100 : 200 }));
    expect(fitLengthWeight(two, 'live')).toBeNull();
  });

  // By hand: order of rows changes nothing.
  test('does not depend on the order of weighing', () => {
    near(fitLengthWeight(weighings.toReversed(), 'live')!.pair.b, fit.pair.b, 1e-12);
  });
});

describe('a slip of the unit', () => {
  // Authority: JOB scenario 6: 18 for 180 with b 2.356 changes a weight by 10^b, a factor of 227.
  test('changes the weight of an animal by a factor of 227', () => {
    const line = lengthWeightLine(fit.pair);
    const factor = weightOfLengthG(line, 180) / weightOfLengthG(line, 18);
    near(factor, 10 ** expected.b, 1e-9);
    expect(Math.round(factor)).toBe(227);
  });

  // By hand: 0.119 * 20^2.356 = 138 g is a sea cucumber; 0.119 * 200^2.356 = 31 kg is heavier than a cube of water of 200 mm (8.2 kg).
  test('of a pair makes an animal that cannot be', () => {
    expect(isPossibleWeight(200, 138)).toBe(true);
    expect(isPossibleWeight(200, 31_000)).toBe(false);
    expect(isPossibleWeight(200, 138 / 227)).toBe(false);
    expect(isPossibleWeight(200, 138 / 1000)).toBe(false);
  });

  // Authority: published mean weights with their mean lengths (FAO catalogue 2012, Conand 1998, read): bounds that
  // refused one of them would be too narrow.
  test('is told from every animal that was really weighed', () => {
    let weighed = 0;
    for (const { content } of builtInValues) {
      if (content.what !== 'mean-weight' || content.meanLengthMm === null) continue;
      expect(isPossibleWeight(content.meanLengthMm, content.weightG)).toBe(true);
      expect(isPossibleWeight(content.meanLengthMm, content.weightG / 227)).toBe(false);
      weighed++;
    }
    expect(weighed).toBeGreaterThan(20);
  });
});

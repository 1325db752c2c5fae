import { describe, expect, it } from 'vitest';
import k1 from '../../../test/vectors/k1_reference.json' with { type: 'json' };
import k2 from '../../../test/vectors/k2_harvest.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { lognormalLowerLimitPerHa, probabilityBelow } from './probability-below.ts';

const { D, cv, ref, df } = k1.data;
const rows = D.map((densityPerHa, i) => ({ densityPerHa, cv: cv[i]!, reference: ref[i]!, i }));

// Authority: vector k1_reference (R 4.2.2, pnorm and pt), tolerance inside.
describe('the chance of being below a reference', () => {
  it('is that of the t distribution where the degrees of freedom are known, else of the normal', () => {
    for (const { i, reference, ...estimate } of rows) {
      const level = { densityPerHa: reference, cv: null };
      near(
        probabilityBelow({ ...estimate, degreesOfFreedom: df[i]! }, level)!,
        k1.expected.p_below[i]!,
        k1.tolerance_relative,
      );
    }
  });

  // Authority: vector k2_harvest, p_below_limit.
  it('is half a per cent for a density of 46 and a limit of 25', () => {
    const estimate = { densityPerHa: k2.data.D, cv: k2.data.cv, degreesOfFreedom: null };
    near(
      probabilityBelow(estimate, { densityPerHa: k2.data.limit_ref, cv: null })!,
      k2.expected.p_below_limit,
      k2.tolerance_relative,
    );
  });

  // Authority: METHODS k, a reference with its own spread adds ln(1 + cv_ref^2); by hand with cv_ref = cv, so that the
  // distance of the first row, Phi^-1(0.935777) = 1.5203, shrinks by sqrt(2) to 1.0750: Phi 0.8588.
  it('comes nearer to a half when the reference itself is uncertain', () => {
    const estimate = { densityPerHa: 32, cv: 0.3, degreesOfFreedom: null };
    const sure = probabilityBelow(estimate, { densityPerHa: 50, cv: null })!;
    const unsure = probabilityBelow(estimate, { densityPerHa: 50, cv: 0.3 })!;
    expect(sure).toBeCloseTo(0.935777, 5);
    expect(unsure).toBeCloseTo(0.8588, 3);
  });

  it('cannot be told of nothing seen, nor without a spread', () => {
    const level = { densityPerHa: 50, cv: null };
    expect(probabilityBelow({ densityPerHa: 0, cv: 0.3, degreesOfFreedom: 5 }, level)).toBeNull();
    expect(probabilityBelow({ densityPerHa: 10, cv: 0, degreesOfFreedom: 5 }, level)).toBeNull();
  });
});

describe('the one-sided lower limit', () => {
  // Authority: vector k1_reference, lower80 and lower95 (normal quantiles); k2_harvest, D_lower90.
  it('holds with 80, 90 and 95 % as R has it', () => {
    for (const { i, reference: _, ...estimate } of rows) {
      const normal = { ...estimate, degreesOfFreedom: null };
      near(lognormalLowerLimitPerHa(normal, 0.8)!, k1.expected.lower80_one_sided[i]!, k1.tolerance_relative);
      near(lognormalLowerLimitPerHa(normal, 0.95)!, k1.expected.lower95_one_sided[i]!, k1.tolerance_relative);
    }
    const harvest = { densityPerHa: k2.data.D, cv: k2.data.cv, degreesOfFreedom: null };
    near(lognormalLowerLimitPerHa(harvest, 0.9)!, k2.expected.D_lower90, k2.tolerance_relative);
  });

  // Invariance: fewer degrees of freedom, less sure.
  it('is lower when the spread rests on few stations', () => {
    const few = lognormalLowerLimitPerHa({ densityPerHa: 32, cv: 0.3, degreesOfFreedom: 4 }, 0.9)!;
    expect(few).toBeLessThan(
      lognormalLowerLimitPerHa({ densityPerHa: 32, cv: 0.3, degreesOfFreedom: null }, 0.9)!,
    );
  });
});

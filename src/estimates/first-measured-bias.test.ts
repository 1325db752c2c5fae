import { expect, test } from 'vitest';
import d2 from '../../test/vectors/d2_first30_bias.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { firstMeasuredBiasMm } from './first-measured-bias.ts';

const belt = { standardDeviationMm: d2.data.sd_mm, measured: d2.data.m, counted: d2.data.N };

// Authority: vector d2 (R 4.2.2, dnorm and qnorm).
test.each(d2.data.rho.map((correlation, i) => ({ correlation, i })))(
  'a correlation of $correlation between order and size',
  ({ correlation, i }) => {
    near(firstMeasuredBiasMm({ ...belt, correlation }), d2.expected.bias_mm[i]!, d2.tolerance_relative);
    if (correlation > 0) {
      const ratio =
        firstMeasuredBiasMm({ ...belt, correlation })! / (-correlation * belt.standardDeviationMm);
      near(ratio, d2.expected.inverse_mills, d2.tolerance_relative);
    }
  },
);

test('all measured leaves no bias, none measured leaves nothing to say', () => {
  expect(firstMeasuredBiasMm({ ...belt, correlation: 0.3, measured: 120 })).toBe(0);
  expect(firstMeasuredBiasMm({ ...belt, correlation: 0.3, measured: 0 })).toBeNull();
});

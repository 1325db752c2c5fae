import { expect, test } from 'vitest';
import b2 from '../../test/vectors/b2_stratified.json' with { type: 'json' };
import b6 from '../../test/vectors/b6_mean_where_present.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { meanWherePresent } from './mean-where-present.ts';
import { prevalence } from './prevalence.ts';
import { s1Strata } from './s1-survey.ts';
import { stratifiedMean } from './stratified-mean.ts';

const strata = s1Strata(b2.data).map((stratum) => ({
  ...stratum,
  present: stratum.values.map((value) => value > 0),
}));

// Authority: vector b6 (R 4.2.2, survey svymean of a subset).
test('prevalence times the mean where present is the overall mean', () => {
  const present = meanWherePresent(strata, 'S1');
  const share = prevalence(strata).value!;
  near(present.value, b6.expected.mean_present, b6.tolerance_relative);
  near(present.standardError, b6.expected.se_mean_present, b6.tolerance_relative);
  near(share, b6.expected.p, b6.tolerance_relative);
  near(stratifiedMean(strata).value, b6.expected.overall, b6.tolerance_relative);
  near(share * present.value!, b6.expected.product, b6.tolerance_relative);
});

test('seen nowhere, there is no such mean', () => {
  const nowhere = strata.map((stratum) => ({ ...stratum, present: stratum.present.map(() => false) }));
  expect(meanWherePresent(nowhere, 'S1')).toMatchObject({
    value: null,
    standardError: null,
    reason: { code: 'none-seen' },
  });
});

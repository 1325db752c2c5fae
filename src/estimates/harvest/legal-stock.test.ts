import { describe, expect, it } from 'vitest';
import k2 from '../../../test/vectors/k2_harvest.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { closureOf } from './closure.ts';
import type { LegalShare } from './harvest-answer.ts';
import { catchAt, jointCvOf, legalStock } from './legal-stock.ts';
import { typedStock } from './typed-stock.ts';

const { data, expected, tolerance_relative: tolerance } = k2;
const stock = typedStock(
  { densityPerHa: data.D, cv: data.cv, areaHa: data.area_ha, degreesOfFreedom: null },
  0.9,
);
/** 0.06 / 0.38: the standard error that the vector's joint coefficient of variation was made with. */
const shareCv = Math.sqrt((1 + expected.cv_legal ** 2) / (1 + data.cv ** 2) - 1);
const legal: LegalShare = {
  limitMm: null,
  source: 'typed',
  typed: true,
  share: data.p_ge_limit,
  interval: null,
  cv: shareCv,
  measured: null,
};
const weight = {
  grams: data.mean_weight_kg_legal * 1000,
  state: 'live',
  source: 'typed',
  typed: true,
  cautions: [],
} as const;

// Authority: vector k2_harvest (R, arithmetic), tolerance inside.
describe('what may be taken', () => {
  it('starts from the lower limit of the stock', () => {
    near(stock.animals, expected.stock, tolerance);
    near(stock.lower.perHa, expected.D_lower90, tolerance);
    near(stock.lower.animals, expected.stock_lower90, tolerance);
  });

  it('counts legal animals only, by the lower limit and by the estimate', () => {
    const made = legalStock(stock, legal, 0.9);
    near(made.lowerAnimals, expected.legal_stock_lower, tolerance);
    near(made.pointAnimals, expected.legal_stock_point, tolerance);
    near(made.jointCv!, expected.cv_legal, tolerance);
    near(made.jointLowerAnimals!, expected.legal_lower90_joint, 1e-8);
  });

  it('is animals and tonnes at each rate', () => {
    const basis = { stock, legal: legalStock(stock, legal, 0.9), weight };
    data.rates.forEach((rate, i) => {
      const taken = catchAt({ rate, source: 'typed' }, basis);
      near(taken.animals, expected.catch_numbers[i]!, tolerance);
      near(taken.tonnes!, expected.catch_tonnes[i]!, tolerance);
      near(taken.pointAnimals, expected.catch_numbers_point[i]!, tolerance);
    });
  });

  // By hand: the standard error of the share is 0.06, of a share of 0.38.
  it('has a joint spread wider than either of its parts', () => {
    near(shareCv, 0.06 / 0.38, 1e-9);
    expect(jointCvOf(0.24, shareCv)).toBeGreaterThan(0.24);
    expect(jointCvOf(0.24, 0)).toBeCloseTo(0.24, 12);
  });

  it('has no tonnes without a weight', () => {
    const basis = { stock, legal: legalStock(stock, legal, 0.9), weight: null };
    expect(catchAt({ rate: 0.05, source: 'typed' }, basis).tonnes).toBeNull();
  });
});

describe('the closure rule', () => {
  const rule = { limitPerHa: 50, source: 'typed' };
  it('closes where the chance of being below is greater than the chosen risk, and not where it is equal', () => {
    expect(
      closureOf({ ...rule, risk: 0.1 }, { ofBelief: null, byDesign: 0.63, noneSeenBoundPerHa: null })?.closed,
    ).toBe(true);
    expect(
      closureOf({ ...rule, risk: 0.63 }, { ofBelief: null, byDesign: 0.63, noneSeenBoundPerHa: null })
        ?.closed,
    ).toBe(false);
  });

  it('goes by the belief where there is one, and says nothing where nothing can be told', () => {
    const noneSeenBoundPerHa = null;
    const closure = closureOf({ ...rule, risk: 0.1 }, { ofBelief: 0.92, byDesign: 0.99, noneSeenBoundPerHa });
    expect(closure).toMatchObject({ closed: true, probabilityFrom: 'clumped-count belief' });
    const open = closureOf({ ...rule, risk: 0.1 }, { ofBelief: 0.03, byDesign: 0.06, noneSeenBoundPerHa });
    expect(open).toMatchObject({ closed: false, probabilityFrom: 'clumped-count belief' });
    const untold = { ofBelief: null, byDesign: null, noneSeenBoundPerHa };
    expect(closureOf({ ...rule, risk: 0.1 }, untold)).toBeNull();
  });

  // The lower limit of 90 % and the rule at a risk of 0.10 are one statement: below 50 by the design means below 50 there too.
  it('closes where the design alone exceeds the risk, as the smaller lower limit would', () => {
    const chance = { ofBelief: 0.05, byDesign: 0.12, noneSeenBoundPerHa: null };
    expect(closureOf({ ...rule, risk: 0.1 }, chance)).toMatchObject({
      closed: true,
      probabilityBelow: 0.12,
      probabilityFrom: 'design',
      beliefProbabilityBelow: 0.05,
    });
  });

  it('closes where none was seen: nothing speaks for a density above the limit', () => {
    const closure = closureOf(
      { ...rule, risk: 0.1 },
      { ofBelief: null, byDesign: null, noneSeenBoundPerHa: 7.6 },
    );
    expect(closure).toMatchObject({ closed: true, probabilityBelow: null, boundPerHa: 7.6 });
  });
});

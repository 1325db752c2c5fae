import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import g1 from '../../../test/vectors/g1_sample_size.json' with { type: 'json' };
import g5 from '../../../test/vectors/g5_pilot_uncertainty.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { pilotFactor } from './pilot-factor.ts';
import { stationsForClumpedCounts, stationsForCv, stationsForMargin } from './stations-for-precision.ts';

describe('stations for a margin of error', () => {
  // Authority: vector g1 (R 4.2.2; Cochran 1977 eq 4.4, from memory).
  test('follow the normal formula, the population and t', () => {
    const { cv, r, N } = g1.data.simple;
    const { n0, n, n_ceiling, n_iterated_t } = g1.expected.simple;
    cv.forEach((stationCv, i) => {
      const need = stationsForMargin({ stationCv, margin: r[i]!, populationStations: N[i]! }).value!;
      near(need.withoutLimit, n0[i]!, g1.tolerance_relative);
      near(need.withPopulation, n[i]!, g1.tolerance_relative);
      expect(Math.ceil(need.withPopulation)).toBe(n_ceiling[i]);
      expect(need.withT).toBe(n_iterated_t[i]);
    });
  });

  // Authority: by definition; a ground that holds 10 stations cannot take 11, and when all are visited nothing is left to err.
  test('never pass what the ground can hold', () => {
    const need = stationsForMargin({ stationCv: 3, margin: 0.05, populationStations: 10 }).value!;
    expect(need.stations).toBe(10);
  });

  test('with the population counted lie between the two formulas', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.integer({ min: 5, max: 500 }),
        (stationCv, margin, populationStations) => {
          const need = stationsForMargin({ stationCv, margin, populationStations }).value!;
          expect(need.stations).toBeLessThanOrEqual(Math.max(2, Math.min(populationStations, need.withT)));
          expect(need.stations).toBeGreaterThanOrEqual(Math.floor(need.withPopulation));
        },
      ),
    );
  });

  test('are refused for a margin of zero or a CV that is no number', () => {
    const none = { populationStations: null };
    expect(stationsForMargin({ stationCv: 1, margin: 0, ...none })).toEqual({
      value: null,
      problems: [
        {
          code: 'plan-number-impossible',
          severity: 'stop',
          parameters: { what: 'margin', value: 0, above: 0 },
        },
      ],
    });
    expect(stationsForMargin({ stationCv: Number.NaN, margin: 0.3, ...none }).value).toBeNull();
  });
});

describe('stations for a target CV', () => {
  // Authority: vector g1 (Elliott 1977, from memory; R).
  test('follow the mean and the clumping of the counts', () => {
    const { mu, k, cv } = g1.data.nb;
    mu.forEach((meanPerStation, i) => {
      const need = stationsForClumpedCounts({ meanPerStation, clumpingK: k[i]!, targetCv: cv[i]! }).value!;
      near(need.exact, g1.expected.nb_n[i]!, g1.tolerance_relative);
    });
  });

  // Authority: by hand. Station CV 1.2, target 0.3: (1.2 / 0.3)^2 = 16. Scattered, 4 a station, target 0.1: 1/4/0.01 = 25.
  test('are whole where the formula is whole', () => {
    expect(stationsForCv({ stationCv: 1.2, targetCv: 0.3 }).value!.stations).toBe(16);
    const scattered = { meanPerStation: 4, clumpingK: null, targetCv: 0.1 };
    expect(stationsForClumpedCounts(scattered).value!.stations).toBe(25);
  });

  test('are never fewer than two, since one shows no spread', () => {
    expect(stationsForCv({ stationCv: 0.1, targetCv: 0.9 }).value!.stations).toBe(2);
  });

  test('are refused when no animal was seen', () => {
    const nothing = { meanPerStation: 0, clumpingK: 0.5, targetCv: 0.2 };
    expect(stationsForClumpedCounts(nothing).problems[0]!.parameters).toMatchObject({
      what: 'meanPerStation',
    });
  });
});

describe('the factor for a small pilot', () => {
  // Authority: vector g5 (R qchisq; Browne 1995).
  test('falls with the stations of the pilot', () => {
    g5.data.n.forEach((stations, i) => {
      const factor = pilotFactor({ stations, assurance: g5.data.gamma }).value;
      near(factor, g5.expected.inflation[i]!, g5.tolerance_relative);
    });
  });

  test('is not known for a pilot of one station', () => {
    expect(pilotFactor({ stations: 1 }).problems[0]!.code).toBe('plan-pilot-too-small');
  });
});

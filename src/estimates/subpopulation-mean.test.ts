import { describe, expect, test } from 'vitest';
import b3 from '../../test/vectors/b3_domain.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { simpleMean } from './simple-mean.ts';
import {
  type Subpopulation,
  subpopulationDifference,
  subpopulationMean,
  subpopulationTotal,
} from './subpopulation-mean.ts';

const areasHa = { RF: 420, LG: 310, SL: 145 };

function zoneOf(name: string): Subpopulation {
  const { stratum, zone, density_ind_ha } = b3.data;
  const strata = Object.entries(areasHa).map(([stratumName, weight]) => ({
    name: stratumName,
    weight,
    populationUnits: null,
    stations: density_ind_ha
      .map((value, i) => ({ value, within: zone[i] === name, stratum: stratum[i] }))
      .filter((station) => station.stratum === stratumName),
  }));
  return { name, strata };
}

describe('zones that cut across strata', () => {
  // Authority: vector b3 (R 4.2.2, survey svyby and svytotal).
  test.each(b3.expected.zone.map((name, i) => ({ name, i })))(
    'the $name zone keeps all stations in its error',
    ({ name, i }) => {
      const estimate = subpopulationMean(zoneOf(name));
      const total = subpopulationTotal(zoneOf(name));
      near(estimate.value, b3.expected.mean[i]!, b3.tolerance_relative);
      near(estimate.standardError, b3.expected.se[i]!, b3.tolerance_relative);
      near(estimate.estimatedWeight, b3.expected.est_domain_area_ha[i]!, b3.tolerance_relative);
      near(total.value, b3.expected.total_zone[i]!, b3.tolerance_relative);
      near(total.standardError, b3.expected.se_total_zone[i]!, b3.tolerance_relative);
      // By hand: 21 stations, 3 strata.
      expect(estimate.degreesOfFreedom).toBe(18);
    },
  );

  // Authority: vector b3 (R survey svycontrast over svyby with covmat).
  test('the difference of two zones knows that they share strata', () => {
    const difference = subpopulationDifference(zoneOf('open'), zoneOf('closed'));
    near(difference.value, b3.expected.diff_open_minus_closed, b3.tolerance_relative);
    near(difference.standardError, b3.expected.se_diff, b3.tolerance_relative);
  });
});

describe('small zones', () => {
  const stratum = (name: string, within: readonly boolean[]) => ({
    name,
    weight: 100,
    populationUnits: null,
    stations: within.map((inside, i) => ({ value: 10 * (i + 1), within: inside })),
  });

  test('one station inside gives a value, no standard error and the reason', () => {
    const zone = { name: 'north', strata: [stratum('reef', [true, false, false])] };
    expect(subpopulationMean(zone)).toMatchObject({
      value: 10,
      standardError: null,
      stations: 1,
      reason: { code: 'too-few-in-subpopulation', parameters: { name: 'north', stations: 1 } },
    });
  });

  test('no station inside gives nothing', () => {
    const zone = { name: 'north', strata: [stratum('reef', [false, false])] };
    const reason = { code: 'no-station', parameters: { where: 'north' } };
    expect(subpopulationMean(zone)).toMatchObject({ value: null, stations: 0, reason });
    expect(subpopulationMean({ name: 'north', strata: [] })).toMatchObject({ value: null, reason });
    expect(subpopulationTotal(zone)).toMatchObject({ value: null, reason });
    expect(subpopulationDifference(zone, zone)).toMatchObject({ value: null, reason });
  });

  // By hand: 4 stations minus 1 stratum; the flat holds none of the zone and adds no degrees of freedom.
  test('strata without a station of the zone take no part', () => {
    const zone = {
      name: 'north',
      strata: [stratum('reef', [true, true, true, false]), stratum('flat', [false])],
    };
    expect(subpopulationMean(zone)).toMatchObject({ value: 20, degreesOfFreedom: 3, reason: null });
  });

  test('a lone station of a stratum leaves the zone without a standard error', () => {
    const zone = { name: 'north', strata: [stratum('reef', [true, true]), stratum('pass', [true])] };
    expect(subpopulationMean(zone)).toMatchObject({ standardError: null, reason: { code: 'lone-station' } });
  });

  test('a zone that holds every station is the stratum itself', () => {
    const all = subpopulationMean({ name: 'all', strata: [stratum('reef', [true, true, true])] });
    const plain = simpleMean({ name: 'reef', values: [10, 20, 30], populationUnits: null });
    near(all.value, plain.value!, 1e-14);
    near(all.standardError, plain.standardError!, 1e-14);
    expect(all.degreesOfFreedom).toBe(plain.degreesOfFreedom);
  });

  test('two zones of different surveys cannot be differenced here', () => {
    const one = { name: 'a', strata: [stratum('reef', [true, true])] };
    const other = { name: 'b', strata: [stratum('flat', [true, true])] };
    expect(() => subpopulationDifference(one, other)).toThrow('same strata');
  });
});

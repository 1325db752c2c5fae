import { describe, expect, test } from 'vitest';
import a1 from '../../test/vectors/a1_station_density.json' with { type: 'json' };
import b2 from '../../test/vectors/b2_stratified.json' with { type: 'json' };
import d1 from '../../test/vectors/d1_length_raised.json' with { type: 'json' };
import { allNear, near } from '../maths/nearness.ts';
import { weightedQuantile } from '../maths/quantiles.ts';
import { mean, sampleVariance, sum } from '../maths/variance.ts';
import {
  classEdgesMm,
  raisedClasses,
  raisedMeanLengthMm,
  raisedQuantilesMm,
  raisedShareAtLeast,
} from './raised-length-estimates.ts';
import { type LengthStratum, raiseLengths } from './raised-lengths.ts';
import { tInterval } from './t-interval.ts';
import { weightedRatio } from './weighted-ratio.ts';

const areasHa = { RF: 420, LG: 310, SL: 145 };
const rows = d1.data.measured;
const { expected, tolerance_relative: tolerance } = d1;

/** All 21 stations of S1; the tallies of the vector's measured animals, one per transect. */
function s1Lengths(): LengthStratum[] {
  return Object.entries(areasHa).map(([name, weight]) => ({
    name,
    weight,
    stations: a1.data.stations.station
      .map((code, i) => ({
        code,
        stratum: a1.data.stations.stratum[i],
        searchedAreaM2: a1.expected.area_m2[i]!,
      }))
      .filter((station) => station.stratum === name)
      .map(({ code, searchedAreaM2 }) => ({ searchedAreaM2, tallies: talliesOf(code) })),
  }));
}

function talliesOf(code: string) {
  const own = rows.station.map((station, i) => ({ station, i })).filter((row) => row.station === code);
  const transects = [...new Set(own.map(({ i }) => rows.transect[i]!))];
  return transects.map((transect) => {
    const here = own.filter(({ i }) => rows.transect[i] === transect);
    return {
      count: rows.count[here[0]!.i]!,
      lengths: here.map(({ i }) => ({ lengthMm: rows.length_mm[i]!, n: 1 })),
    };
  });
}

describe('the lengths of the miniature survey', () => {
  const raised = raiseLengths(s1Lengths())!;
  const lengths = raised.strata.flatMap((stratum) => stratum.stations.flat());

  // Authority: vector d1 (R 4.2.2); weights of the single animals, in any order.
  test('each measured animal stands for the counted ones of its transect', () => {
    // All animals together are the stock of vector b2; the vector's own sum leaves out one animal beyond its classes.
    near(sum(lengths.map((length) => length.stock)), b2.expected.total, tolerance);
    allNear(
      lengths.map((length) => length.stock).toSorted((a, b) => a - b),
      rows.wt.toSorted((a, b) => a - b),
      tolerance,
    );
    expect(raised.measured).toBe(rows.wt.length);
    expect(raised.borrowedAnimals).toBe(0);
    // In this vector every animal was measured: raising itself is tested by hand below.
    expect(raised.animals).toBe(raised.measured);
  });

  // Authority: vector d1, se_with_empty_stations_as_domain (R survey svymean). By hand: 21 stations - 3 strata.
  test('the mean length has the error of all searched stations', () => {
    const estimate = raisedMeanLengthMm(raised);
    near(estimate.value, expected.mean_length, tolerance);
    near(estimate.standardError, expected.se_with_empty_stations_as_domain, tolerance);
    expect(estimate.degreesOfFreedom).toBe(18);
  });

  // Authority: vector d1 (sd / sqrt(n) of the measured animals): what the tool must not report.
  test('the unweighted mean of the measured animals is another number with too small an error', () => {
    near(mean(rows.length_mm), expected.unweighted_mean_wrong, tolerance);
    near(
      Math.sqrt(sampleVariance(rows.length_mm)! / rows.length_mm.length),
      expected.se_wrong_srs,
      tolerance,
    );
    expect(raisedMeanLengthMm(raised).standardError).toBeGreaterThan(expected.se_wrong_srs);
    near(
      rows.length_mm.filter((length) => length >= d1.data.size_limit_mm).length / rows.length_mm.length,
      expected.prop_unweighted_wrong,
      tolerance,
    );
  });

  // Authority: vector d1 (R svyquantile, qrule "math").
  test('the quantiles are lengths that were measured', () => {
    allNear(raisedQuantilesMm(raised, expected.quantile_p), expected.quantile, tolerance);
  });

  // Authority: vector d1; sums differ in order, so an absolute 1e-6 animals for empty classes.
  test('length classes hold raised and measured numbers', () => {
    const classes = raisedClasses(raised, d1.data.bins_mm);
    expect(classes.map((one) => one.measured)).toEqual(expected.raw_by_bin);
    allNear(
      classes.map((one) => one.stock),
      expected.raised_numbers_by_bin,
      tolerance,
    );
    near(sum(classes.map((one) => one.stock)), expected.sum_raised, tolerance);
    // With edges that reach every length, the classes hold all counted animals.
    const all = raisedClasses(raised, classEdgesMm(raised, 20));
    near(sum(all.map((one) => one.share)), 1, 1e-12);
    near(sum(all.map((one) => one.animals)), raised.animals, 1e-12);
    expect(sum(all.map((one) => one.measured))).toBe(raised.measured);
  });

  // Authority: vector d1 for the share; by hand 21 - 3 degrees of freedom where the vector has 17.
  test('the share at or above the limit uses all searched stations', () => {
    const share = raisedShareAtLeast(raised, d1.data.size_limit_mm);
    near(share.value, expected.prop_ge_limit, tolerance);
    expect(share.degreesOfFreedom).toBe(18);
    expect(share.interval![0]).toBeLessThan(share.value!);
    expect(share.interval![1]).toBeGreaterThan(share.value!);
    expect(raisedShareAtLeast(raised, 10)).toMatchObject({ value: 1, interval: null });
  });
});

describe('the twenty stations where some were measured, as R had them', () => {
  const stations = s1Lengths().map((stratum) => ({
    ...stratum,
    all: stratum.stations.length,
    stations: stratum.stations.filter((station) => station.tallies.length > 0),
  }));
  // The weights keep the number of all stations: W / n_all = (W n_positive / n_all) / n_positive.
  const raised = raiseLengths(
    stations.map((s) => ({ ...s, weight: (s.weight * s.stations.length) / s.all })),
  )!;

  // Authority: vector d1 (R survey svymean on the measured animals only).
  test('mean length, error and interval are those of the vector', () => {
    const estimate = raisedMeanLengthMm(raised);
    near(estimate.value, expected.mean_length, tolerance);
    near(estimate.standardError, expected.se, tolerance);
    expect(estimate.degreesOfFreedom).toBe(expected.df);
    allNear(tInterval(estimate), expected.ci95, tolerance);
  });

  // Authority: vector d1 (R survey svyciprop, logit, xlogit and beta).
  test('the share at or above the limit has the logit interval of the vector', () => {
    const share = raisedShareAtLeast(raised, d1.data.size_limit_mm);
    near(share.value, expected.prop_ge_limit, tolerance);
    near(share.standardError, expected.prop_se, tolerance);
    allNear(share.interval, expected.ci_logit, tolerance);
    allNear(share.interval, expected.ci_xlogit, tolerance);
    allNear(share.betaInterval, expected.ci_beta, tolerance);
  });

  // Authority: vector d1 (R survey 4.1-1 svyquantile): the share below each quantile +/- t SE, read back on the lengths.
  test('the intervals of the quantiles follow from the shares below them', () => {
    const values = raised.strata
      .flatMap((s) => s.stations.flat())
      .map((l) => ({ value: l.lengthMm, weight: l.stock }));
    expected.quantile.forEach((quantile, i) => {
      const below = weightedRatio(
        raised.strata.map((stratum) => ({
          name: stratum.name,
          unitWeight: 1,
          numerators: stratum.stations.map((ls) =>
            sum(ls.map((l) => (l.lengthMm <= quantile ? l.stock : 0))),
          ),
          denominators: stratum.stations.map((ls) => sum(ls.map((l) => l.stock))),
          populationUnits: null,
        })),
      );
      const [low, high] = tInterval(below)!;
      expect([weightedQuantile(values, low), weightedQuantile(values, high)]).toEqual([
        expected.q_lo[i],
        expected.q_hi[i],
      ]);
    });
  });
});

describe('belts where the divers stopped measuring', () => {
  const lengthsOf = (...lengthsMm: number[]) => lengthsMm.map((lengthMm) => ({ lengthMm, n: 1 }));

  // By hand: (10 * 100 + 2 * 200) / 12, where the unweighted mean of the measured would be 150.
  test('count more than their measured animals', () => {
    const tallies = [
      { count: 10, lengths: lengthsOf(100, 100) },
      { count: 2, lengths: lengthsOf(200, 200) },
    ];
    const raised = raiseLengths([{ name: 'reef', weight: 3, stations: [{ searchedAreaM2: 240, tallies }] }])!;
    near(raisedMeanLengthMm(raised).value, 1400 / 12, 1e-14);
    expect(raised).toMatchObject({ animals: 12, measured: 4, borrowedAnimals: 0 });
  });

  // By hand: raise 2 and 1, R = (2 * 330 + 800) / 10 = 146, z = -21.6 and 21.6, v = 2 * (2 * 21.6^2) = 43.2^2.
  // At 150: 4 of 10; z = (0 - 6 * 0.4) / 10 = -0.24 and 0.24, v = 2 * (2 * 0.24^2) = 0.48^2.
  test('weigh so in the standard error too', () => {
    const stations = [
      { searchedAreaM2: 240, tallies: [{ count: 6, lengths: lengthsOf(100, 110, 120) }] },
      { searchedAreaM2: 240, tallies: [{ count: 4, lengths: [{ lengthMm: 200, n: 4 }] }] },
    ];
    const raised = raiseLengths([{ name: 'reef', weight: 100, stations }])!;
    near(raisedMeanLengthMm(raised).value, 146, 1e-13);
    near(raisedMeanLengthMm(raised).standardError, 43.2, 1e-13);
    near(raisedShareAtLeast(raised, 150).value, 0.4, 1e-13);
    near(raisedShareAtLeast(raised, 150).standardError, 0.48, 1e-13);
    // Stock: 50 ha a station, 10 animals on 0.024 ha each: 50 * 6 / 0.024 + 50 * 4 / 0.024.
    near(sum(raisedClasses(raised, [0, 300]).map((one) => one.stock)), (50 * 10) / 0.024, 1e-13);
  });

  // By hand: a station of half the area stands for twice the stock: (2 * 100 + 1 * 200) / 3.
  test('stand for more stock where less was searched', () => {
    const one = { count: 1, lengths: lengthsOf(100) };
    const other = { count: 1, lengths: lengthsOf(200) };
    const stations = [
      { searchedAreaM2: 120, tallies: [one] },
      { searchedAreaM2: 240, tallies: [other] },
    ];
    near(raisedMeanLengthMm(raiseLengths([{ name: 'reef', weight: 1, stations }])!).value, 400 / 3, 1e-13);
  });
});

describe('animals counted where none was measured', () => {
  const measuredTally = {
    count: 4,
    lengths: [
      { lengthMm: 100, n: 1 },
      { lengthMm: 200, n: 1 },
    ],
  };
  const silent = { count: 6, lengths: [] };
  const station = (...tallies: (typeof measuredTally)[]) => ({ searchedAreaM2: 240, tallies });
  const reef = (name: string, ...stations: ReturnType<typeof station>[]) => ({ name, weight: 100, stations });

  // By hand: 4 counted for 2 measured, 2 each; the 6 silent ones split evenly: 5 and 5.
  test('take the lengths of their own station', () => {
    const raised = raiseLengths([reef('reef', station(measuredTally, silent), station())])!;
    expect(raised).toMatchObject({ animals: 10, measured: 2, borrowedAnimals: 6 });
    expect(raised.borrowed).toEqual({ fromStation: 6, fromStratum: 0, fromElsewhere: 0 });
    expect(raisedClasses(raised, [50, 150, 250]).map((one) => one.animals)).toEqual([5, 5]);
    expect(raisedMeanLengthMm(raised).value).toBe(150);
  });

  test('else those of their stratum, else of the whole scope', () => {
    const inStratum = raiseLengths([reef('reef', station(measuredTally), station(silent))])!;
    expect(inStratum.borrowed).toEqual({ fromStation: 0, fromStratum: 6, fromElsewhere: 0 });
    const elsewhere = raiseLengths([reef('reef', station(measuredTally)), reef('flat', station(silent))])!;
    expect(elsewhere.borrowed).toEqual({ fromStation: 0, fromStratum: 0, fromElsewhere: 6 });
  });

  test('say nothing when none was measured anywhere', () => {
    expect(raiseLengths([reef('reef', station(silent), station())])).toBeNull();
    expect(raiseLengths([])).toBeNull();
  });

  test('one station gives a mean length and no standard error', () => {
    const raised = raiseLengths([reef('reef', station(measuredTally))])!;
    near(raisedMeanLengthMm(raised).value, 150, 1e-14);
    expect(raisedMeanLengthMm(raised)).toMatchObject({
      standardError: null,
      reason: { code: 'lone-station' },
    });
    expect(raisedShareAtLeast(raised, 150)).toMatchObject({ value: 0.5, interval: null });
  });

  // By hand: 100 lies in the class from 100, 200 in the class from 200.
  test('class edges reach from the shortest to beyond the longest', () => {
    const raised = raiseLengths([reef('reef', station(measuredTally))])!;
    expect(classEdgesMm(raised, 50)).toEqual([100, 150, 200, 250]);
    expect(() => classEdgesMm(raised, 0)).toThrow('positive width');
  });

  test('a station without a searched area cannot be raised', () => {
    const stations = [{ searchedAreaM2: 0, tallies: [measuredTally] }];
    expect(() => raiseLengths([{ name: 'reef', weight: 1, stations }])).toThrow('searched area');
  });
});

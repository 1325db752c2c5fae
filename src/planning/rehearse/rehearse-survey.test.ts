import { describe, expect, test } from 'vitest';
import { beliefFromLogHeights } from '../../estimates/clumped/belief.ts';
import { near } from '../../maths/nearness.ts';
import { toldByBelief, toldByLogRatio } from './change-told.ts';
import { rehearseOptions, withMoreStations } from './more-stations.ts';
import type { RehearsalRequest } from './rehearsal-request.ts';
import { rehearseSurvey } from './rehearse-survey.ts';

const strata = [
  { name: 'RF', areaHa: 300, stations: 12, searchedAreaM2: 240 },
  { name: 'LG', areaHa: 100, stations: 8, searchedAreaM2: 240 },
];
const sandfish = {
  species: 'A',
  densitiesPerHa: [100, 300],
  clumpingK: 0.8,
  earlier: { densityPerHa: 150, cv: 0.25, degreesOfFreedom: 15 },
  changes: [1, 0.5, 0.2],
};
const rare = { species: 'rare', densitiesPerHa: [2, 0], clumpingK: 0.2, earlier: null, changes: [0.5] };
const request: RehearsalRequest = {
  strata,
  species: [sandfish, rare],
  interval: 'lognormal',
  surveys: 2000,
  seed: 12,
};

describe('the report rehearsed', () => {
  const rehearsal = rehearseSurvey(request).value!;
  const [common, scarce] = rehearsal.species;

  // Authority: by hand. Density 0.75 * 100 + 0.25 * 300 = 150. Counts 2.4 and 7.2 a station; variances of a count
  // 2.4 + 5.76/0.8 = 9.6 and 7.2 + 51.84/0.8 = 72. Of the mean: (0.75/0.024)^2 9.6/12 + (0.25/0.024)^2 72/8 =
  // 781.25 + 976.5625 = 1757.8125, root 41.926, over 150 = 0.27951.
  test('expects the precision that the counts and their clumping give', () => {
    near(common!.densityPerHa, 150, 1e-12);
    near(common!.expectedAnimals, 12 * 2.4 + 8 * 7.2, 1e-12);
    near(common!.expectedCv, 0.27951, 1e-4);
    // Few stations print a smaller CV than the true one more often than a greater.
    expect(common!.medianPrintedCv!).toBeGreaterThan(0.2);
    expect(common!.medianPrintedCv!).toBeLessThan(0.2795);
  });

  // Authority: by hand: mean 0.048 at 12 stations: (1 + 0.048/0.2)^(-0.2 * 12) = 1.24^-2.4 = 0.59672; LG holds none.
  test('says how likely it is to meet not one animal', () => {
    near(scarce!.probabilityNoneSeen, 0.59672, 1e-4);
    expect(Math.abs(scarce!.withoutInterval - scarce!.probabilityNoneSeen)).toBeLessThan(0.045);
    expect(scarce!.changes).toEqual([]);
  });

  // Authority: the promise of a 95 % interval: one report in twenty may tell a change that is none. The log-normal
  // interval keeps it only roughly with clumped animals (METHODS c6: 0.90 to 0.94).
  test('tells a change that is none about one time in twenty', () => {
    expect(common!.changes[0]!.told).toBeGreaterThan(0.02);
    expect(common!.changes[0]!.told).toBeLessThan(0.11);
  });

  // Authority: the rehearsal of 2000. Ten surveys start from truths all over the belief, not from its lowest ten.
  test('tells as often from few rehearsed surveys as from many, luck apart', () => {
    const unsure = { ...sandfish, earlier: { ...sandfish.earlier, cv: 0.6 }, changes: [0.5] };
    const told = (seed: number, surveys: number) =>
      rehearseSurvey({ ...request, species: [unsure], seed, surveys }).value!.species[0]!.changes[0]!.told;
    const few = Array.from({ length: 200 }, (_, seed) => told(seed, 10));
    const mean = few.reduce((a, b) => a + b, 0) / few.length;
    expect(Math.abs(mean - told(1, 4000))).toBeLessThan(0.03);
  });

  test('tells a fall to a fifth more often than a halving, and nearly never as a rise', () => {
    const [, half, fifth] = common!.changes;
    expect(fifth!.told).toBeGreaterThan(half!.told + 0.2);
    expect(half!.toldRise).toBeLessThan(0.01);
    expect(fifth!.told).toBe(fifth!.toldFall);
  });

  test('repeats itself from its seed', () => {
    expect(rehearseSurvey(request)).toEqual(rehearseSurvey(request));
    expect(rehearseSurvey({ ...request, seed: 13 })).not.toEqual(rehearseSurvey(request));
  });

  test('does not depend on the unit of the areas of strata', () => {
    const wider = strata.map((stratum) => ({ ...stratum, areaHa: stratum.areaHa * 1024 }));
    expect(rehearseSurvey({ ...request, strata: wider }).value!.species).toEqual(rehearsal.species);
  });
});

describe('the report rehearsed with its default interval', () => {
  // Authority: INTERVALS: the clumped-count interval holds the truth in nearly all surveys; it tells less than log-normal.
  test('is more careful than the log-normal one', () => {
    const species = [{ ...sandfish, changes: [0.1] }];
    const careful = rehearseSurvey({
      ...request,
      species,
      interval: 'clumped',
      changeTest: 'belief',
      surveys: 100,
    }).value!.species[0]!;
    const bold = rehearseSurvey({ ...request, species, surveys: 2000 }).value!.species[0]!;
    expect(careful.coverage!).toBeGreaterThanOrEqual(0.92);
    expect(careful.changes[0]!.told).toBeGreaterThan(0.5);
    expect(careful.changes[0]!.told).toBeLessThan(bold.changes[0]!.told + 0.1);
    expect(careful.medianIntervalFactor!).toBeGreaterThan(bold.medianIntervalFactor!);
  });
});

describe('a change told', () => {
  const estimate = (value: number, standardError: number, degreesOfFreedom: number) => ({
    estimate: { value, standardError, degreesOfFreedom, reason: null },
  });

  // Authority: vector f1 by way of METHODS f: CVs with sqrt(cv1^2 + cv2^2); here by hand: ln(0.4) = -0.916, cv 0.3 and 0.3:
  // 0.424 and df 20: t 2.086: half-width 0.885: told; with cv 0.33 both 0.467: 0.974: not told.
  test('by the log ratio leaves out 1 or does not', () => {
    const earlier = { densityPerHa: 100, cv: 0.3, degreesOfFreedom: 10 };
    expect(toldByLogRatio(estimate(40, 12, 10), earlier, 0.95)).toBe('fall');
    expect(toldByLogRatio(estimate(250, 75, 10), earlier, 0.95)).toBe('rise');
    expect(toldByLogRatio(estimate(40, 13.2, 10), { ...earlier, cv: 0.33 }, 0.95)).toBe('undecided');
    expect(toldByLogRatio(estimate(0, 0, 10), earlier, 0.95)).toBe('undecided');
  });

  // Authority: by hand: a normal belief on the log scale with sd 0.3 against one with sd 0.4: the difference has sd 0.5,
  // and 1.96 * 0.5 = 0.98: told at a distance of 1.0, not at 0.96.
  test('by belief adds the doubt about both', () => {
    const heights = Float64Array.from({ length: 801 }, (_, i) => -0.5 * ((i * 0.01 - 4) / 0.3) ** 2);
    const belief = beliefFromLogHeights(-4, 0.01, heights);
    const cv = Math.sqrt(Math.expm1(0.16));
    const at = (distance: number) =>
      toldByBelief(belief, { densityPerHa: Math.exp(distance), cv, degreesOfFreedom: null }, 0.95);
    expect([at(1), at(0.96), at(-1), at(-0.96)]).toEqual(['fall', 'undecided', 'rise', 'undecided']);
  });
});

describe('more effort', () => {
  // Authority: by hand: ten more on 12 and 8 are 18 and 12.
  test('goes to the strata in the proportions of the plan', () => {
    expect(withMoreStations(strata, 10).map((stratum) => stratum.stations)).toEqual([18, 12]);
  });

  test('of two days raises the chance to tell a halving', () => {
    const species = [{ ...sandfish, changes: [0.5] }];
    const options = rehearseOptions({ ...request, species }, [
      { boatDays: 4, stationsPerBoatDay: 5 },
      { extraStations: 60 },
    ]).value!;
    expect(options.map((option) => [option.extraStations, option.boatDays])).toEqual([
      [0, null],
      [20, 4],
      [60, null],
    ]);
    const told = options.map((option) => option.rehearsal.species[0]!.changes[0]!.told);
    expect(told[1]!).toBeGreaterThan(told[0]!);
    expect(told[2]!).toBeGreaterThan(told[1]!);
    // Authority: variance over n, so twice the stations in the same proportions divide the CV by root 2.
    const cvs = options.map((option) => option.rehearsal.species[0]!.expectedCv);
    near(cvs[1]! * Math.SQRT2, cvs[0]!, 1e-9);
  });

  test('of no days is refused', () => {
    expect(rehearseOptions(request, [{ boatDays: 0, stationsPerBoatDay: 5 }]).value).toBeNull();
  });
});

describe('a rehearsal of a thin plan', () => {
  const codes = (changed: Partial<RehearsalRequest>) =>
    rehearseSurvey({ ...request, surveys: 50, ...changed }).problems.map((problem) => problem.code);

  test('with one station in a stratum gives no interval, and says so', () => {
    const lone = [strata[0]!, { ...strata[1]!, stations: 1 }];
    expect(codes({ strata: lone })).toEqual(['plan-lone-station']);
    const { species } = rehearseSurvey({ ...request, surveys: 50, strata: lone }).value!;
    expect(species[0]).toMatchObject({ medianPrintedCv: null, coverage: null, withoutInterval: 1 });
    // Only a survey without one animal could still tell a fall, from the bound; half of 36 expected animals leave none such.
    expect(species[0]!.changes.slice(0, 2).map((change) => change.told)).toEqual([0, 0]);
  });

  test('without stations, species, densities or strata is refused', () => {
    expect(codes({ strata: [{ ...strata[0]!, stations: 0 }, strata[1]!] })).toEqual([
      'plan-number-impossible',
    ]);
    expect(codes({ species: [] })).toEqual(['plan-no-species']);
    expect(codes({ strata: [] })).toEqual(['plan-no-strata']);
    expect(codes({ species: [{ ...rare, densitiesPerHa: [0, 0] }] })).toEqual(['plan-density-missing']);
    expect(codes({ species: [{ ...rare, densitiesPerHa: [4] }] })).toEqual(['plan-density-missing']);
  });

  // Authority: by hand: 20 stations of 240 m2 are 0.48 ha; scattered animals at 150 per ha would be 72: none seen is a fall.
  test('of a stock that is gone tells the fall from the absence', () => {
    const scattered = { ...sandfish, clumpingK: null, changes: [0.0001] };
    const [gone] = rehearseSurvey({ ...request, species: [scattered], surveys: 100 }).value!.species;
    expect(gone!.changes[0]!.told).toBeGreaterThan(0.95);
  });
});

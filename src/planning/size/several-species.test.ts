import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { precisionCurve } from './precision-curve.ts';
import { severalSpeciesNeed } from './several-species.ts';
import { sharedAllocation } from './shared-allocation.ts';

const goal = { pilotStations: null, isPriority: true };

describe('several species', () => {
  // Authority: by hand. (0.9/0.3)^2 = 9, (1.5/0.3)^2 = 25, (2.4/0.2)^2 = 144.
  const goals = [
    { species: 'A', stationCv: 0.9, targetCv: 0.3, ...goal },
    { species: 'B', stationCv: 1.5, targetCv: 0.3, ...goal },
    { species: 'rare', stationCv: 2.4, targetCv: 0.2, ...goal, isPriority: false },
  ];

  test('the largest need among the priority species decides', () => {
    const answer = severalSpeciesNeed(goals).value!;
    expect(answer).toMatchObject({ stations: 25, decidedBy: 'B' });
    expect(answer.needs.map((need) => need.stations)).toEqual([9, 25, 144]);
  });

  test('every smaller survey says which species it gives up', () => {
    const { choices } = severalSpeciesNeed(goals).value!;
    expect(choices.map((choice) => choice.met)).toEqual([1, 2, 3]);
    // By hand: 1.5 / sqrt(9) = 0.5.
    near(choices[0]!.cvBySpecies[1]!.cv, 0.5, 1e-12);
  });

  // Authority: by hand with vector g5: ten stations raise the CV by 1.29338544, the need by its square: 25 * 1.67285 = 41.8.
  test('a pilot of ten stations asks for more', () => {
    const answer = severalSpeciesNeed([{ ...goals[1]!, pilotStations: 10 }]).value!;
    expect(answer.stations).toBe(42);
  });

  test('without a priority species nobody decides', () => {
    expect(severalSpeciesNeed([goals[2]!]).problems[0]!.code).toBe('plan-no-species');
    expect(severalSpeciesNeed([]).value).toBeNull();
  });
});

describe('one split for several species', () => {
  const strata = [
    { name: 'reef', areaHa: 100 },
    { name: 'lagoon', areaHa: 100 },
  ];
  const reefSpecies = { species: 'A', meanPerHa: 10, targetCv: 0.2, standardDeviations: [20, 2] };
  const lagoonSpecies = { species: 'B', meanPerHa: 10, targetCv: 0.2, standardDeviations: [2, 20] };

  // Authority: symmetry.
  test('two species that mirror each other share the stations', () => {
    const answer = sharedAllocation({ strata, species: [reefSpecies, lagoonSpecies], stations: 40 }).value!;
    expect(answer.stations.map((one) => one.stations)).toEqual([20, 20]);
    near(answer.worst, answer.leastPossible, 1e-6);
  });

  // Authority: Neyman's split by hand: 20 : 2, of 44 stations 40 and 4.
  test('one species alone gets its own best split', () => {
    const answer = sharedAllocation({ strata, species: [reefSpecies], stations: 44 }).value!;
    expect(answer.stations.map((one) => one.stations)).toEqual([40, 4]);
    near(answer.species[0]!.cv, answer.species[0]!.cvIfAlone, 1e-12);
  });

  // Authority: second algorithm, every whole split of 24 stations over two strata.
  test('is the best whole split of two strata, and never below its bound', () => {
    const spread = fc.double({ min: 1, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(spread, spread), { minLength: 1, maxLength: 4 }), (all) => {
        const species = all.map((standardDeviations, j) => ({
          species: String(j),
          meanPerHa: 10,
          targetCv: 0.2,
          standardDeviations,
        }));
        const answer = sharedAllocation({ strata, species, stations: 24 }).value!;
        const worstAt = (a: number) =>
          Math.max(...all.map(([s, t]) => Math.sqrt((0.5 * s) ** 2 / a + (0.5 * t) ** 2 / (24 - a)) / 2));
        const all24 = Array.from({ length: 19 }, (_, i) => worstAt(i + 3));
        expect(answer.worst).toBeLessThanOrEqual(Math.min(...all24) * (1 + 1e-9));
        expect(answer.worst).toBeGreaterThanOrEqual(answer.leastPossible * (1 - 1e-9));
        expect(Math.min(...all24)).toBeGreaterThanOrEqual(answer.leastPossible * (1 - 1e-9));
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});

describe('the curve of precision', () => {
  const species = [{ species: 'A', stationCv: 1.2, pilotStations: 10, stationsBefore: null }];

  // Authority: vectors f6 (n 15, cv 1.2: a fall of 0.673683) and g5 (1.29338544); days by hand: 15 / 4 = 3.75.
  test('holds CV, change and days for each size', () => {
    const [row] = precisionCurve({ species, stations: [15], stationsPerBoatDay: 4 }).value!;
    near(row!.fall, 0.673683005411556, 1e-5);
    near(row!.cv, 1.2 / Math.sqrt(15), 1e-12);
    near(row!.cvAssured / row!.cv, 1.29338544447295, 1e-9);
    expect(row!.fallAssured).toBeGreaterThan(row!.fall);
    expect(row!.boatDays).toBe(4);
  });

  test('is refused for one station and for no species', () => {
    expect(precisionCurve({ species, stations: [1], stationsPerBoatDay: null }).value).toBeNull();
    expect(precisionCurve({ species: [], stations: [10], stationsPerBoatDay: null }).value).toBeNull();
  });
});

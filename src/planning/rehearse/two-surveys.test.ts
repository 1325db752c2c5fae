import { expect, it } from 'vitest';
import { seededRandom } from '../../maths/random.ts';
import { simulatedPower } from '../size/simulated-power.ts';
import { splitLike, stationsToTell, toldBetween } from './two-surveys.ts';

const reef = (stations: number) => [{ name: 'reef', areaHa: 100, stations, searchedAreaM2: 240 }];
const mean6 = 250; // animals per hectare: 6 at a station of 240 m2

it('agrees with the power of the plain simulation of counts in one stratum', () => {
  // Second algorithm: `simulatedPower` draws counts without strata or areas; its zeros are not told, so the mean is high.
  const counted = (meanPerStation: number, stations: number) => ({
    stations,
    meanPerStation,
    clumpingK: 0.8,
  });
  const plain = simulatedPower(
    {
      before: counted(6, 20),
      after: counted(3, 30),
      significance: 0.05,
      test: 'log-ratio',
      simulations: 4000,
    },
    seededRandom(1),
  ).value!;
  const told = toldBetween(
    {
      ...{ before: reef(20), after: reef(30), factor: 0.5, confidence: 0.95, simulations: 4000 },
      species: { densitiesPerHa: [mean6], clumpingK: 0.8 },
    },
    seededRandom(2),
  );
  // The plain one counts both directions; a halving is hardly ever told as a rise. Two simulation errors of both.
  expect(Math.abs(told.told - plain.power)).toBeLessThan(0.03);
});

it('cries wolf more often the more the animals are clumped', () => {
  // Authority: docs/methods/planning-numbers.md, 8 stations each, mean 6: 0.17 at k 0.15, 0.07 at k 0.8 (4000 pairs).
  const alarms = (clumpingK: number) =>
    toldBetween(
      {
        ...{ before: reef(8), after: reef(8), factor: 1, confidence: 0.95, simulations: 4000 },
        species: { densitiesPerHa: [mean6], clumpingK },
      },
      seededRandom(3),
    ).told;
  expect(Math.abs(alarms(0.15) - 0.17)).toBeLessThan(0.03);
  expect(Math.abs(alarms(0.8) - 0.07)).toBeLessThan(0.02);
});

it('finds the stations with which a change is told often enough, and not with a third fewer', () => {
  const species = { densitiesPerHa: [mean6], clumpingK: 0.8 };
  const common = { species, factor: 0.3, confidence: 0.95, simulations: 2000 };
  const { stations } = stationsToTell({
    ...{ ...common, strata: reef(10), earlier: null, power: 0.8, most: 400, seed: 1 },
  });
  const toldAt = (n: number) =>
    toldBetween({ ...common, before: reef(n), after: reef(n) }, seededRandom(9)).told;
  expect(toldAt(stations!)).toBeGreaterThan(0.76);
  expect(toldAt(Math.floor((stations! * 2) / 3))).toBeLessThan(0.8);
});

it('says that no later survey mends an earlier one that was too uncertain', () => {
  const need = stationsToTell({
    ...{ strata: reef(8), earlier: reef(8), factor: 0.5, confidence: 0.95, simulations: 500, seed: 1 },
    ...{ species: { densitiesPerHa: [mean6], clumpingK: 0.3 }, power: 0.8, most: 300 },
  });
  expect(need).toEqual({ stations: null, tried: 300 });
});

it('splits as before, two in each stratum at least', () => {
  const strata = [...reef(9), { ...reef(3)[0]!, name: 'lagoon' }];
  expect(splitLike(strata, 24).map((one) => one.stations)).toEqual([18, 6]);
  expect(splitLike(strata, 3).map((one) => one.stations)).toEqual([2, 2]);
});

it('repeats itself from its seed', () => {
  const request = {
    ...{ before: reef(8), after: reef(12), factor: 0.5, confidence: 0.95, simulations: 200 },
    species: { densitiesPerHa: [mean6], clumpingK: 0.4 },
  };
  expect(toldBetween(request, seededRandom(5))).toEqual(toldBetween(request, seededRandom(5)));
});

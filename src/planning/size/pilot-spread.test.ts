import { expect, it } from 'vitest';
import { expectations } from '../rehearse/expectations.ts';
import { clumpingForCv, type PilotStratum, pilotSpread } from './pilot-spread.ts';

const reef = { name: 'reef', areaHa: 300, searchedAreaM2: 240, valuesPerHa: [0, 0, 125, 500, 41.6] };
const lagoon = { name: 'lagoon', areaHa: 100, searchedAreaM2: 240, valuesPerHa: [0, 83.2, 0, 0] };
const strata: readonly PilotStratum[] = [reef, lagoon];

it('one stratum: the CV is the spread over the root of the stations and the mean', () => {
  // By hand: 2, 4, 6 have mean 4 and standard deviation 2; 2 / sqrt(3) / 4 = 0.288675; two degrees of freedom.
  const spread = pilotSpread([{ ...reef, valuesPerHa: [2, 4, 6] }])!;
  expect(spread.densityPerHa).toBe(4);
  expect(spread.cv).toBeCloseTo(0.288675, 6);
  expect(spread.stationCv).toBeCloseTo(0.5, 12);
  expect(spread.degreesOfFreedom).toBeCloseTo(2, 12);
});

it('the clumping gives back the CV from which it came, through the formula of the rehearsal', () => {
  // Second algorithm: `expectations` goes from k to the CV, this file from the CV to k.
  const spread = pilotSpread(strata)!;
  const planned = strata.map(({ name, areaHa, searchedAreaM2, valuesPerHa }) => ({
    ...{ name, areaHa, searchedAreaM2, stations: valuesPerHa.length },
  }));
  for (const cv of [spread.cv, 1.4 * spread.cv]) {
    const clumpingK = clumpingForCv(strata, cv);
    const species = {
      species: 'x',
      densitiesPerHa: spread.densitiesPerHa,
      clumpingK,
      earlier: null,
      changes: [],
    };
    expect(clumpingK).not.toBeNull();
    expect(expectations(planned, species).expectedCv / cv).toBeCloseTo(1, 10);
  }
});

it('a CV that chance alone would give is no clumping', () => {
  // One stratum, 10 animals a station over 4 stations: chance alone gives 1 / sqrt(40) = 0.158.
  const even = [{ ...reef, searchedAreaM2: 10_000, valuesPerHa: [10, 10, 10, 10] }];
  expect(clumpingForCv(even, 0.15)).toBeNull();
  expect(clumpingForCv(even, 0.2)).not.toBeNull();
});

it('a wider spread is more clumped', () => {
  expect(clumpingForCv(strata, 0.9)!).toBeLessThan(clumpingForCv(strata, 0.7)!);
});

it('is unknown with a lone station, and without an animal', () => {
  expect(pilotSpread([reef, { ...lagoon, valuesPerHa: [83.2] }])).toBeNull();
  expect(pilotSpread([{ ...reef, valuesPerHa: [0, 0, 0] }])).toBeNull();
});

it('is the same whatever the unit of area and the order of the strata', () => {
  const inSquareKm = strata.map((stratum) => ({ ...stratum, areaHa: stratum.areaHa / 100 })).reverse();
  expect(pilotSpread(inSquareKm)!.cv).toBeCloseTo(pilotSpread(strata)!.cv, 12);
  expect(pilotSpread(inSquareKm)!.clumpingK).toBeCloseTo(pilotSpread(strata)!.clumpingK!, 10);
});

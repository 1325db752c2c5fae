/**
 * How long it takes to say how many stations, beside the naive way: `node bench/power.ts`.
 *
 * A power curve of five species: for each the stations that tell a halving 8 times in 10, found by halving, against
 * trying every number of stations one after the other; and one simulated pair of surveys against the bare drawing of its
 * counts, which nobody can do without. Invented species, seeded.
 */

import { performance } from 'node:perf_hooks';
import { negativeBinomialSampler } from '../src/maths/negative-binomial-sampler.ts';
import { seededRandom } from '../src/maths/random.ts';
import { splitLike, stationsToTell, toldBetween } from '../src/planning/rehearse/two-surveys.ts';
import { precisionCurve } from '../src/planning/size/precision-curve.ts';

const strata = [
  { name: 'RF', areaHa: 420, stations: 8, searchedAreaM2: 240 },
  { name: 'LG', areaHa: 310, stations: 7, searchedAreaM2: 240 },
  { name: 'SL', areaHa: 145, stations: 6, searchedAreaM2: 240 },
];
const species = [0.4, 0.6, 0.9, 1.2, 2].map((clumpingK, i) => ({
  name: `species ${i + 1}`,
  clumpingK,
  densitiesPerHa: [400 / (i + 1), 900 / (i + 1), 100],
}));
const common = { factor: 0.5, confidence: 0.95, simulations: 1000 };
const most = 400;

const found = timed('power curve, 5 species, by halving, 1000 pairs each size', () =>
  species.map(
    (one) =>
      stationsToTell({ ...common, species: one, strata, earlier: null, power: 0.8, most, seed: 1 }).stations,
  ),
);
const walked = timed('naive: every number of stations, one after the other', () =>
  species.map((one) => {
    for (let n = 6; n <= most; n++) {
      const after = splitLike(strata, n);
      if (toldBetween({ ...common, species: one, before: after, after }, seededRandom(1)).told >= 0.8)
        return n;
    }
    return null;
  }),
);
say(`stations, by halving: ${found.join(', ')}; one after the other: ${walked.join(', ')}`);
say('(the first that passes by luck is smaller: walking picks the luckiest size)');

const after = splitLike(strata, 60);
timed('5 x 1000 pairs of surveys of 60 stations, estimated and compared', () =>
  species.map((one) => toldBetween({ ...common, species: one, before: after, after }, seededRandom(1)).told),
);
timed('bare: the counts of the same pairs drawn, nothing made of them', () => {
  const random = seededRandom(1);
  let animals = 0;
  for (const one of species) {
    for (const factor of [1, common.factor]) {
      after.forEach(({ stations, searchedAreaM2 }, h) => {
        const mean = (one.densitiesPerHa[h]! * factor * searchedAreaM2) / 10_000;
        const draw = negativeBinomialSampler({ mean, clumpingK: one.clumpingK });
        for (let i = 0; i < common.simulations * stations; i++) animals += draw(random);
      });
    }
  }
  return animals;
});
timed('by formula alone: 5 species, 6 to 400 stations', () =>
  precisionCurve({
    species: species.map((one) => ({
      species: one.name,
      stationCv: 1.5,
      pilotStations: 12,
      stationsBefore: null,
    })),
    ...{ stations: Array.from({ length: most - 5 }, (_, i) => i + 6), stationsPerBoatDay: 4 },
  }),
);

function timed<Result>(what: string, work: () => Result): Result {
  const start = performance.now();
  const result = work();
  say(`${(performance.now() - start).toFixed(0).padStart(7)} ms  ${what}`);
  return result;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

import { expect, test } from 'vitest';
import { speciesNamed, surveyOf } from '../../../test/survey-builder.ts';
import { normalQuantile } from '../../maths/distributions.ts';
import { negativeBinomialSampler } from '../../maths/negative-binomial-sampler.ts';
import { type SeededRandom, seededRandom } from '../../maths/random.ts';
import type { Weight } from '../../survey/words.ts';
import { DensityEstimator } from '../density/density-estimator.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import type { Interval } from '../shapes.ts';
import { chooseWeights } from './choose-weights.ts';
import { estimateBiomass } from './estimate-biomass.ts';

const species = speciesNamed('sandfish');
const simulations = 120;

interface World {
  readonly stations: number;
  readonly meanAnimals: number;
  readonly clumpingK: number;
  /** Mean of ln length at a station rises by this for each unit of ln(1 + animals there). */
  readonly lengthWithNumber: number;
  readonly weighed: number;
}

const usual: World = { stations: 20, meanAnimals: 6, clumpingK: 0.5, lengthWithNumber: 0, weighed: 30 };
const curve = { lnA: Math.log(0.0005), b: 2.36, spread: 0.18 };
const lengths = { lnMean: Math.log(165), betweenStations: 0.15, within: 0.2 };

const normal = (random: SeededRandom) =>
  normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random.uniform())));
const meanWeightG = (lnLength: number, spread: number) =>
  Math.exp(curve.lnA + curve.b * lnLength + (curve.b ** 2 * spread ** 2 + curve.spread ** 2) / 2);

/** The true biomass of the world, in kilograms per hectare, by many draws of a station; a station is 240 m2. */
function truth(world: World, random: SeededRandom): number {
  const draw = negativeBinomialSampler({ mean: world.meanAnimals, clumpingK: world.clumpingK });
  let grams = 0;
  const draws = 200_000;
  for (let i = 0; i < draws; i++) {
    const animals = draw(random);
    const lnMean = lengths.lnMean + world.lengthWithNumber * Math.log1p(animals);
    const spread = Math.hypot(lengths.betweenStations, lengths.within);
    grams += animals * meanWeightG(lnMean, spread);
  }
  return ((grams / draws) * 10_000) / 240 / 1000;
}

function weighedAnimals(world: World, random: SeededRandom): readonly Weight[] {
  return Array.from({ length: world.weighed }, (_, i): Weight => {
    const lnLength = lengths.lnMean + 0.3 * normal(random);
    const weightG = Math.exp(curve.lnA + curve.b * lnLength + curve.spread * normal(random));
    const shared = { id: String(i), surveyId: 's', stationCode: null, speciesId: species.id, ordinal: i + 1 };
    return { ...shared, lengthMm: Math.exp(lnLength), weightG, state: 'live', drainMinutes: null };
  });
}

function onceIn(
  world: World,
  random: SeededRandom,
): { clumped: Interval | null; design: Interval | null } | null {
  const draw = negativeBinomialSampler({ mean: world.meanAnimals, clumpingK: world.clumpingK });
  const survey = surveyOf({
    areasHa: { reef: 100 },
    stations: Array.from({ length: world.stations }, (_, i) => {
      const animals = draw(random);
      const lnMean =
        lengths.lnMean +
        world.lengthWithNumber * Math.log1p(animals) +
        lengths.betweenStations * normal(random);
      // Divers measure the first thirty.
      const measured = Array.from({ length: Math.min(animals, 30) }, () =>
        Math.exp(lnMean + lengths.within * normal(random)),
      );
      const belt = {
        lengthM: 120,
        widthM: 2,
        counts: { sandfish: animals },
        lengthsMm: { sandfish: measured },
      };
      return { code: `S${i + 1}`, stratum: 'reef', belts: [belt] };
    }),
  });
  const densities = new DensityEstimator(defaultDensitySettings).answers(survey, species);
  const weighings = weighedAnimals(world, random);
  const choose = (hasLengths: boolean) =>
    chooseWeights({
      species,
      ownValues: [],
      weighings,
      choice: 'fit',
      state: 'live',
      correction: 'normal',
      hasLengths,
      acceptance: null,
    });
  const settings = { by: 'survey', confidence: 0.95, acceptance: null } as const;
  const [answer] = estimateBiomass({ survey, species, densities, choose, state: 'live' }, settings);
  if (answer === undefined || answer.kgPerHa === null) return null;
  return { clumped: answer.intervalKgPerHa, design: answer.designIntervalKgPerHa };
}

function coverageIn(world: World): { clumped: number; design: number } {
  const random = seededRandom(20_261_125);
  const right = truth(world, random);
  const holds = (interval: Interval | null) =>
    interval !== null && interval[0] <= right && right <= interval[1] ? 1 : 0;
  let [clumped, design, seen] = [0, 0, 0];
  for (let i = 0; i < simulations; i++) {
    const once = onceIn(world, random);
    if (once === null) continue;
    seen++;
    clumped += holds(once.clumped);
    design += holds(once.design);
  }
  return { clumped: clumped / seen, design: design / seen };
}

// Behaviour, not digits: nominal 95 %; with 120 simulations the chance error of a coverage is about 0.02, so 0.90 is
// well below what chance does. docs/methods/biomass.md holds the coverages of a longer run.
const worlds: readonly (readonly [string, World])[] = [
  ['clumped animals', usual],
  ['larger animals where there are more', { ...usual, lengthWithNumber: 0.06 }],
  ['smaller animals where there are more', { ...usual, lengthWithNumber: -0.06 }],
  ['very clumped animals and ten weighed ones', { ...usual, clumpingK: 0.25, weighed: 10 }],
];

for (const [name, world] of worlds) {
  test(`of 100 surveys of ${name}, about 95 hold the biomass in their interval`, () => {
    const { clumped, design } = coverageIn(world);
    expect(clumped).toBeGreaterThan(0.9);
    // The design interval, which knows nothing of clumping, is the one that falls short.
    expect(clumped).toBeGreaterThanOrEqual(design - 0.01);
  });
}

import { describe, expect, test } from 'vitest';
import { type SurveySketch, speciesNamed, surveyOf } from '../../../test/survey-builder.ts';
import e1 from '../../../test/vectors/e1_length_weight.json' with { type: 'json' };
import e2 from '../../../test/vectors/e2_biomass.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import type { LengthWeight, ValueContent } from '../../survey/value-words.ts';
import { nameOfValue } from '../../survey/value-words.ts';
import type { OwnValue, Weight } from '../../survey/words.ts';
import { DensityEstimator } from '../density/density-estimator.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import type { BiomassAnswer, WeightState } from './biomass-answer.ts';
import { chooseWeights } from './choose-weights.ts';
import { estimateBiomass } from './estimate-biomass.ts';
import { lengthWeightLine, weightOfLengthG } from './length-weight-line.ts';
import type { WeightRequest } from './weight-candidates.ts';

const { data, expected, tolerance_relative: tolerance } = e2;
const sandfish = speciesNamed('Holothuria scabra');
const areasHa = { RF: 420, LG: 310, SL: 145 };

const pair: LengthWeight = {
  what: 'length-weight',
  a: Math.exp(data.ln_a),
  b: data.b,
  lengthUnit: 'mm',
  weightUnit: 'g',
  weightState: 'live',
  lengthMeasure: null,
  lengthMinMm: 95,
  lengthMaxMm: 310,
  residualSdLn: Math.sqrt(data.sigma2),
  covariance: { lnAVariance: data.V[0]![0]!, lnABCovariance: data.V[0]![1]!, bVariance: data.V[1]![1]! },
  animals: 24,
};

function lengthsAt(code: string): number[] {
  return data.measured.length_mm.filter((_, i) => data.measured.station[i] === code);
}

type BeltOf = SurveySketch['stations'][number]['belts'][number];

function surveyE2(beltAt: (code: string, i: number) => BeltOf = wholeBelt): SurveySketch {
  const stations = data.station.map((code, i) => {
    return { code, stratum: data.stratum[i]!, belts: [beltAt(code, i)] };
  });
  return { areasHa, species: [sandfish.name], stations };
}

function wholeBelt(code: string, i: number): BeltOf {
  const lengths = lengthsAt(code);
  return {
    lengthM: data.area_m2[i]!,
    widthM: 1,
    counts: { [sandfish.name]: lengths.length },
    lengthsMm: { [sandfish.name]: lengths },
    ...(lengths.length === 0 ? { noneSeen: true } : {}),
  };
}

function own(content: ValueContent): OwnValue {
  return { id: 'v', speciesId: sandfish.id, what: nameOfValue(content), source: 'own test', content };
}

interface Asked {
  readonly by?: 'survey' | 'stratum' | 'zone';
  readonly state?: WeightState | null;
  readonly ownValues?: readonly OwnValue[];
  readonly weighings?: readonly Weight[];
  readonly choice?: WeightRequest['choice'];
  readonly acceptance?: WeightRequest['acceptance'];
}

function biomassOf(sketch: SurveySketch, asked: Asked = {}): readonly BiomassAnswer[] {
  const { by = 'survey', state = null, ownValues = [own(pair)], acceptance = null } = asked;
  const survey = surveyOf(sketch);
  const densities = new DensityEstimator({ ...defaultDensitySettings, by, acceptance }).answers(
    survey,
    sandfish,
  );
  const choose = (hasLengths: boolean) =>
    chooseWeights({
      species: sandfish,
      ownValues,
      weighings: asked.weighings ?? [],
      choice: asked.choice ?? 'auto',
      state,
      correction: 'normal',
      hasLengths,
      acceptance,
    });
  const input = { survey, species: sandfish, densities, choose, state: state ?? 'live' };
  return estimateBiomass(input, { by, confidence: 0.95, acceptance });
}

describe('the biomass of the miniature survey', () => {
  const [answer] = biomassOf(surveyE2());

  // Authority: vector e2 (R survey::svymean with vcov(lm)).
  test('has the mean, the error between stations, the error of the pair, and both together', () => {
    near(answer!.kgPerHa!, expected.mean_kg_ha, tolerance);
    near(answer!.samplingErrorKgPerHa!, expected.se_sampling, tolerance);
    near(answer!.weightErrorKgPerHa!, expected.se_parameters, tolerance);
    near(answer!.standardErrorKgPerHa!, expected.se_total, tolerance);
    near(answer!.totalKg! / 1000, expected.total_t, tolerance);
  });

  // Authority: vector e2: the mean weight of the animals of the area is 98.5 g, the weight of their mean length only 90.9 g.
  test('is never made from the weight of the mean length', () => {
    near(answer!.meanWeightG!, expected.right_mean_W_g, tolerance);
    const lengthsOf = (code: string) => lengthsAt(code);
    const weightOf = (i: number) => data.weight_ha[i]! / data.area_m2[i]!;
    const animals = data.station.flatMap((code, i) =>
      lengthsOf(code).map((mm) => ({ mm, weight: weightOf(i) })),
    );
    const total = animals.reduce((sum, one) => sum + one.weight, 0);
    const meanMm = animals.reduce((sum, one) => sum + one.weight * one.mm, 0) / total;
    near(weightOfLengthG(lengthWeightLine(pair), meanMm), expected.wrong_W_of_mean_length_g, tolerance);
  });

  // Invariance: independent strata sum to the whole.
  test('is the sum of its strata', () => {
    const strata = biomassOf(surveyE2(), { by: 'stratum' });
    const sum = strata.reduce((total, one) => total + one.totalKg!, 0);
    near(sum, answer!.totalKg!, 1e-12);
  });

  // Reasoning: what is not known about weights can only widen the interval of the count; it holds the estimate.
  test('has an interval at least as wide, in proportion, as that of the count', () => {
    const [low, high] = answer!.totalIntervalKg!;
    const [fewest, most] = answer!.totalAnimalsInterval!;
    expect(high / low).toBeGreaterThan(most / fewest);
    expect(low).toBeLessThan(answer!.totalKg!);
    expect(high).toBeGreaterThan(answer!.totalKg!);
  });

  // Invariance: the same pair written in centimetres and kilograms.
  test('is the same with the pair in centimetres and kilograms', () => {
    const inCm: LengthWeight = {
      ...pair,
      a: (pair.a * 10 ** pair.b) / 1000,
      lengthUnit: 'cm',
      weightUnit: 'kg',
      covariance: null,
    };
    near(biomassOf(surveyE2(), { ownValues: [own(inCm)] })[0]!.kgPerHa!, expected.mean_kg_ha, 1e-9);
  });

  // Authority: vectors e1 and e2, whose pair is the fit of e1.
  test('comes out the same from the weighed animals themselves', () => {
    const weighings = e1.data.L_mm.map((lengthMm, i): Weight => {
      const shared = { id: String(i), surveyId: 's', stationCode: null, speciesId: sandfish.id, ordinal: 1 };
      return { ...shared, lengthMm, weightG: e1.data.W_g[i]!, state: 'live', drainMinutes: null };
    });
    const [fitted] = biomassOf(surveyE2(), { ownValues: [], weighings });
    near(fitted!.standardErrorKgPerHa!, expected.se_total, tolerance);
    expect(fitted!.basis!.origin.status).toBe('fit');
    // By hand: 18 mm and 91.6 g: heavier than a cube of water of 18 mm (6 g). It must not bend the line.
    const slip: Weight = { ...weighings[11]!, id: 'slip', lengthMm: 18 };
    const [without] = biomassOf(surveyE2(), { ownValues: [], weighings: [...weighings, slip] });
    near(without!.standardErrorKgPerHa!, expected.se_total, tolerance);
    const told = without!.cautions.find(({ code }) => code === 'weighings-impossible');
    expect(told!.parameters).toMatchObject({ animals: 1, lengthMm: 18 });
    const dried = weighings.map((one) => ({ ...one, state: 'dried' as const }));
    const [held] = biomassOf(surveyE2(), { ownValues: [], weighings: dried, choice: 'fit' });
    expect(held!.reason!.code).toBe('processed-pair');
  });
});

describe('what a biomass says beside its number', () => {
  const codes = (answer: BiomassAnswer | undefined) => answer!.cautions.map(({ code }) => code);

  // By hand: the lengths of e2 below 95 mm (80 and 45) are two of its animals.
  test('which animals are outside the lengths of the pair, and what one of 200 mm weighs', () => {
    const [answer] = biomassOf(surveyE2());
    expect(codes(answer)).toContain('weight-of-one');
    expect(codes(answer)).toContain('outside-fitted-range');
  });

  // By hand: half of the animals of every belt measured, so each stands for two.
  test('animals without a length weigh like the measured ones of their belt, and of their station where none was', () => {
    const half = surveyE2((code, i) => {
      const belt = wholeBelt(code, i);
      return { ...belt, counts: { [sandfish.name]: 2 * lengthsAt(code).length } };
    });
    near(biomassOf(half)[0]!.kgPerHa!, 2 * expected.mean_kg_ha, 1e-9);
    const one = surveyE2((code, i) =>
      code === 'S01' ? wholeBelt(code, i) : { ...wholeBelt(code, i), lengthsMm: {} },
    );
    const [answer] = biomassOf(one);
    const counted = data.measured.length_mm.length - lengthsAt('S01').length;
    expect(answer!.borrowedAnimals).toBe(counted);
    expect(codes(answer)).toContain('lengths-borrowed');
  });

  test('no lengths at all and a pair only: a sentence, no number', () => {
    const none = surveyE2((code, i) => ({ ...wholeBelt(code, i), lengthsMm: {} }));
    const [answer] = biomassOf(none, { choice: 'own' });
    expect(answer!.reason!.code).toBe('no-lengths-for-pair');
    expect(answer!.kgPerHa).toBeNull();
  });

  // By hand: 300 g (Conand 1998, read) times the density.
  test('no lengths and a published mean weight: count times it, as an order of magnitude', () => {
    const none = surveyE2((code, i) => ({ ...wholeBelt(code, i), lengthsMm: {} }));
    const [answer] = biomassOf(none, { ownValues: [] });
    near(answer!.kgPerHa!, 0.3 * answer!.densityPerHa!, 1e-12);
    expect(codes(answer)).toContain('mean-weight-used');
  });

  // By hand: an eighth of 300 g is 12.5 %; sqrt(cv^2 + 0.125^2).
  test('a mean weight with its own error widens the standard error by it', () => {
    const mean: ValueContent = {
      what: 'mean-weight',
      weightG: 300,
      weightState: 'live',
      standardErrorG: 37.5,
      animals: 40,
      meanLengthMm: null,
      place: null,
    };
    const [answer] = biomassOf(surveyE2(), { ownValues: [own(mean)], choice: 'mean-weight' });
    const relative = answer!.standardErrorKgPerHa! / answer!.kgPerHa!;
    near(relative, Math.hypot(answer!.samplingErrorKgPerHa! / answer!.kgPerHa!, 0.125), 1e-12);
  });

  // By hand: 9 % of the live weight of sandfish is left dried (Lavitra et al. 2008, read).
  test('dried is nine per cent of live for sandfish, and gutted is held until a ratio is brought in', () => {
    const [dried] = biomassOf(surveyE2(), { state: 'dried' });
    near(dried!.kgPerHa!, 0.09 * expected.mean_kg_ha, 1e-9);
    const [gutted] = biomassOf(surveyE2(), { state: 'gutted' });
    expect(gutted!.reason!.code).toBe('no-conversion');
    expect(gutted!.totalKg).toBeNull();
  });

  // By hand: bounds of 50 and 60 % give a range and no number.
  test('a conversion of which only bounds are known gives a range', () => {
    const bounds: ValueContent = {
      what: 'conversion',
      basis: 'weight',
      from: 'live',
      to: 'gutted',
      ratio: null,
      ratioLow: 0.5,
      ratioHigh: 0.6,
    };
    const [live] = biomassOf(surveyE2());
    const [gutted] = biomassOf(surveyE2(), { state: 'gutted', ownValues: [own(pair), own(bounds)] });
    expect(gutted!.kgPerHa).toBeNull();
    near(gutted!.totalIntervalKg![0], 0.5 * live!.totalIntervalKg![0], 1e-12);
    near(gutted!.totalIntervalKg![1], 0.6 * live!.totalIntervalKg![1], 1e-12);
  });

  // By hand: a pair for centimetres read as one for millimetres weighs 31 kg at 200 mm.
  test('a pair in the wrong unit is held', () => {
    const slipped = own({ ...pair, a: pair.a * 10 ** pair.b });
    const [answer] = biomassOf(surveyE2(), { ownValues: [slipped] });
    expect(answer!.reason!.code).toBe('pair-implausible');
    expect(answer!.kgPerHa).toBeNull();
  });

  test('none seen gives no weight and says so', () => {
    const none = surveyE2((_, i) => ({ lengthM: data.area_m2[i]!, widthM: 1, noneSeen: true }));
    expect(biomassOf(none)[0]!.reason!.code).toBe('none-seen');
  });
});

describe('a biomass of animals that all weigh the same', () => {
  const mean: ValueContent = {
    what: 'mean-weight',
    weightG: 250,
    weightState: 'live',
    standardErrorG: null,
    animals: null,
    meanLengthMm: null,
    place: null,
  };

  // A second algorithm: it is the density times the weight, error and interval included, in every scope and however
  // uneven the effort (half a belt makes its stratum a ratio of sums, a zone cuts across strata).
  test('is the density times that weight in every scope, error and interval included', () => {
    const uneven = surveyE2((code, i) => {
      const belt = wholeBelt(code, i);
      return code === 'S03' ? { ...belt, lengthM: belt.lengthM! / 3 } : belt;
    });
    const stations = uneven.stations.map((station, i) => ({
      ...station,
      zone: i % 3 === 0 ? 'closed' : 'open',
    }));
    const sketch = { ...uneven, stations };
    for (const by of ['survey', 'stratum', 'zone'] as const) {
      const densities = new DensityEstimator({ ...defaultDensitySettings, by }).answers(
        surveyOf(sketch),
        sandfish,
      );
      const answers = biomassOf(sketch, { by, ownValues: [own(mean)], choice: 'mean-weight' });
      expect(answers).toHaveLength(densities.length);
      for (const [i, density] of densities.entries()) {
        const answer = answers[i]!;
        near(answer.kgPerHa!, 0.25 * density.densityPerHa!, 1e-9);
        near(answer.standardErrorKgPerHa!, 0.25 * density.standardErrorPerHa!, 1e-9);
        near(answer.intervalKgPerHa![1], 0.25 * density.intervalPerHa![1], 1e-9);
        near(answer.totalKg!, 0.25 * density.totalAnimals!, 1e-9);
        near(answer.totalStandardErrorKg!, 0.25 * density.totalStandardError!, 1e-9);
      }
    }
  });
});

describe('a held biomass', () => {
  const officer = { who: 'Officer A', why: 'looked it up in the paper' };

  test('goes ahead by name, and the name stands beside it', () => {
    const slipped = own({ ...pair, a: pair.a * 10 ** pair.b });
    const [answer] = biomassOf(surveyE2(), { ownValues: [slipped], acceptance: officer });
    expect(answer!.kgPerHa).toBeGreaterThan(0);
    expect(answer!.cautions.find(({ code }) => code === 'accepted')!.parameters).toMatchObject({
      who: 'Officer A',
    });
    expect(answer!.cautions.map(({ code }) => code)).toContain('weight-of-one');
  });
});

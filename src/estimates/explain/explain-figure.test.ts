import { describe, expect, it } from 'vitest';
import { stationsCounting, surveyOf } from '../../../test/survey-builder.ts';
import { near } from '../../maths/nearness.ts';
import { Archive } from '../density/archive.ts';
import { DensityEstimator } from '../density/density-estimator.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import { estimateSizes } from '../sizes/estimate-sizes.ts';
import { explainFigure } from './explain-figure.ts';
import type { ExplainedFigure, Explanation } from './explanation.ts';

const survey = surveyOf({
  areasHa: { flat: 120, lagoon: 300 },
  stations: [
    ...stationsCounting('flat', [0, 3, 14, 1, 0, 7]).map((one, i) => ({
      ...one,
      zone: i < 3 ? 'closed' : 'open',
    })),
    {
      code: 'L1',
      stratum: 'lagoon',
      zone: 'closed',
      belts: [{ counts: { sandfish: 4 }, lengthsMm: { sandfish: [150, 190] } }, { status: 'lost' }],
    },
    {
      code: 'L2',
      stratum: 'lagoon',
      zone: 'open',
      belts: [{ lengthM: 15, counts: { sandfish: 2 }, lengthsMm: { sandfish: [210] } }],
    },
    { code: 'L3', stratum: 'lagoon', zone: 'open', belts: [{ noneSeen: true }] },
  ],
});
const species = survey.targets[0]!;

function explained(of: ExplainedFigure, by: 'survey' | 'stratum' | 'zone', name?: string): Explanation {
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by });
  const answers = estimator.answers(survey, species);
  const density = answers.find((one) => one.scope.name === name) ?? answers[0]!;
  const sizes = estimateSizes(survey, species, { by, limitMm: null, classMm: 20, confidence: 0.95 });
  return explainFigure({
    survey,
    species,
    of,
    density,
    sizes: sizes.find((one) => one.scope.name === density.scope.name) ?? null,
    biomass: null,
    weights: null,
    archive: new Archive(),
    confidence: 0.95,
  });
}

/** The formula of METHODS b from the rows alone: nothing of the program's own sums. */
function reworked({ strata }: Explanation) {
  const total = strata.reduce((sum, one) => sum + one.areaHa!, 0);
  let value = 0;
  let variance = 0;
  for (const { areaHa, stations } of strata) {
    const values = stations.map((one) => one.valuePerHa!);
    const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
    const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    value += (areaHa! / total) * mean;
    variance += ((areaHa! / total) ** 2 * squares) / (values.length - 1) / values.length;
  }
  return { value, standardError: Math.sqrt(variance) };
}

describe('a figure opened to its roots', () => {
  // Second algorithm: Cochran's stratified mean and error, worked out here from the rows of the explanation.
  it('gives density and standard error again from its rows', () => {
    const explanation = explained('density', 'survey');
    const again = reworked(explanation);
    near(again.value, explanation.value!, 1e-12);
    near(again.standardError, explanation.standardError!, 1e-12);
  });

  // The lagoon has a station of less than two thirds of the plan: by hand (4 + 2 + 0) / (80 + 30 + 80) m2 = 315.79 per ha.
  it('shows a ratio of sums with animals and areas that make it', () => {
    const [lagoon] = explained('density', 'survey').strata.filter((one) => one.stratum === 'lagoon');
    expect(lagoon!.estimator).toBe('ratio of sums');
    const animals = lagoon!.stations.reduce((sum, one) => sum + one.amount, 0);
    const areaM2 = lagoon!.stations.reduce((sum, one) => sum + one.searchedAreaM2, 0);
    expect((animals / areaM2) * 10_000).toBeCloseTo(315.789, 3);
    near(lagoon!.meanPerHa, (animals / areaM2) * 10_000, 1e-12);
  });

  it('has every belt, the lost one with no say, and the animals of the belts are those of the station', () => {
    const [station] = explained('density', 'survey').strata.flatMap(({ stations }) =>
      stations.filter((one) => one.station === 'L1'),
    );
    expect(station!.belts.map(({ state }) => state)).toEqual(['counted', 'lost']);
    expect(station!.searchedAreaM2).toBe(80);
    expect(station!.animals).toBe(4);
  });

  // Invariance: the variances of the strata add up to the standard error squared, whole or part.
  it.each([
    ['survey', undefined],
    ['stratum', 'flat'],
    ['zone', 'closed'],
    ['zone', 'open'],
  ] as const)('adds the variances of its strata up to the standard error, by %s', (by, name) => {
    const { strata, standardError } = explained('density', by, name);
    const variance = strata.reduce((sum, one) => sum + one.variance!, 0);
    near(Math.sqrt(variance), standardError!, 1e-10);
  });

  // Second algorithm: weighted mean of the members, each standing for stratum area over stations.
  it('gives the density of a zone again from its members', () => {
    const { strata, value } = explained('density', 'zone', 'open');
    let weighted = 0;
    let weights = 0;
    for (const { areaHa, stationCount, stations } of strata) {
      for (const one of stations.filter(({ isMember }) => isMember)) {
        weighted += (areaHa! / stationCount) * one.valuePerHa!;
        weights += areaHa! / stationCount;
      }
    }
    near(weighted / weights, value!, 1e-12);
  });

  // By hand: 4 animals at L1 from two lengths stand for 2 each, 300/3 ha * 10000/80 = 12 500 a piece; the 2 at L2 from
  // one length, 300/3 * 10000/30 = 33 333 each: (2*12500*150 + 2*12500*190 + 2*33333.3*210) / (50000 + 66666.7) = 192.857.
  it('gives the mean length again from what each animal stands for', () => {
    const { strata, value, standardError } = explained('size', 'stratum', 'lagoon');
    const stations = strata.flatMap((one) => one.stations);
    const lengths = stations.reduce((sum, one) => sum + one.amount, 0);
    const animals = stations.reduce((sum, one) => sum + one.weightedAnimals!, 0);
    expect(lengths / animals).toBeCloseTo(192.857, 3);
    near(lengths / animals, value!, 1e-12);
    near(Math.sqrt(strata.reduce((sum, one) => sum + one.variance!, 0)), standardError!, 1e-10);
  });

  it('says why there is no figure, and shows the stations all the same', () => {
    const unresolved = surveyOf({
      areasHa: { flat: 10 },
      stations: [...stationsCounting('flat', [1, 2]), { code: 'X', stratum: 'flat', belts: [{}] }],
    });
    const [density] = new DensityEstimator(defaultDensitySettings).answers(unresolved, species);
    const explanation = explainFigure({
      survey: unresolved,
      species,
      of: 'density',
      density: density!,
      sizes: null,
      biomass: null,
      weights: null,
      archive: new Archive(),
      confidence: 0.95,
    });
    expect(explanation.value).toBeNull();
    expect(explanation.reason?.code).toBe('unresolved-stations');
    expect(explanation.strata[0]?.stations).toHaveLength(2);
  });
});

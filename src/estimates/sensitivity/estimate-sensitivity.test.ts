import { describe, expect, it } from 'vitest';
import { stationsCounting, surveyOf } from '../../../test/survey-builder.ts';
import { Archive } from '../density/archive.ts';
import { DensityEstimator } from '../density/density-estimator.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import { estimateSensitivity } from './estimate-sensitivity.ts';

function sensitivityOf(counts: readonly number[], densityPerHa: number | null = null) {
  const survey = surveyOf({ areasHa: { flat: 100 }, stations: stationsCounting('flat', counts) });
  const content = {
    what: 'reference-density',
    densityPerHa: densityPerHa ?? 1,
    cv: null,
    method: 'belts',
    beltWidthM: null,
    place: null,
    meaning: 'typed',
  } as const;
  return estimateSensitivity(
    {
      survey,
      species: survey.targets[0]!,
      estimator: new DensityEstimator({ ...defaultDensitySettings, interval: 'lognormal' }),
      archive: new Archive(),
      reference: densityPerHa === null ? null : { content, source: 'Author 2014', status: 'own', note: null },
      questioned: [],
    },
    { confidence: 0.95, seed: 1, draws: 199 },
  );
}

describe('whether an answer stands', () => {
  // By hand: 60 of 66 animals at one of 7 stations; without it 6 over 6, mean 9.43 becomes 1, 89 % less.
  it('it rests on the one station that holds nearly all animals', () => {
    const { verdict, stations } = sensitivityOf([60, 1, 1, 1, 1, 1, 1]);
    expect(verdict).toBe('rests');
    expect(stations[0]).toMatchObject({ station: 'flat1', animals: 60 });
    expect(stations[0]!.shareOfAnimals).toBeCloseTo(60 / 66, 9);
    expect(stations[0]!.change).toBeCloseTo(1 / (66 / 7) - 1, 9);
  });

  it('it stands where every station says much the same', () => {
    const { verdict, turned } = sensitivityOf([5, 6, 4, 5, 7, 5, 6, 4, 5, 6], 5000);
    expect(verdict).toBe('stands');
    expect(turned).toEqual([]);
  });

  // 66 animals on 7 x 80 m2 are 1 179 per ha, without the first station 125: about a reference of 400 the two disagree.
  it('it tells when the statement about a reference turns without a station', () => {
    const { turned, verdict } = sensitivityOf([60, 1, 1, 1, 1, 1, 1], 400);
    expect(turned).toContain('flat1');
    expect(verdict).toBe('rests');
  });

  it('there is nothing to try where nothing was seen', () => {
    expect(sensitivityOf([0, 0, 0]).reason?.code).toBe('none-seen');
  });

  // Second algorithm: the density verb's own intervals.
  it('the other intervals are those of the density asked for by name', () => {
    const { variants, density } = sensitivityOf([3, 0, 9, 1, 0, 4]);
    const survey = surveyOf({
      areasHa: { flat: 100 },
      stations: stationsCounting('flat', [3, 0, 9, 1, 0, 4]),
    });
    const [plain] = new DensityEstimator(defaultDensitySettings).answers(survey, survey.targets[0]!);
    expect(density).toEqual(plain);
    for (const interval of ['lognormal', 't'] as const) {
      const [asked] = new DensityEstimator({ ...defaultDensitySettings, interval }).answers(
        survey,
        survey.targets[0]!,
      );
      expect(variants.find((one) => one.kind === interval)?.intervalPerHa).toEqual(asked!.intervalPerHa);
    }
    const wide = variants.find((one) => one.kind === 'wide-prior')!.intervalPerHa!;
    expect(wide[1] / wide[0]).toBeGreaterThan(density.intervalPerHa![1] / density.intervalPerHa![0]);
  });
});

import { describe, expect, it } from 'vitest';
import { stationsCounting, surveyOf } from '../../../test/survey-builder.ts';
import { near } from '../../maths/nearness.ts';
import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import { DensityEstimator } from '../density/density-estimator.ts';
import { defaultDensitySettings, type EstimatorChoice } from '../density/density-settings.ts';
import { stratumSamples } from '../density/stratum-sample.ts';
import { leaveOneOut } from './leave-one-out.ts';
import { withoutData } from './without-data.ts';

const survey = surveyOf({
  areasHa: { flat: 120, lagoon: 300 },
  stations: [
    ...stationsCounting('flat', [0, 3, 14, 1, 0, 7]),
    ...stationsCounting('lagoon', [22, 0, 0, 5]),
    // Half a belt: under the ratio of sums it weighs by its area.
    { code: 'lagoon9', stratum: 'lagoon', belts: [{ lengthM: 20, counts: { sandfish: 9 } }] },
  ],
});

function samples(of: SurveyInHand, estimator: EstimatorChoice) {
  return stratumSamples(observeSpecies(of, of.targets[0]!), of.plannedAreaCm2, {
    estimator,
    selection: 'all',
  });
}

describe('the density with one station left out', () => {
  // Second algorithm: the whole estimate made again without the station.
  it.each(['station mean', 'ratio of sums'] as const)(
    'equals the estimate made again, by %s',
    (estimator) => {
      const estimated = new DensityEstimator({ ...defaultDensitySettings, estimator, interval: 'lognormal' });
      const left = leaveOneOut(samples(survey, estimator));
      expect(left).toHaveLength(11);
      for (const one of left) {
        const again = withoutData(survey, [{ station: one.station, transect: null }]);
        const [answer] = estimated.answers(again, survey.targets[0]!);
        near(one.densityPerHa, answer!.densityPerHa!, 1e-12);
        near(one.standardErrorPerHa!, answer!.standardErrorPerHa!, 1e-10);
        near(one.degreesOfFreedom!, answer!.degreesOfFreedom!, 1e-9);
      }
    },
  );

  // By hand: 4 and 8 animals on 80 m2 are 500 and 1 000 per ha; without the first 1 000, and one station has no spread.
  it('of two stations is that of the other, without a spread', () => {
    const two = surveyOf({ areasHa: { flat: 10 }, stations: stationsCounting('flat', [4, 8]) });
    const [first] = leaveOneOut(samples(two, 'station mean'));
    expect(first).toMatchObject({ station: 'flat1', animals: 4, standardErrorPerHa: null });
    expect(first!.densityPerHa).toBeCloseTo(1000, 9);
  });

  it('passes over a lone station, without which its stratum has no density', () => {
    const lone = surveyOf({ areasHa: { flat: 10 }, stations: stationsCounting('flat', [4]) });
    expect(leaveOneOut(samples(lone, 'station mean'))).toEqual([]);
  });
});

describe('a survey without data in question', () => {
  it('loses a belt, and the station with its last belt', () => {
    const two = surveyOf({
      areasHa: { flat: 10 },
      stations: [
        { code: 'A', stratum: 'flat', belts: [{ counts: { sandfish: 1 } }, { counts: { sandfish: 5 } }] },
        { code: 'B', stratum: 'flat', belts: [{ counts: { sandfish: 2 } }] },
      ],
    });
    const doubtful = [
      { station: 'A', transect: '2' },
      { station: 'B', transect: '1' },
    ];
    const left = withoutData(two, doubtful);
    expect(left.stations.map(({ record, transects }) => [record.code, transects.length])).toEqual([['A', 1]]);
  });
});

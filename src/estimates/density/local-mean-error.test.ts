import { expect, test } from 'vitest';
import { speciesNamed, surveyOf } from '../../../test/survey-builder.ts';
import { near } from '../../maths/nearness.ts';
import type { Selection } from '../../survey/words.ts';
import { DensityEstimator } from './density-estimator.ts';
import { defaultDensitySettings } from './density-settings.ts';

/** A trend along a reef: 12 stations 500 m apart, from 0 to 22 animals on 100 m2 each. */
function reef(change: { selection?: Selection; withoutPosition?: string } = {}) {
  const survey = surveyOf({
    areasHa: { flat: 100 },
    species: ['A'],
    stations: Array.from({ length: 12 }, (_, i) => ({
      ...{ code: `S${i}`, stratum: 'flat', selection: change.selection ?? 'random' },
      belts: [{ lengthM: 50, widthM: 2, counts: { A: 2 * i } }],
    })),
  });
  const stations = survey.stations.map((station, i) => {
    const known = station.record.code !== change.withoutPosition;
    const position = { latitudeDeg: known ? -17 : null, longitudeDeg: known ? 177 + 0.005 * i : null };
    return { ...station, record: { ...station.record, ...position } };
  });
  return { ...survey, stations };
}

function answerOf(survey: ReturnType<typeof reef>, variance?: 'local mean') {
  const settings = {
    ...defaultDensitySettings,
    interval: 'lognormal' as const,
    ...(variance === undefined ? {} : { variance }),
  };
  return new DensityEstimator(settings).answers(survey, speciesNamed('A'))[0]!;
}

test('along a trend the local-mean error is far below the usual one, and the density is the same', () => {
  const usual = answerOf(reef());
  const local = answerOf(reef(), 'local mean');
  expect(local.densityPerHa).toBe(usual.densityPerHa);
  // By hand: counts 0, 2 … 22 have the variance 52, so the usual error is sqrt(52 / 12) of 0.01 ha, 208.2 per ha.
  near(usual.standardErrorPerHa!, 100 * Math.sqrt(52 / 12), 1e-12);
  // Local means follow the trend but for the ends of the row, where a station has neighbours on one side only.
  expect(local.standardErrorPerHa).toBeLessThan(usual.standardErrorPerHa! / 3);
  near(local.totalStandardError! / local.standardErrorPerHa!, 100, 1e-9);
  const told = local.cautions.find(({ code }) => code === 'local-mean-used')!;
  expect(told.parameters).toMatchObject({ usualPerHa: usual.standardErrorPerHa, strata: '' });
});

test.each([
  {
    what: 'a station without a position',
    survey: reef({ withoutPosition: 'S4' }),
    why: /no position .* S4$/,
  },
  { what: 'a survey by site', survey: reef(), why: null },
])('$what keeps the usual error, and says why', ({ survey, why }) => {
  const usual = answerOf(survey);
  const settings = { ...defaultDensitySettings, by: why === null ? ('site' as const) : ('survey' as const) };
  const [local] = new DensityEstimator({
    ...settings,
    interval: 'lognormal',
    variance: 'local mean',
  }).answers(survey, speciesNamed('A'));
  const told = local!.cautions.find(({ code }) => code === 'local-mean-not-possible')!;
  if (why === null) expect(told.parameters['why']).toContain('only a survey or a stratum');
  else {
    expect(told.parameters['why']).toMatch(why);
    expect(local!.standardErrorPerHa).toBe(usual.standardErrorPerHa);
  }
});

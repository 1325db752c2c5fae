import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type StationSketch,
  type SurveySketch,
  speciesNamed,
  stationsCounting,
  surveyOf,
} from '../../../test/survey-builder.ts';
import { near } from '../../maths/nearness.ts';
import { DensityEstimator } from './density-estimator.ts';
import { type DensitySettings, defaultDensitySettings } from './density-settings.ts';

const sandfish = speciesNamed('sandfish');

function answersFor(sketch: SurveySketch, settings: Partial<DensitySettings> = {}) {
  return new DensityEstimator({ ...defaultDensitySettings, ...settings }).answers(surveyOf(sketch), sandfish);
}

const answerFor = (sketch: SurveySketch, settings: Partial<DensitySettings> = {}) =>
  answersFor(sketch, settings)[0]!;

const twoStrata: SurveySketch = {
  areasHa: { reef: 30, flat: 10 },
  stations: [...stationsCounting('reef', [4, 0, 2]), ...stationsCounting('flat', [8, 12])],
};

describe('a density', () => {
  it('weighs strata by area', () => {
    // by hand: reef (4+0+2)/3 x 125 = 250, flat 10 x 125 = 1250 per ha; (30 x 250 + 10 x 1250) / 40 = 500
    const answer = answerFor(twoStrata);
    expect(answer.densityPerHa).toBeCloseTo(500, 9);
    expect(answer.totalAnimals).toBeCloseTo(20_000, 6);
    expect(answer.intervalPerHa![0]).toBeLessThan(500);
    expect(answer.intervalPerHa![1]).toBeGreaterThan(500);
  });

  it('of a lone station has a mean and no spread, and the survey with it says which stratum is lone', () => {
    const sketch = {
      areasHa: { reef: 30, flat: 10 },
      stations: [...stationsCounting('reef', [4, 2]), ...stationsCounting('flat', [8])],
    };
    const survey = answerFor(sketch);
    expect(survey.densityPerHa).not.toBeNull();
    expect(survey).toMatchObject({ standardErrorPerHa: null, intervalPerHa: null });
    expect(survey.reason).toEqual({ code: 'lone-station', parameters: { strata: 'flat' } });
    const flat = answersFor(sketch, { by: 'stratum' }).find((one) => one.scope.name === 'flat')!;
    expect(flat.densityPerHa).toBe(1000);
    expect(flat.standardErrorPerHa).toBeNull();
  });

  it('of a lone station has a spread again once its stratum is merged with another, under both names', () => {
    const sketch = {
      areasHa: { reef: 30, flat: 10 },
      stations: [...stationsCounting('reef', [4, 2]), ...stationsCounting('flat', [8])],
    };
    const [merged] = answersFor(sketch, { by: 'stratum', merges: [['reef', 'flat']] });
    // by hand: (4 + 2 + 8) / 3 animals on 80 m2 each, over 40 ha
    expect(merged!.scope.name).toBe('reef + flat');
    expect(merged!.densityPerHa).toBeCloseTo((14 / 3) * 125, 9);
    expect(merged!.areaHa).toBe(40);
    expect(merged!.standardErrorPerHa).toBeGreaterThan(0);
  });

  it('of one station is its own: no spread, and no stock however large the stratum', () => {
    const answers = answersFor(
      { areasHa: { reef: 30 }, stations: stationsCounting('reef', [4, 0]) },
      { by: 'station' },
    );
    expect(answers.map((one) => one.densityPerHa)).toEqual([500, 0]);
    for (const one of answers) {
      expect(one).toMatchObject({
        standardErrorPerHa: null,
        intervalPerHa: null,
        totalAnimals: null,
        areaHa: null,
      });
      expect(one.reason!.code).toBe('one-station');
    }
  });

  it('of a survey with a blank station is held, as is its stratum and every zone of it, but not the other stations', () => {
    const blank: StationSketch = { code: 'Z', stratum: 'reef', zone: 'closed', belts: [{}] };
    const counted = stationsCounting('reef', [4, 2]).map((one) => ({ ...one, zone: 'open' }));
    const sketch = { areasHa: { reef: 30 }, stations: [...counted, blank] };
    for (const by of ['survey', 'stratum', 'zone'] as const) {
      for (const one of answersFor(sketch, { by })) {
        expect(one.densityPerHa).toBeNull();
        expect(one.reason).toMatchObject({
          code: 'unresolved-stations',
          parameters: { count: 1, stations: 'Z' },
        });
      }
    }
    const stations = answersFor(sketch, { by: 'station' }).map((one) => [one.scope.name, one.densityPerHa]);
    expect(stations).toEqual([
      ['reef1', 500],
      ['reef2', 250],
      ['Z', null],
    ]);
  });

  it('of hand-picked stations alone speaks for the stations visited: no spread, no stock', () => {
    const stations = stationsCounting('reef', [4, 2, 6]).map(
      (one): StationSketch => ({ ...one, selection: 'hand-picked' }),
    );
    const answer = answerFor({ areasHa: { reef: 30 }, stations });
    expect(answer).toMatchObject({
      densityPerHa: 500,
      standardErrorPerHa: null,
      intervalPerHa: null,
      totalAnimals: null,
    });
    expect(answer.reason!.code).toBe('hand-picked-only');
  });

  it('of random and hand-picked stations together is held with the size of the mistake, or uses one kind when asked', () => {
    const stations = [
      ...stationsCounting('reef', [1, 0, 2]),
      { ...stationsCounting('reef', [30])[0]!, code: 'P', selection: 'hand-picked' as const },
    ];
    const sketch = { areasHa: { reef: 30 }, stations };
    const held = answerFor(sketch);
    expect(held.densityPerHa).toBeNull();
    expect(held.reason!.code).toBe('mixed-selection');
    // by hand: 125 x mean(1, 0, 2) = 125; 125 x 30 = 3750; 125 x 33 / 4 = 1031.25
    expect(held.reason!.parameters).toMatchObject({
      randomPerHa: 125,
      handPickedPerHa: 3750,
      togetherPerHa: 1031.25,
    });
    expect(answerFor(sketch, { selection: 'random' }).densityPerHa).toBe(125);
    const accepted = answerFor(sketch, { acceptance: { who: 'Officer A', why: 'trial' } });
    expect(accepted.densityPerHa).toBe(1031.25);
    expect(accepted.cautions[0]!.code).toBe('accepted');
  });

  it('of a timed search is refused: animals per hour are no density', () => {
    const answer = answerFor({ ...twoStrata, layout: 'timed' });
    expect(answer.densityPerHa).toBeNull();
    expect(answer.reason!.code).toBe('timed-search');
  });

  it('of a species nobody looked for is unknown, not zero', () => {
    const estimator = new DensityEstimator(defaultDensitySettings);
    const [answer] = estimator.answers(surveyOf(twoStrata), speciesNamed('trochus'));
    expect(answer!.densityPerHa).toBeNull();
    expect(answer!.reason!.code).toBe('not-a-target');
  });

  it('of a survey in which a whole stratum was lost is unknown', () => {
    const lost: StationSketch = { code: 'L', stratum: 'flat', belts: [{ status: 'lost' }] };
    const answer = answerFor({
      areasHa: { reef: 30, flat: 10 },
      stations: [...stationsCounting('reef', [1, 2]), lost],
    });
    expect(answer.densityPerHa).toBeNull();
    expect(answer.reason!.code).toBe('no-searched-area');
  });

  it('adds up animals and area where one station searched less than two thirds of the plan', () => {
    const stations: StationSketch[] = [
      { code: 'A', stratum: 'reef', belts: [{ counts: { sandfish: 4 } }, { counts: { sandfish: 4 } }] },
      { code: 'B', stratum: 'reef', belts: [{ noneSeen: true }, { noneSeen: true }] },
      { code: 'C', stratum: 'reef', belts: [{ counts: { sandfish: 4 } }, { status: 'lost' }] },
    ];
    const answer = answerFor({ areasHa: { reef: 30 }, stations });
    // by hand: 12 animals on 5 x 80 m2 = 0.04 ha: 300 per ha; the mean of 500, 0, 500 would be 333
    expect(answer.densityPerHa).toBeCloseTo(300, 9);
    expect(answer.estimators).toEqual([{ stratum: 'reef', estimator: 'ratio of sums' }]);
    expect(answer.cautions.map((one) => one.code)).toContain('ratio-of-sums-used');
  });

  it('of zero animals has no standard error and a bound that shrinks with searched area', () => {
    const bound = (n: number) =>
      answerFor({ areasHa: { reef: 30 }, stations: stationsCounting('reef', new Array(n).fill(0)) })
        .intervalPerHa!;
    expect(bound(5)[0]).toBe(0);
    expect(bound(10)[1]).toBeLessThan(bound(5)[1]);
  });

  it('gives every kind of interval on request, the estimate inside', () => {
    for (const interval of ['clumped', 'lognormal', 't', 'percentile', 'bca'] as const) {
      const stations = stationsCounting('reef', [4, 0, 2, 9, 1, 0, 3]);
      const answer = answerFor({ areasHa: { reef: 30 }, stations }, { interval });
      expect(answer.intervalMethod).toBe(interval);
      expect(answer.intervalPerHa![0]).toBeLessThanOrEqual(answer.densityPerHa!);
      expect(answer.intervalPerHa![1]).toBeGreaterThanOrEqual(answer.densityPerHa!);
    }
  });

  it('of a zone that is whole strata equals the stratified density', () => {
    const stations = twoStrata.stations.map((one) => ({ ...one, zone: 'open' }));
    const zone = answerFor({ ...twoStrata, stations }, { by: 'zone' });
    const survey = answerFor(twoStrata);
    near(zone.densityPerHa!, survey.densityPerHa!, 1e-12);
    near(zone.standardErrorPerHa!, survey.standardErrorPerHa!, 1e-12);
  });

  it('of a zone without an animal is zero also where the stratum is a ratio of sums, never below it', () => {
    const full = { lengthM: 40, widthM: 2 };
    const stations: StationSketch[] = [
      {
        code: 'A',
        stratum: 'reef',
        zone: 'open',
        belts: [
          { ...full, counts: { sandfish: 9 } },
          { ...full, noneSeen: true },
        ],
      },
      {
        code: 'B',
        stratum: 'reef',
        zone: 'open',
        belts: [{ ...full, counts: { sandfish: 3 } }, { status: 'lost' }],
      },
      {
        code: 'C',
        stratum: 'reef',
        zone: 'closed',
        belts: [
          { ...full, noneSeen: true },
          { ...full, noneSeen: true },
        ],
      },
      {
        code: 'D',
        stratum: 'reef',
        zone: 'closed',
        belts: [
          { ...full, noneSeen: true },
          { ...full, noneSeen: true },
        ],
      },
    ];
    const sketch = { areasHa: { reef: 30 }, stations };
    const [closed, open] = answersFor(sketch, { by: 'zone', interval: 't' });
    expect(closed!.densityPerHa).toBe(0);
    // by hand: 12 animals on 240 m2 in the open zone
    expect(open!.densityPerHa).toBeCloseTo(500, 9);
    expect(open!.meanWherePresentPerHa).toBeCloseTo(500, 9);
    expect(open!.estimators).toEqual([{ stratum: 'reef', estimator: 'ratio of sums' }]);
  });

  it('of a zone with one or two stations in a stratum gets the log-normal interval, and says so', () => {
    const stations = stationsCounting('reef', [4, 0, 2, 9, 1, 3]).map(
      (one, i): StationSketch => ({ ...one, zone: i < 2 ? 'closed' : 'open' }),
    );
    const [closed, open] = answersFor({ areasHa: { reef: 30 }, stations }, { by: 'zone' });
    expect(closed!.intervalMethod).toBe('lognormal');
    expect(closed!.cautions.map((one) => one.code)).toContain('too-few-for-clumped');
    expect(open!.intervalMethod).toBe('clumped');
  });

  it('warns of few stations with animals and of stations whose choice nobody wrote down', () => {
    const stations = stationsCounting('reef', [4, 0, 2]).map(
      (one): StationSketch => ({ ...one, selection: null }),
    );
    const codes = answerFor({ areasHa: { reef: 30 }, stations }).cautions.map((one) => one.code);
    expect(codes).toContain('few-positive-stations');
    expect(codes).toContain('selection-not-recorded');
  });

  it('narrows the spread by the finite population correction when asked', () => {
    // one hectare has room for 125 stations of 80 m2; 3 visited: by hand sqrt(1 - 3/125)
    const sketch = { areasHa: { reef: 1 }, stations: stationsCounting('reef', [4, 0, 2]) };
    const plain = answerFor(sketch).standardErrorPerHa!;
    expect(answerFor(sketch, { finitePopulation: true }).standardErrorPerHa!).toBeCloseTo(
      plain * Math.sqrt(1 - 3 / 125),
      9,
    );
  });
});

describe('whatever the counts', () => {
  const counts = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 8 });
  const sketches = fc.record({ reef: counts, flat: counts }).map(
    ({ reef, flat }): SurveySketch => ({
      areasHa: { reef: 30, flat: 10 },
      stations: [...stationsCounting('reef', reef), ...stationsCounting('flat', flat)],
    }),
  );
  const same = (a: SurveySketch, b: SurveySketch, interval: DensitySettings['interval'] = 'lognormal') => {
    const [left, right] = [answerFor(a, { interval }), answerFor(b, { interval })];
    const pairs = [
      [left.densityPerHa, right.densityPerHa],
      [left.standardErrorPerHa, right.standardErrorPerHa],
      [left.intervalPerHa?.[0] ?? null, right.intervalPerHa?.[0] ?? null],
      [left.intervalPerHa?.[1] ?? null, right.intervalPerHa?.[1] ?? null],
    ] as const;
    for (const [x, y] of pairs) {
      if (x === null || y === null) expect(x).toBe(y);
      else near(x, y, 1e-9);
    }
  };

  it('the order of the stations does not matter', () => {
    fc.assert(
      fc.property(sketches, (sketch) => same(sketch, { ...sketch, stations: sketch.stations.toReversed() })),
      { numRuns: 60 },
    );
  });

  it('cutting a belt in two changes nothing', () => {
    const cut = (station: StationSketch): StationSketch => ({
      ...station,
      belts: station.belts.flatMap((belt) => {
        const count = belt.counts?.['sandfish'] ?? 0;
        const first = Math.floor(count / 2);
        const piece = (animals: number, lengthM: number) => ({ lengthM, counts: { sandfish: animals } });
        return [piece(first, 15), piece(count - first, 25)];
      }),
    });
    fc.assert(
      fc.property(sketches, (sketch) => same(sketch, { ...sketch, stations: sketch.stations.map(cut) })),
      { numRuns: 60 },
    );
  });

  it('nothing is ever NaN, and the estimate lies inside the default interval', () => {
    fc.assert(
      fc.property(sketches, (sketch) => {
        const answer = answerFor(sketch);
        expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity/);
        expect(answer.intervalPerHa![0]).toBeLessThanOrEqual(answer.densityPerHa!);
        expect(answer.intervalPerHa![1]).toBeGreaterThanOrEqual(answer.densityPerHa!);
      }),
      { numRuns: 40 },
    );
  });
});

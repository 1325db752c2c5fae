import { describe, expect, test } from 'vitest';
import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import { seededRandom } from '../../maths/random.ts';
import { candidateGrid, spacingFor } from './candidates.ts';
import type { DrawRequest } from './draw-request.ts';
import { drawStations } from './draw-stations.ts';
import { type DrawnPlan, planCounts } from './drawn-plan.ts';
import { type DrawGround, directionOf } from './ground.ts';
import { inclusionUnderSpacing } from './inclusion-under-spacing.ts';
import { inclusionOf } from './pivotal-positions.ts';
import { replaceStation } from './replace-station.ts';
import { simpleRandomDraw } from './simple-random.ts';
import { voronoiBalance } from './voronoi-balance.ts';

/** A ring of reef about 11 km across over the date line, and a square of lagoon inside it. */
const box = { southDeg: -17.05, northDeg: -16.95, westDeg: 179.95, eastDeg: 180.05 };
const fromMiddle = (latitudeDeg: number, longitudeDeg: number) =>
  Math.hypot(latitudeDeg + 17, ((longitudeDeg + 360) % 360) - 180);
const reef: DrawGround = {
  box,
  contains: ({ latitudeDeg, longitudeDeg }) => {
    const r = fromMiddle(latitudeDeg, longitudeDeg);
    return r < 0.05 && r > 0.03;
  },
};
const lagoon: DrawGround = {
  box,
  contains: ({ latitudeDeg, longitudeDeg }) => fromMiddle(latitudeDeg, longitudeDeg) <= 0.03,
};
const none = { fixed: [], handPicked: [] };
const request: DrawRequest = {
  strata: [
    { name: 'RF', ground: reef, stations: 8, spares: 4, ...none },
    { name: 'LG', ground: lagoon, stations: 5, spares: 3, ...none },
  ],
  method: 'acceptance',
  seed: 2026,
  minimumSpacingM: null,
  distanceM: roughDistanceM,
};
const planOf = (changed: Partial<DrawRequest> = {}) => drawStations({ ...request, ...changed }).value!;
const codesOf = (answer: { readonly problems: readonly { readonly code: string }[] }) =>
  answer.problems.map((problem) => problem.code);

describe.each(['acceptance', 'pivotal'] as const)('a draw by the %s method', (method) => {
  // Authority: JOB scenario 12.
  test('repeats itself from its seed, and one digit of the seed changes it', () => {
    expect(planOf({ method })).toEqual(planOf({ method }));
    expect(planOf({ method, seed: 2027 }).stations[0]).not.toEqual(planOf({ method }).stations[0]);
  });

  test('puts the wanted stations and spares on their own ground', () => {
    const plan = planOf({ method });
    expect(planCounts(plan)).toEqual([
      { stratum: 'RF', planned: 8, fixed: 0, handPicked: 0, replaced: 0, sparesLeft: 4 },
      { stratum: 'LG', planned: 5, fixed: 0, handPicked: 0, replaced: 0, sparesLeft: 3 },
    ]);
    for (const { stratum, position } of plan.stations)
      expect((stratum === 'RF' ? reef : lagoon).contains(position)).toBe(true);
    expect(new Set(plan.stations.map((station) => station.code)).size).toBe(20);
  });

  test('of a stratum does not change with the other strata', () => {
    const alone = planOf({ method, strata: [request.strata[1]!] });
    expect(alone.stations).toEqual(planOf({ method }).stations.filter((station) => station.stratum === 'LG'));
  });

  test('keeps the minimum spacing, and says what it passed over', () => {
    const plan = planOf({ method, minimumSpacingM: 1500 });
    const { stations } = plan;
    for (const [i, a] of stations.entries())
      for (const b of stations.slice(i + 1))
        expect(roughDistanceM(a.position, b.position)).toBeGreaterThanOrEqual(1500);
    expect(plan.passedOver.length).toBeGreaterThan(0);
    expect(plan.passedOver.every((one) => one.distanceM < 1500)).toBe(true);
  });

  // Authority: second algorithm, simple random draws of the same places, 30 of each.
  test('is better spread than a simple random draw', () => {
    const random = seededRandom(1);
    const places = candidateGrid(reef, spacingFor(reef, 600, random)!, random)!;
    const points = places.map(directionOf);
    const even = { points, inclusion: places.map(() => 8 / places.length) };
    let drawn = 0;
    let simple = 0;
    for (let seed = 0; seed < 30; seed++) {
      const plan = planOf({ method, seed, strata: [{ ...request.strata[0]!, spares: 0 }], candidates: 600 });
      drawn += voronoiBalance(
        even,
        plan.stations.map((station) => directionOf(station.position)),
      );
      const chosen = simpleRandomDraw({ count: points.length, size: 8 }, random);
      simple += voronoiBalance(
        even,
        chosen.map((i) => points[i]!),
      );
    }
    expect(drawn).toBeLessThan(0.6 * simple);
  });
});

describe('a panel and chosen stations', () => {
  const fixed = [{ code: 'RF-01', position: { latitudeDeg: -17.04, longitudeDeg: 180 } }];
  const handPicked = [{ code: 'village', position: { latitudeDeg: -17, longitudeDeg: 180 } }];
  const strata = [{ ...request.strata[0]!, fixed, handPicked }];

  test('fixed stations count, chosen ones stand beside and are marked', () => {
    const answer = drawStations({ ...request, strata });
    expect(planCounts(answer.value!)).toEqual([
      { stratum: 'RF', planned: 8, fixed: 1, handPicked: 1, replaced: 0, sparesLeft: 4 },
    ]);
    expect(
      answer.value!.stations.map((station) => station.selection).filter((one) => one === 'random').length,
    ).toBe(11);
    // The village station lies in the lagoon.
    expect(codesOf(answer)).toEqual(['plan-hand-picked-outside', 'plan-hand-picked']);
  });

  // A code stands for one place: the counts of a chosen station must never land on a drawn one of another stratum.
  test('a drawn station never bears the code of a given one, whatever its stratum or its capitals', () => {
    const position = { latitudeDeg: -17, longitudeDeg: 180 };
    const [rf, lg] = request.strata;
    const plan = planOf({ strata: [rf!, { ...lg!, handPicked: [{ code: 'rf-03', position }] }] });
    const codes = plan.stations.map(({ code }) => code.toLowerCase());
    expect(new Set(codes).size).toBe(codes.length);
    expect(plan.stations.find(({ code }) => code === 'rf-03')).toMatchObject({ selection: 'hand-picked' });
    expect(plan.stations.find(({ code }) => code === 'RF-03-new')).toMatchObject({ stratum: 'RF' });
  });

  test('two given stations whose codes only capitals tell apart are refused', () => {
    const position = { latitudeDeg: -17, longitudeDeg: 180 };
    const handPicked = [
      { code: 'H1', position },
      { code: 'h1', position },
    ];
    const answer = drawStations({
      ...request,
      strata: [request.strata[0]!, { ...request.strata[1]!, handPicked }],
    });
    expect(answer.problems).toMatchObject([{ code: 'plan-name-repeated', parameters: { name: 'H1' } }, {}]);
  });

  test('more fixed stations than stations are refused', () => {
    const crowded = [
      { ...request.strata[0]!, fixed, stations: 1 },
      {
        ...request.strata[1]!,
        fixed: [...handPicked, { code: 'b', position: handPicked[0]!.position }],
        stations: 1,
      },
    ];
    expect(codesOf(drawStations({ ...request, strata: crowded }))).toEqual(['plan-fixed-exceed-stations']);
  });

  test('fixed stations nearer than the spacing are told and stay', () => {
    const pair = [...fixed, { code: 'RF-02', position: { latitudeDeg: -17.0401, longitudeDeg: 180 } }];
    const answer = drawStations({
      ...request,
      strata: [{ ...strata[0]!, fixed: pair, handPicked: [] }],
      minimumSpacingM: 500,
    });
    // By hand: 0.0001 degrees of latitude are 11.1 m.
    expect(answer.problems[0]).toMatchObject({
      code: 'plan-spacing-ignored-by-fixed',
      parameters: { other: 'RF-01', spacingM: 500 },
    });
    expect(answer.value!.stations.filter((one) => one.selection === 'fixed').length).toBe(2);
  });
});

describe('replacing a station', () => {
  const plan = planOf();
  const why = { reason: 'on land at low tide', who: 'Recorder A', date: '2026-03-02' };

  // Authority: JOB scenario 12.
  test('takes the next of the ordered list in the same stratum and records why', () => {
    const first = replaceStation(plan, { code: 'LG-02', ...why }).value!;
    expect(first.replacements).toEqual([{ dropped: 'LG-02', replacement: 'LG-06', stratum: 'LG', ...why }]);
    const second = replaceStation(first, { code: 'LG-06', ...why }).value!;
    expect(second.stations.find((station) => station.code === 'LG-07')).toMatchObject({
      role: 'planned',
      replaces: 'LG-06',
    });
    expect(planCounts(second)[1]).toMatchObject({ planned: 5, replaced: 2, sparesLeft: 1 });
    expect(plan.replacements).toEqual([]);
  });

  test('is refused without a spare, a reason or a station', () => {
    const codes = ['LG-01', 'LG-02', 'LG-03'];
    const used = codes.reduce<DrawnPlan>((some, code) => replaceStation(some, { code, ...why }).value!, plan);
    expect(codesOf(replaceStation(used, { code: 'LG-04', ...why }))).toEqual(['plan-no-replacement-left']);
    expect(codesOf(replaceStation(used, { code: 'LG-01', ...why }))).toEqual([
      'plan-station-already-dropped',
    ]);
    expect(codesOf(replaceStation(plan, { code: 'LG-01', ...why, reason: ' ' }))).toEqual([
      'plan-reason-missing',
    ]);
    expect(codesOf(replaceStation(plan, { code: 'XX', ...why }))).toEqual(['plan-unknown-station']);
    expect(codesOf(replaceStation(plan, { code: 'LG-06', ...why }))).toEqual(['plan-not-replaceable']);
  });
});

describe('a draw that cannot be made', () => {
  const alone = (changed: object) => [{ ...request.strata[0]!, ...changed }];

  test('refuses zero stations, no strata and ground that is nowhere', () => {
    expect(codesOf(drawStations({ ...request, strata: alone({ stations: 0 }) }))).toEqual([
      'plan-number-impossible',
    ]);
    expect(codesOf(drawStations({ ...request, strata: [] }))).toEqual(['plan-no-strata']);
    const nowhere = { box, contains: () => false };
    for (const method of ['acceptance', 'pivotal'] as const)
      expect(codesOf(drawStations({ ...request, method, strata: alone({ ground: nowhere }) }))).toEqual([
        'plan-ground-not-found',
      ]);
  });

  // By hand: one hectare is 100 m by 100 m; at 50 m apart it holds fewer than ten stations.
  test('refuses ten thousand stations in one hectare, with the numbers', () => {
    const hectare = { southDeg: -17, northDeg: -16.9991, westDeg: 179, eastDeg: 179.00094 };
    const ground = { box: hectare, contains: () => true };
    const answer = drawStations({
      ...request,
      strata: alone({ ground, stations: 10_000 }),
      minimumSpacingM: 50,
    });
    expect(answer.problems[0]).toMatchObject({
      code: 'plan-spacing-leaves-too-few',
      parameters: { wanted: 10_000, spacingM: 50 },
    });
    expect(answer.problems[0]!.parameters['found']).toBeLessThan(10);
  });

  test('says that spares are short and gives the stations', () => {
    const hectare = { southDeg: -17, northDeg: -16.9991, westDeg: 179, eastDeg: 179.00094 };
    const ground = { box: hectare, contains: () => true };
    const answer = drawStations({
      ...request,
      strata: alone({ ground, stations: 3, spares: 50 }),
      minimumSpacingM: 30,
    });
    expect(codesOf(answer)).toEqual(['plan-spares-short']);
    expect(planCounts(answer.value!)[0]).toMatchObject({ planned: 3 });
  });
});

describe('chances under a minimum spacing', () => {
  test('fall near a fixed station', () => {
    const fixed = [{ code: 'F', position: { latitudeDeg: -17, longitudeDeg: 180 } }];
    const strata = [{ ...request.strata[1]!, fixed, stations: 5 }];
    const effect = inclusionUnderSpacing(
      { ...request, strata, minimumSpacingM: 1500 },
      { redraws: 400, seed: 5 },
    ).value!;
    const [lagoonEffect] = effect.strata;
    const nearest = lagoonEffect!.cells.reduce((a, b) =>
      roughDistanceM(a.place, fixed[0]!.position) < roughDistanceM(b.place, fixed[0]!.position) ? a : b,
    );
    expect(nearest.ratio).toBeLessThan(0.5);
    expect(lagoonEffect!.highestRatio).toBeGreaterThan(1);
    expect(effect.failed).toBe(0);
  });

  // Authority: by definition: a spacing of a metre passes over nothing.
  test('stay as they were where the spacing is nothing', () => {
    const effect = inclusionUnderSpacing({ ...request, minimumSpacingM: 0.001 }, { redraws: 50, seed: 5 })
      .value!;
    for (const stratum of effect.strata) expect([stratum.lowestRatio, stratum.highestRatio]).toEqual([1, 1]);
  });

  test('are not asked for without a spacing', () => {
    expect(inclusionUnderSpacing(request, { seed: 5 }).value).toBeNull();
  });
});

describe('chances in proportion to weights', () => {
  // Authority: by hand: 2 of weights 8, 1, 1: the first is certain, the others share one.
  test('make a heavy place certain and share the rest', () => {
    expect(inclusionOf([8, 1, 1], 2)).toEqual([1, 0.5, 0.5]);
    expect(inclusionOf([1, 1, 2], 1)).toEqual([0.25, 0.25, 0.5]);
  });
});

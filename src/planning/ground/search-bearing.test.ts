import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { groundWithout } from './area-sets.ts';
import { angleBetweenDeg, courseBetween, positionAfter } from './geodesic.ts';
import { groundIndex } from './inside.ts';
import { layStations } from './lay-stations.ts';
import { searchBearing } from './search-bearing.ts';
import { areaOf, boxArea } from './test-areas.ts';

const start = { latitudeDeg: -17.75, longitudeDeg: 177.4 };
const series = { transects: 6, lengthM: 40, gapM: 10 };

/** A strip of ground: `lengthM` along a bearing from 20 m behind the start, `widthM` wide. */
function strip(bearingDeg: number, lengthM: number, widthM: number) {
  const along = (from: typeof start, bearing: number, distanceM: number) =>
    positionAfter(from, { bearingDeg: bearing, distanceM });
  const back = along(start, bearingDeg + 180, 20);
  const front = along(start, bearingDeg, lengthM);
  const sides = [-90, 90].map((side) =>
    [back, front].map((end) => along(end, bearingDeg + side, widthM / 2)),
  );
  const ring = [sides[0]![0]!, sides[0]![1]!, sides[1]![1]!, sides[1]![0]!];
  return areaOf([...ring, ring[0]!]);
}

describe('the bearing that keeps a series inside', () => {
  // By hand: 290 m in a strip 60 m wide: up to atan(30 / 290) = 5.9 degrees off its middle line stay inside.
  test.each([37, 122.5, 358])('is found in a narrow strip along %s degrees', (bearingDeg) => {
    const { contains } = groundIndex(strip(bearingDeg, 320, 60))!;
    const search = searchBearing({ start, series, contains });
    expect(search.fits).toBe(true);
    expect(search.best.share).toBe(1);
    expect(angleBetweenDeg(search.best.bearingDeg, bearingDeg)).toBeLessThan(5.9);
    // By hand: the room to both sides is at most 5.9 degrees and one step of the search.
    expect(search.slackDeg).toBeGreaterThan(1);
    expect(search.slackDeg).toBeLessThan(8);
  });

  test('in wide ground is the one preferred', () => {
    const { contains } = groundIndex(boxArea(177.3, -17.8, 177.5, -17.7))!;
    const search = searchBearing({ start, series, contains, preferredBearingDeg: 222.2 });
    expect(angleBetweenDeg(search.best.bearingDeg, 222.2)).toBeLessThan(1);
    expect(search.slackDeg).toBe(180);
    for (const other of search.runnersUp)
      expect(angleBetweenDeg(other.bearingDeg, 222.2)).toBeGreaterThan(19);
    expect(search.runnersUp).toHaveLength(3);
  });

  // By hand: a strip 200 m long holds belts 0-40, 50-90, 100-140, 150-190 and nothing more: 160 of 240 m.
  test('that does not exist is told, with the best that can be had', () => {
    const { contains } = groundIndex(strip(37, 195, 10))!;
    const search = searchBearing({ start, series, contains });
    expect(search.fits).toBe(false);
    expect(search.startsInside).toBe(true);
    expect(angleBetweenDeg(search.best.bearingDeg, 37)).toBeLessThan(2);
    near(search.best.share, 160 / 240, 0.01);
    expect(search.best.inside.belts.at(-1)!.insideM).toBe(0);
  });

  test('goes round a mask', () => {
    const wide = boxArea(177.38, -17.77, 177.42, -17.73);
    const land = boxArea(177.4005, -17.77, 177.42, -17.73);
    const { contains } = groundIndex(groundWithout(wide, [land]))!;
    const search = searchBearing({ start, series, contains, preferredBearingDeg: 90 });
    expect(search.fits).toBe(true);
    // Second way: the land begins 0.0005 degrees (53 m) east; 290 m may head at most asin(53 / 290) = 10.5 degrees east of north.
    expect(search.best.belts.every((belt) => belt.end.longitudeDeg < 177.4005)).toBe(true);
    expect(Math.abs(90 - search.best.bearingDeg)).toBeLessThan(81);
  });

  // By hand: ground in a quarter ring of radius about 185 m: straight belts leave it, turns of 18 degrees follow it.
  test('may bend along the contour where straight belts do not fit', () => {
    const centre = positionAfter(start, { bearingDeg: 90, distanceM: 185 });
    const contains = (position: typeof start) => {
      const { distanceM } = courseBetween(centre, position);
      return distanceM > 165 && distanceM < 200;
    };
    expect(searchBearing({ start, series, contains }).fits).toBe(false);
    const bent = searchBearing({ start, series, contains, turnsDeg: [0, 15, -15] });
    expect(bent.fits).toBe(true);
    expect(Math.abs(bent.best.turnDeg)).toBe(15);
  });

  test('is the same for the same question', () => {
    const { contains } = groundIndex(strip(37, 320, 60))!;
    expect(searchBearing({ start, series, contains })).toEqual(searchBearing({ start, series, contains }));
  });
});

describe('stations of a plan', () => {
  const { contains } = groundIndex(strip(37, 320, 60))!;
  const away = positionAfter(start, { bearingDeg: 217, distanceM: 500 });
  const plan = layStations(
    [
      { code: 'S1', start, series, contains },
      { code: 'S2', start: away, series, contains },
    ],
    '2026-07-02',
  );

  test('that do not fit are named before the boat leaves', () => {
    expect(plan.cannotFit).toMatchObject([{ code: 'S2', startsInside: false, laidM: 240 }]);
    expect(plan.stations).toHaveLength(2);
  });

  // Authority: vector l3b: 12.7604 E at 17.75 S 177.40 E in 2026.5.
  test('carry the compass bearing of every belt', () => {
    const [station] = plan.stations;
    near(station!.declination.declinationDeg, 12.7604, 1e-4);
    for (const belt of station!.belts) {
      near(
        angleBetweenDeg(belt.bearingDeg, belt.magneticBearingDeg),
        station!.declination.declinationDeg,
        1e-9,
      );
    }
  });
});

import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import type { MapArea } from '../../survey/map-area.ts';
import { areaHaOf, areaSize, ringSize } from './area-size.ts';
import { distanceBetweenM } from './geodesic.ts';
import { areaOf, boxArea, ringOf, wavyArea } from './test-areas.ts';

/**
 * Second algorithm: the exact area between two parallels over a span of longitude on the ellipsoid
 * (closed form of the authalic latitude, textbook), from a border followed straight in degrees.
 */
function authalicBoxHa(west: number, south: number, east: number, north: number): number {
  const flattening = 1 / 298.257223563;
  const e = Math.sqrt(flattening * (2 - flattening));
  const polarM = 6_378_137 * (1 - flattening);
  const q = (degrees: number) => {
    const sine = Math.sin((degrees * Math.PI) / 180);
    return sine / (1 - (e * sine) ** 2) + Math.atanh(e * sine) / e;
  };
  return ((((east - west) * Math.PI) / 180) * (polarM ** 2 / 2) * (q(north) - q(south))) / 10_000;
}

/** The same box with so many points on its parallels that geodesics and parallels are one. */
function boxOfSmallSteps(west: number, south: number, east: number, north: number, steps: number): MapArea {
  const along = (i: number) => west + ((east - west) * i) / steps;
  const southern = Array.from({ length: steps + 1 }, (_, i) => [along(i), south] as const);
  const northern = Array.from({ length: steps + 1 }, (_, i) => [along(steps - i), north] as const);
  return areaOf(ringOf(...southern, ...northern));
}

describe('the area of mapped ground', () => {
  // Authority: GeographicLib's test suite, Planimeter0 and Planimeter5 (read), areas in square metres to 1 m2.
  test.each([
    {
      pairs: [
        [-1, 0],
        [0, -1],
        [1, 0],
        [0, 1],
      ],
      areaM2: 24619419146,
      perimeterM: 627598.2731,
    },
    {
      pairs: [
        [0, 89],
        [90, 89],
        [180, 89],
        [270, 89],
      ],
      areaM2: 24952305678,
      perimeterM: 631819.8745,
    },
    {
      pairs: [
        [0.1, 89],
        [90.1, 89],
        [-179.9, 89],
      ],
      areaM2: 12476152838.5,
      perimeterM: 539297,
    },
  ])('is $areaM2 m2 for the published polygon', ({ pairs, areaM2, perimeterM }) => {
    const ring = ringOf(...pairs.map(([x, y]) => [x!, y!] as const));
    expect(Math.abs(ringSize(ring).areaM2 - areaM2)).toBeLessThan(1);
    expect(Math.abs(ringSize(ring).perimeterM - perimeterM)).toBeLessThan(1);
  });

  // Second algorithm, to 1e-9: zone between parallels in closed form.
  test('equals the closed form between two parallels', () => {
    near(
      areaHaOf(boxOfSmallSteps(177, -18, 177.5, -17.5, 20_000)),
      authalicBoxHa(177, -18, 177.5, -17.5),
      1e-9,
    );
  });

  // By hand: what is cut out and what lies elsewhere is subtracted and added.
  test('leaves holes out and adds parts', () => {
    const hole = boxArea(177.02, -17.08, 177.04, -17.06);
    const whole = boxArea(177, -17.1, 177.1, -17);
    const far = boxArea(178, -17.1, 178.1, -17);
    const both: MapArea = {
      parts: [{ outer: whole.parts[0]!.outer, holes: [hole.parts[0]!.outer] }, ...far.parts],
    };
    near(areaHaOf(both), areaHaOf(whole) - areaHaOf(hole) + areaHaOf(far), 1e-12);
  });

  // Invariances: where it lies in longitude, how it was drawn, how longitudes were written.
  test('is the same across the date line, backwards, and with longitudes past 180', () => {
    const here = areaHaOf(boxArea(10, -17.1, 10.2, -17));
    near(areaHaOf(boxArea(179.9, -17.1, -179.9, -17)), here, 1e-9);
    near(areaHaOf(boxArea(179.9, -17.1, 180.1, -17)), here, 1e-9);
    const split: MapArea = {
      parts: [...boxArea(179.9, -17.1, 180, -17).parts, ...boxArea(-180, -17.1, -179.9, -17).parts],
    };
    // Two short edges instead of one long one along the parallel: the geodesic bulges less.
    expect(Math.abs(areaHaOf(split) - here)).toBeLessThan(
      areaSize(boxArea(10, -17.1, 10.2, -17)).edgeErrorHa,
    );
    const { outer } = boxArea(10, -17.1, 10.2, -17).parts[0]!;
    near(areaHaOf(areaOf(outer.toReversed())), here, 1e-12);
    near(areaHaOf(areaOf(outer.slice(0, -1))), here, 1e-12);
  });

  test('is nothing for a ring of fewer than three points, and for none', () => {
    expect(areaHaOf(areaOf(ringOf([177, -17], [177.1, -17])))).toBe(0);
    expect(areaHaOf({ parts: [] })).toBe(0);
    expect(areaHaOf(areaOf([]))).toBe(0);
  });
});

describe('the error of straight lines in degrees', () => {
  // Second algorithm: the same border in small steps. The bound must hold and must not be idle (within a factor of 4).
  test.each([
    {
      name: 'a box of half a degree',
      area: boxArea(177, -18, 177.5, -17.5),
      exactHa: authalicBoxHa(177, -18, 177.5, -17.5),
    },
    {
      name: 'a box of 5 km in the north',
      area: boxArea(10, 60, 10.1, 60.05),
      exactHa: authalicBoxHa(10, 60, 10.1, 60.05),
    },
  ])('is bounded for $name', ({ area, exactHa }) => {
    const { areaHa, edgeErrorHa } = areaSize(area);
    expect(Math.abs(areaHa - exactHa)).toBeLessThan(edgeErrorHa);
  });

  test('is bounded for slanting edges, and the bound is not idle', () => {
    const corners = [
      [177, -18],
      [177.5, -17.9],
      [177.3, -17.4],
    ] as const;
    const steps = 2000;
    const stepped = corners.flatMap((from, i) => {
      const to = corners[(i + 1) % 3]!;
      return Array.from(
        { length: steps },
        (_, k) =>
          [from[0] + ((to[0] - from[0]) * k) / steps, from[1] + ((to[1] - from[1]) * k) / steps] as const,
      );
    });
    const { areaHa, edgeErrorHa } = areaSize(areaOf(ringOf(...corners)));
    const differenceHa = Math.abs(areaHa - areaHaOf(areaOf(ringOf(...stepped))));
    expect(differenceHa).toBeLessThan(edgeErrorHa);
    expect(differenceHa).toBeGreaterThan(edgeErrorHa / 20);
  });

  test('is next to nothing for a drawn border', () => {
    const { areaHa, edgeErrorHa } = areaSize(wavyArea(10_000, { latitudeDeg: -17, longitudeDeg: 180 }, 0.1));
    expect(edgeErrorHa / areaHa).toBeLessThan(1e-6);
  });
});

test('a degree of the equator is 111.3 km, so that the measure of edges is right', () => {
  // Authority: 6378137 m x pi / 180 = 111 319.49 m, by hand.
  near(
    distanceBetweenM({ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 1 }),
    111_319.49,
    1e-7,
  );
});

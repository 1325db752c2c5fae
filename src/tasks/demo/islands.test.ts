import { describe, expect, it } from 'vitest';
import { demoRows } from './demo-rows.ts';
import { isInside, type Patch, patches, positionOf, type Spot, spotOf, zoneOf } from './islands.ts';

const stations = [1, 2, 3].flatMap((seed) => demoRows(seed).stations.map((one) => one.row));

describe('the Lorrin Islands', () => {
  it('have areas that agree with their outlines', () => {
    // Authority: second algorithm, a count of grid points 20 m apart. Tolerance 2 %: the edge of a patch.
    for (const patch of patches) {
      const points = gridSpots(20).filter((spot) => isInside(patch, spot)).length;
      expect(Math.abs((points * 400) / 10_000 / patch.areaHa - 1)).toBeLessThan(0.02);
    }
  });

  it('have patches that never overlap', () => {
    const shared = gridSpots(20).filter(
      (spot) => patches.filter((patch) => isInside(patch, spot)).length > 1,
    );
    expect(shared).toEqual([]);
  });

  it('have a closed zone that cuts across every patch', () => {
    for (const patch of patches) {
      const inside = gridSpots(50).filter((spot) => isInside(patch, spot));
      const closed = inside.filter((spot) => zoneOf(spot) === 'closed').length / inside.length;
      expect(closed).toBeGreaterThan(0.1);
      expect(closed).toBeLessThan(0.6);
    }
  });

  it('turn spots into positions and back within a metre', () => {
    const there = { eastM: 1234, northM: -2345 };
    const back = spotOf(positionOf(there));
    expect(distanceM(there, back)).toBeLessThan(1);
  });
});

describe('the stations', () => {
  it('lie in their patch from the first belt to the last', () => {
    for (const station of stations) {
      const patch = patches.find((one) => one.name === station.stratum) as Patch;
      const start = { latitudeDeg: station.latitudeDeg!, longitudeDeg: station.longitudeDeg! };
      const end = { latitudeDeg: station.endLatitudeDeg!, longitudeDeg: station.endLongitudeDeg! };
      expect([isInside(patch, spotOf(start)), isInside(patch, spotOf(end))]).toEqual([true, true]);
    }
  });

  it('were reached a few metres from the plan, never to the last digit', () => {
    for (const station of stations) {
      const planned = {
        latitudeDeg: station.plannedLatitudeDeg!,
        longitudeDeg: station.plannedLongitudeDeg!,
      };
      const real = { latitudeDeg: station.latitudeDeg!, longitudeDeg: station.longitudeDeg! };
      const offM = distanceM(spotOf(planned), spotOf(real));
      expect(offM).toBeGreaterThan(2);
      expect(offM).toBeLessThan(20);
    }
  });

  it('lie in one zone from the first belt to the last, but for the metres the boat was off', () => {
    for (const { zone, latitudeDeg, longitudeDeg, endLatitudeDeg, endLongitudeDeg } of stations) {
      const start = { latitudeDeg: latitudeDeg!, longitudeDeg: longitudeDeg! };
      const end = { latitudeDeg: endLatitudeDeg!, longitudeDeg: endLongitudeDeg! };
      for (const { eastM, northM } of [start, end].map(spotOf)) {
        // The zone line by hand: through 400 m east of the middle, 0.2 m west for every metre north.
        const eastOfLineM = eastM - 400 + 0.2 * northM;
        if (Math.abs(eastOfLineM) > 25) expect(zone).toBe(eastOfLineM > 0 ? 'closed' : 'open');
      }
    }
  });
});

function gridSpots(stepM: number): Spot[] {
  const spots: Spot[] = [];
  for (let eastM = -3600; eastM <= 3600; eastM += stepM) {
    // Half a step off the corners, which lie on whole tens of metres.
    for (let northM = -2800; northM <= 2800; northM += stepM) {
      spots.push({ eastM: eastM + stepM / 2 + 1, northM: northM + stepM / 2 + 1 });
    }
  }
  return spots;
}

function distanceM(a: Spot, b: Spot): number {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM);
}

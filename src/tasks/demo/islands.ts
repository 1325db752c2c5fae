/**
 * The Lorrin Islands, which do not exist: one atoll of four habitat patches, drawn in metres east and
 * north of a middle point in the open ocean.
 *
 * The middle is 36.5 S 128.0 W: more than 1 000 km from the nearest island (from memory), over deep water,
 * and too far south for any coral reef, so that nobody can take a demo station for a real one.
 */

import type { Stratum } from '../../survey/words.ts';

export const patchNames = ['north flat', 'south flat', 'lagoon seagrass', 'outer terrace'] as const;
export type PatchName = (typeof patchNames)[number];

/** Metres east and north of the middle of the islands. */
export interface Spot {
  readonly eastM: number;
  readonly northM: number;
}

export interface Patch extends Omit<Stratum, 'id' | 'name'> {
  readonly name: PatchName;
  readonly mode: 'snorkel' | 'scuba';
  readonly depthMinM: number;
  readonly depthMaxM: number;
  readonly areaHa: number;
  readonly corners: readonly Spot[];
  /** Names of its western and eastern site. */
  readonly sites: readonly [string, string];
}

const middle = { latitudeDeg: -36.5, longitudeDeg: -128 };
/** Lengths of one degree on the WGS84 ellipsoid at 36.5 degrees (series of the ellipsoid, from memory). */
const metresPerDegree = { north: 110_968.3, east: 89_590.9 };

/** Latitude and longitude in degrees of a spot, to five decimals (about a metre), as a receiver shows it. */
export function positionOf(spot: Spot): { readonly latitudeDeg: number; readonly longitudeDeg: number } {
  return {
    latitudeDeg: toFiveDecimals(middle.latitudeDeg + spot.northM / metresPerDegree.north),
    longitudeDeg: toFiveDecimals(middle.longitudeDeg + spot.eastM / metresPerDegree.east),
  };
}

/** The spot of a position; undoes `positionOf` to within a metre. */
export function spotOf(position: { readonly latitudeDeg: number; readonly longitudeDeg: number }): Spot {
  return {
    eastM: (position.longitudeDeg - middle.longitudeDeg) * metresPerDegree.east,
    northM: (position.latitudeDeg - middle.latitudeDeg) * metresPerDegree.north,
  };
}

/** The closed zone is everything east of a slanted line, so that it cuts all four patches. */
export function zoneOf(spot: Spot): 'closed' | 'open' {
  return spot.eastM > 400 - 0.2 * spot.northM ? 'closed' : 'open';
}

/** Whether a spot lies in a patch: crossings of a line to the east, odd inside. */
export function isInside(patch: Patch, spot: Spot): boolean {
  let inside = false;
  let before = patch.corners[patch.corners.length - 1]!;
  for (const corner of patch.corners) {
    if (corner.northM > spot.northM !== before.northM > spot.northM) {
      const share = (spot.northM - corner.northM) / (before.northM - corner.northM);
      if (spot.eastM < corner.eastM + share * (before.eastM - corner.eastM)) inside = !inside;
    }
    before = corner;
  }
  return inside;
}

export const patches: readonly Patch[] = [
  patch({
    name: 'north flat',
    habitat: 'reef flat',
    mode: 'snorkel',
    depthMinM: 0.5,
    depthMaxM: 3,
    sites: ['Oarlock Flat', 'Pewter Flat'],
    outline:
      '2520 640, 2050 1210, 1340 1630, 470 1850, -470 1850, -1340 1630, -2050 1210, -2520 640, -1880 440, ' +
      '-1530 840, -1000 1130, -350 1280, 350 1280, 1000 1130, 1530 840, 1880 440',
  }),
  patch({
    name: 'south flat',
    habitat: 'reef flat',
    mode: 'snorkel',
    depthMinM: 0.5,
    depthMaxM: 3,
    sites: ['Tinder Flat', 'Sable Flat'],
    outline:
      '-2440 -620, -1940 -1210, -1170 -1630, -230 -1810, 750 -1740, 1610 -1430, 1730 -650, 1240 -1020, ' +
      '570 -1250, -170 -1300, -900 -1160, -1490 -860',
  }),
  patch({
    name: 'lagoon seagrass',
    habitat: 'seagrass',
    mode: 'snorkel',
    depthMinM: 1,
    depthMaxM: 5,
    sites: ['Thimble Bed', 'Marrow Bed'],
    outline:
      '1000 -100, 830 240, 380 490, -250 580, -870 490, -1330 240, -1500 -100, -1330 -440, -880 -690, ' +
      '-250 -780, 380 -690, 830 -440',
  }),
  patch({
    name: 'outer terrace',
    habitat: 'reef terrace',
    mode: 'scuba',
    depthMinM: 8,
    depthMaxM: 18,
    sites: ['Kettle Drop', 'Quill Drop'],
    outline:
      '-590 2520, -1690 2220, -2590 1650, -3180 880, -3380 0, -3180 -880, -2590 -1650, -1690 -2220, ' +
      '-590 -2520, 590 -2520, 1690 -2220, 2590 -1650, 3180 -880, 2730 -720, 2220 -1350, 1450 -1820, ' +
      '500 -2070, -500 -2070, -1450 -1820, -2220 -1350, -2730 -720, -2900 0, -2730 720, -2220 1350, ' +
      '-1450 1820, -500 2070',
  }),
];

function patch(drawn: Omit<Patch, 'areaHa' | 'corners'> & { readonly outline: string }): Patch {
  const { outline, ...rest } = drawn;
  const corners = outline.split(', ').map((pair): Spot => {
    const [eastM, northM] = pair.split(' ').map(Number);
    return { eastM: eastM!, northM: northM! };
  });
  return { ...rest, corners, areaHa: Math.round(areaOf(corners)) };
}

/** Area of a polygon in hectares, by the sum of the triangles from the middle. */
function areaOf(corners: readonly Spot[]): number {
  let twiceM2 = 0;
  let before = corners[corners.length - 1]!;
  for (const corner of corners) {
    twiceM2 += before.eastM * corner.northM - corner.eastM * before.northM;
    before = corner;
  }
  return Math.abs(twiceM2) / 20_000;
}

function toFiveDecimals(degrees: number): number {
  return Math.round(degrees * 100_000) / 100_000;
}

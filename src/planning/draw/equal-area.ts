import type { Position } from '../../survey/map-area.ts';
import { type DrawBox, withinCircle } from './ground.ts';

/**
 * Turns two shares from 0 to 1 into a position of a frame so that equal shares are equal areas on the ellipsoid.
 *
 * Degrees of longitude narrow towards the pole: equal steps in degrees would crowd stations there. Source: the
 * authalic (equal-area) function of latitude on WGS84, Snyder 1987 equation 3-12 (from memory), inverted by bisection.
 */
export function equalAreaPosition(box: DrawBox): (east: number, north: number) => Position {
  const from = areaFunction(box.southDeg);
  const to = areaFunction(box.northDeg);
  return (east, north) => ({
    latitudeDeg: latitudeAt(from + north * (to - from), box),
    longitudeDeg: withinCircle(box.westDeg + east * (box.eastDeg - box.westDeg)),
  });
}

/** Grows with latitude as the area of the ellipsoid south of it does. */
export function areaFunction(latitudeDeg: number): number {
  const e = Math.sqrt(eccentricitySquared);
  const sine = Math.sin((latitudeDeg * Math.PI) / 180);
  return sine / (1 - eccentricitySquared * sine * sine) + Math.atanh(e * sine) / e;
}

function latitudeAt(wanted: number, box: DrawBox): number {
  let low = box.southDeg;
  let high = box.northDeg;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (areaFunction(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const eccentricitySquared = 0.006_694_379_990_14;

import type { Position } from '../../survey/map-area.ts';
import type { UtmPosition } from '../../survey/position-notation.ts';

/** Series in the third flattening n to the fourth order: errors under a thousandth of a millimetre inside a zone. */
const flattening = 1 / 298.257223563;
const n = flattening / (2 - flattening);
const rectifyingRadiusM = (6_378_137 / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64);
const eccentricity = Math.sqrt(flattening * (2 - flattening));
const scale = 0.9996;
const falseEastingM = 500_000;
const southernFalseNorthingM = 10_000_000;

const inverseSeries = [
  n / 2 - (2 / 3) * n ** 2 + (37 / 96) * n ** 3 - n ** 4 / 360,
  n ** 2 / 48 + n ** 3 / 15 - (437 / 1440) * n ** 4,
  (17 / 480) * n ** 3 - (37 / 840) * n ** 4,
  (4397 / 161_280) * n ** 4,
];

/**
 * The position of UTM coordinates (WGS84), in degrees.
 *
 * Source: Krueger 1912 in the form of Karney 2011, Journal of Geodesy 85:475, equations 11 and 35 to 36, from memory;
 * tested against GeographicLib geodesics along the central meridian and by the way back.
 */
export function positionOfUtm(utm: UtmPosition): Position {
  const falseNorthingM = utm.hemisphere === 'S' ? southernFalseNorthingM : 0;
  const xi = (utm.northingM - falseNorthingM) / (scale * rectifyingRadiusM);
  const eta = (utm.eastingM - falseEastingM) / (scale * rectifyingRadiusM);
  let xiSphere = xi;
  let etaSphere = eta;
  inverseSeries.forEach((weight, i) => {
    const order = 2 * (i + 1);
    xiSphere -= weight * Math.sin(order * xi) * Math.cosh(order * eta);
    etaSphere -= weight * Math.cos(order * xi) * Math.sinh(order * eta);
  });
  const eastRadians = Math.atan2(Math.sinh(etaSphere), Math.cos(xiSphere));
  const conformalTangent = Math.sin(xiSphere) / Math.hypot(Math.sinh(etaSphere), Math.cos(xiSphere));
  const longitudeDeg = centralMeridianDeg(utm.zone) + (eastRadians * 180) / Math.PI;
  return { latitudeDeg: (Math.atan(trueTangent(conformalTangent)) * 180) / Math.PI, longitudeDeg };
}

function centralMeridianDeg(zone: number): number {
  return 6 * zone - 183;
}

/** Tangent of the latitude from that of the conformal latitude, by Newton's steps (Karney 2011, equations 19 to 21). */
function trueTangent(conformal: number): number {
  let tangent = conformal;
  for (let step = 0; step < 5; step++) {
    const secant = Math.hypot(1, tangent);
    const sigma = Math.sinh(eccentricity * Math.atanh((eccentricity * tangent) / secant));
    const reached = tangent * Math.hypot(1, sigma) - sigma * secant;
    const curve = 1 - eccentricity ** 2;
    const slope = (1 + curve * tangent ** 2) / (curve * secant);
    tangent += (slope * (conformal - reached)) / Math.hypot(1, reached);
  }
  return tangent;
}

/** A spot on the earth in degrees, north and east positive. */
export interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/**
 * Distance between two positions in metres, for screening: is this place where it should be?
 *
 * Near each other (under 500 km) along the ellipsoid's own radii at the middle latitude, to about one part in
 * ten thousand; farther apart by the haversine on a sphere, to half a percent. Neither is fit for measuring a belt.
 * The shorter way round is taken, so the date line is no obstacle.
 * Source: radii of curvature of the WGS84 ellipsoid and the haversine (textbook formulas, from memory).
 */
export function roughDistanceM(a: Spot, b: Spot): number {
  const northDeg = b.latitudeDeg - a.latitudeDeg;
  const eastDeg = shorterWayDeg(b.longitudeDeg - a.longitudeDeg);
  const middle = inRadians((a.latitudeDeg + b.latitudeDeg) / 2);
  const curved = 1 - eccentricitySquared * Math.sin(middle) ** 2;
  const alongMeridianM = (equatorM * (1 - eccentricitySquared)) / curved ** 1.5;
  const acrossMeridianM = equatorM / Math.sqrt(curved);
  const northM = inRadians(northDeg) * alongMeridianM;
  const eastM = inRadians(eastDeg) * acrossMeridianM * Math.cos(middle);
  const flatM = Math.sqrt(northM ** 2 + eastM ** 2);
  return flatM < 500_000 ? flatM : haversineM(a, b);
}

function haversineM(a: Spot, b: Spot): number {
  const halfNorth = Math.sin(inRadians(b.latitudeDeg - a.latitudeDeg) / 2);
  const halfEast = Math.sin(inRadians(b.longitudeDeg - a.longitudeDeg) / 2);
  const parallels = Math.cos(inRadians(a.latitudeDeg)) * Math.cos(inRadians(b.latitudeDeg));
  const share = halfNorth ** 2 + parallels * halfEast ** 2;
  return 2 * meanRadiusM * Math.asin(Math.min(1, Math.sqrt(share)));
}

function shorterWayDeg(differenceDeg: number): number {
  return differenceDeg - 360 * Math.round(differenceDeg / 360);
}

function inRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

const equatorM = 6_378_137;
const eccentricitySquared = 0.006_694_379_990_14;
const meanRadiusM = 6_371_008.8;

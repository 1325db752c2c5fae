/**
 * From degrees to a sheet of paper: equirectangular, with the longitudes drawn together by the cosine
 * of the middle latitude. Good for the few kilometres of a survey; not for a chart of an ocean.
 */

export interface Point {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

export interface MapSheet {
  readonly height: number;
  readonly unitsPerKm: number;
  /** From the middle of the sheet to its edges. */
  readonly halfEastKm: number;
  readonly halfNorthKm: number;
  /** Kilometres east and north of the middle of the sheet. */
  readonly place: (point: Point) => { readonly eastKm: number; readonly northKm: number };
  /** Latitudes and longitudes at even minutes that cross the sheet. */
  readonly parallelsDeg: readonly number[];
  readonly meridiansDeg: readonly number[];
}

/** Mean Earth radius 6371 km. */
const kmPerDegree = (Math.PI / 180) * 6371;
const smallestSpanDeg = 0.02;
const margin = 0.08;

/** A sheet of the given width that holds all points; its height follows the ground, within limits. */
export function mapSheet(points: readonly Point[], size: { width: number; maximumHeight: number }): MapSheet {
  const middleLongitudeDeg = middleOfLongitudes(points.map((point) => point.longitudeDeg));
  const latitudes = points.map((point) => point.latitudeDeg);
  const eastDeg = points.map((point) => degreesEast(point.longitudeDeg, middleLongitudeDeg));
  const middleLatitudeDeg = (Math.min(...latitudes) + Math.max(...latitudes)) / 2;
  const middleEastDeg = (Math.min(...eastDeg) + Math.max(...eastDeg)) / 2;
  const squeeze = Math.max(0.01, Math.cos((middleLatitudeDeg * Math.PI) / 180));
  const spanNorthDeg = spanOf(latitudes);
  const spanEastDeg = Math.max(spanOf(eastDeg), smallestSpanDeg / squeeze);
  const natural = (size.width * spanNorthDeg) / (spanEastDeg * squeeze);
  const height = Math.min(size.maximumHeight, Math.max(size.width * 0.45, natural));
  const unitsPerDegree = Math.min(size.width / (spanEastDeg * squeeze), height / spanNorthDeg);
  const halfNorthDeg = height / unitsPerDegree / 2;
  const halfEastDeg = size.width / unitsPerDegree / squeeze / 2;
  const middle = middleLongitudeDeg + middleEastDeg;
  return {
    height,
    unitsPerKm: unitsPerDegree / kmPerDegree,
    halfEastKm: halfEastDeg * squeeze * kmPerDegree,
    halfNorthKm: halfNorthDeg * kmPerDegree,
    place: ({ latitudeDeg, longitudeDeg }) => ({
      eastKm: (degreesEast(longitudeDeg, middleLongitudeDeg) - middleEastDeg) * squeeze * kmPerDegree,
      northKm: (latitudeDeg - middleLatitudeDeg) * kmPerDegree,
    }),
    parallelsDeg: evenDegrees(middleLatitudeDeg - halfNorthDeg, middleLatitudeDeg + halfNorthDeg),
    meridiansDeg: evenDegrees(middle - halfEastDeg, middle + halfEastDeg).map(wrapLongitude),
  };
}

function spanOf(values: readonly number[]): number {
  return Math.max(smallestSpanDeg, (Math.max(...values) - Math.min(...values)) * (1 + 2 * margin));
}

/** The middle of the shortest arc that holds all longitudes, so that the date line tears nothing apart. */
export function middleOfLongitudes(longitudesDeg: readonly number[]): number {
  const sorted = longitudesDeg.map((value) => ((value % 360) + 360) % 360).toSorted((a, b) => a - b);
  let widestGap = -1;
  let start = 0;
  for (const [i, value] of sorted.entries()) {
    const next = i + 1 < sorted.length ? sorted[i + 1]! : sorted[0]! + 360;
    if (next - value > widestGap) {
      widestGap = next - value;
      start = next;
    }
  }
  return wrapLongitude(start + (360 - widestGap) / 2);
}

function degreesEast(longitudeDeg: number, fromDeg: number): number {
  return wrapLongitude(longitudeDeg - fromDeg);
}

/** Between -180 (included) and 180. */
function wrapLongitude(degrees: number): number {
  return ((((degrees + 180) % 360) + 360) % 360) - 180;
}

function evenDegrees(low: number, high: number): number[] {
  const wanted = (high - low) / 3;
  const minutes =
    [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1800].find((m) => m / 60 >= wanted) ?? 3600;
  const step = minutes / 60;
  const values: number[] = [];
  for (let i = Math.ceil(low / step); i * step <= high; i++) values.push((i * minutes) / 60);
  return values;
}

/** "12° 30′ S"; tenths of a minute where they are needed. */
export function degreesInWords(degrees: number, kind: 'latitude' | 'longitude'): string {
  const tenths = Math.round(Math.abs(degrees) * 600);
  const whole = Math.floor(tenths / 600);
  const minutes = (tenths % 600) / 10;
  const side = kind === 'latitude' ? (degrees < 0 ? 'S' : 'N') : degrees < 0 ? 'W' : 'E';
  const plain = tenths === 0 || (kind === 'longitude' && whole === 180);
  const text = Number.isInteger(minutes)
    ? String(minutes).padStart(2, '0')
    : minutes.toFixed(1).padStart(4, '0');
  return `${whole}° ${text}′${plain ? '' : ` ${side}`}`;
}

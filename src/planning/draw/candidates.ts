import type { SeededRandom } from '../../maths/random.ts';
import type { Position } from '../../survey/map-area.ts';
import { equalAreaPosition } from './equal-area.ts';
import { type DrawBox, type DrawGround, withinCircle } from './ground.ts';

/** More than this cannot be fought out in seconds, and no boat needs it. */
export const mostCandidates = 50_000;

/**
 * Possible places on a ground: a square grid of the given spacing in metres, with a random start.
 *
 * Rows are at equal steps of latitude and places along a row at equal steps of its own length, so that every place
 * stands for the same area to a part in a thousand. The random start gives every spot of the ground the same chance.
 * Null when the frame alone would hold more than ten times `mostCandidates`, which no loop should walk.
 * Source: common practice.
 */
export function candidateGrid(
  ground: DrawGround,
  spacingM: number,
  random: SeededRandom,
): readonly Position[] | null {
  const { box } = ground;
  if (frameArea(box) / spacingM ** 2 > 10 * mostCandidates) return null;
  const stepDeg = spacingM / metresPerDegree;
  const places: Position[] = [];
  for (let lat = box.southDeg + random.uniform() * stepDeg; lat < box.northDeg; lat += stepDeg) {
    const alongDeg = stepDeg / Math.cos((lat * Math.PI) / 180);
    for (let lon = box.westDeg + random.uniform() * alongDeg; lon < box.eastDeg; lon += alongDeg) {
      const position = { latitudeDeg: lat, longitudeDeg: withinCircle(lon) };
      if (ground.contains(position)) places.push(position);
    }
  }
  return places;
}

/** A spacing in metres that gives about `wanted` places, from the share of the frame that is ground. */
export function spacingFor(ground: DrawGround, wanted: number, random: SeededRandom): number | null {
  const place = equalAreaPosition(ground.box);
  let inside = 0;
  for (let i = 0; i < triesForShare; i++) {
    if (ground.contains(place(random.uniform(), random.uniform()))) inside++;
  }
  return inside === 0 ? null : Math.sqrt((frameArea(ground.box) * inside) / triesForShare / wanted);
}

const triesForShare = 20_000;
const metresPerDegree = 111_200;

function frameArea(box: DrawBox): number {
  const middle = ((box.southDeg + box.northDeg) / 2) * (Math.PI / 180);
  const wide = (box.eastDeg - box.westDeg) * metresPerDegree * Math.cos(middle);
  return wide * (box.northDeg - box.southDeg) * metresPerDegree;
}

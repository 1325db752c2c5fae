/**
 * How long planning takes beside its naive form: `node bench/draw.ts`.
 *
 * 500 stations in two strata whose borders have 20 000 points each, drawn by each method; a precision curve of five
 * species; a report rehearsed for five species. Invented ground, seeded.
 */

import { performance } from 'node:perf_hooks';
import { roughDistanceM } from '../src/maths/distance-on-earth.ts';
import { seededRandom } from '../src/maths/random.ts';
import { candidateGrid, spacingFor } from '../src/planning/draw/candidates.ts';
import type { DrawRequest } from '../src/planning/draw/draw-request.ts';
import { drawStations } from '../src/planning/draw/draw-stations.ts';
import { directionOf } from '../src/planning/draw/ground.ts';
import { inclusionUnderSpacing } from '../src/planning/draw/inclusion-under-spacing.ts';
import { localPivotalDraw } from '../src/planning/draw/local-pivotal.ts';
import { beltsInside } from '../src/planning/ground/belts-inside.ts';
import { groundIndex } from '../src/planning/ground/inside.ts';
import { layBelts } from '../src/planning/ground/lay-belts.ts';
import { layStations } from '../src/planning/ground/lay-stations.ts';
import { rehearseSurvey } from '../src/planning/rehearse/rehearse-survey.ts';
import { precisionCurve } from '../src/planning/size/precision-curve.ts';
import type { MapArea, Position } from '../src/survey/map-area.ts';

const vertices = 20_000;
const strata = [ragged('RF', -17, 178), ragged('LG', -17.4, 178.6)];
const request: DrawRequest = {
  strata: strata.map(({ name, area }) => ({
    ...{ name, ground: groundIndex(area)!, stations: 250, spares: 50 },
    ...{ fixed: [], handPicked: [] },
  })),
  ...{ method: 'acceptance', seed: 1, minimumSpacingM: null, distanceM: roughDistanceM },
};

timed('500 stations, acceptance', () => drawStations(request));
timed('the same, at least 300 m apart', () => drawStations({ ...request, minimumSpacingM: 300 }));
timed('500 stations, pivotal, 2 x 2000 places', () => drawStations({ ...request, method: 'pivotal' }));
timed('500 stations, pivotal, 2 x 20 000 places', () =>
  drawStations({ ...request, method: 'pivotal', candidates: 20_000 }),
);
naiveInside();
naivePivotal();
timed('chances under spacing, 100 redraws of 2 x 20 stations', () =>
  inclusionUnderSpacing(
    {
      ...request,
      minimumSpacingM: 1000,
      strata: request.strata.map((one) => ({ ...one, stations: 20, spares: 0 })),
    },
    { redraws: 100, seed: 1 },
  ),
);
bearings();
const species = Array.from({ length: 5 }, (_, i) => ({
  ...{ species: `species ${i + 1}`, stationCv: 0.8 + 0.3 * i, pilotStations: 12, stationsBefore: null },
}));
timed('precision curve, 5 species, 4 to 200 stations', () =>
  precisionCurve({ species, stations: Array.from({ length: 197 }, (_, i) => i + 4), stationsPerBoatDay: 4 }),
);
for (const interval of ['clumped', 'lognormal'] as const)
  timed(`report rehearsed, 5 species, 2 changes, 200 surveys, ${interval}`, () =>
    rehearseSurvey({
      ...{ interval, seed: 1, surveys: 200 },
      strata: [
        { name: 'RF', areaHa: 420, stations: 12, searchedAreaM2: 240 },
        { name: 'LG', areaHa: 310, stations: 10, searchedAreaM2: 240 },
        { name: 'SL', areaHa: 145, stations: 8, searchedAreaM2: 240 },
      ],
      species: species.map((one, i) => ({
        ...{ species: one.species, densitiesPerHa: [100 / (i + 1), 300 / (i + 1), 20], clumpingK: 0.5 },
        ...{ earlier: { densityPerHa: 150, cv: 0.25, degreesOfFreedom: 15 }, changes: [0.5, 1] },
      })),
    }),
  );

function naiveInside(): void {
  const { area, name } = strata[0]!;
  const places = Array.from({ length: 600 }, (_, i) => ({
    latitudeDeg: -17 + i * 1e-4,
    longitudeDeg: 178 + i * 1e-4,
  }));
  timed(`naive: 600 positions against every point of ${name}`, () =>
    places.filter((place) => crossings(area.parts[0]!.outer, place) % 2 === 1),
  );
}

/** The bearing search of every station, and what it would cost to try every degree, or to ask every point of the border. */
function bearings(): void {
  const series = { transects: 6, lengthM: 40, gapM: 10 };
  const { stations } = drawStations(request).value!;
  const toLay = stations.slice(0, 500).map(({ code, stratum, position }) => ({
    ...{ code, start: position, series, widthM: 2 },
    contains: request.strata.find(({ name }) => name === stratum)!.ground.contains,
  }));
  timed('bearing search, 500 stations, 6 belts of 40 x 2 m', () => layStations(toLay, '2026-12-21'));
  timed('naive: every degree in steps of half a metre, 10 of the 500', () => {
    for (const { start, contains, widthM } of toLay.slice(0, 10))
      for (let bearingDeg = 0; bearingDeg < 360; bearingDeg++)
        beltsInside(layBelts(start, series, [bearingDeg]), 40, { contains, stepM: 0.5, widthM });
  });
  const { outer } = strata[0]!.area.parts[0]!;
  timed('naive: one bearing of one station against every point of the border', () => {
    const contains = (place: Position) => crossings(outer, place) % 2 === 1;
    beltsInside(layBelts(toLay[0]!.start, series, [0]), 40, { contains, stepM: 0.5, widthM: 2 });
  });
}

function naivePivotal(): void {
  const random = seededRandom(1);
  const { ground } = request.strata[0]!;
  const points = candidateGrid(ground, spacingFor(ground, 2000, random)!, random)!.map(directionOf);
  const inclusion = points.map(() => 300 / points.length);
  timed(`one pivotal draw of 300 from ${points.length} places`, () =>
    localPivotalDraw({ points, inclusion }, random),
  );
  // What the duels would cost if every question for the nearest walked the whole list: two questions a duel at least.
  timed('naive: the questions of its duels by walking the list', () => {
    for (let duel = 0; duel < 2 * points.length; duel++) {
      const from = points[random.below(points.length)]!;
      let least = Infinity;
      for (const point of points) {
        const square = point.reduce((total, x, d) => total + (x - from[d]!) ** 2, 0);
        if (square > 0 && square < least) least = square;
      }
    }
  });
}

/** A round reef with a ragged border, about 20 km across. */
function ragged(name: string, latitudeDeg: number, longitudeDeg: number) {
  const random = seededRandom(latitudeDeg * 100);
  const outer = Array.from({ length: vertices }, (_, i): Position => {
    const angle = (2 * Math.PI * i) / vertices;
    const radius = 0.09 + 0.01 * Math.sin(9 * angle) + 0.00001 * random.uniform();
    return {
      latitudeDeg: latitudeDeg + radius * Math.sin(angle),
      longitudeDeg: longitudeDeg + radius * Math.cos(angle),
    };
  });
  const area: MapArea = { parts: [{ outer: [...outer, outer[0]!], holes: [] }] };
  return { name, area };
}

function crossings(ring: readonly Position[], { latitudeDeg, longitudeDeg }: Position): number {
  let count = 0;
  for (let i = 1; i < ring.length; i++) {
    const a = ring[i - 1]!;
    const b = ring[i]!;
    if (a.latitudeDeg > latitudeDeg === b.latitudeDeg > latitudeDeg) continue;
    const share = (latitudeDeg - a.latitudeDeg) / (b.latitudeDeg - a.latitudeDeg);
    if (a.longitudeDeg + share * (b.longitudeDeg - a.longitudeDeg) > longitudeDeg) count++;
  }
  return count;
}

function timed(what: string, work: () => unknown): void {
  const start = performance.now();
  work();
  process.stdout.write(`${(performance.now() - start).toFixed(0).padStart(7)} ms  ${what}\n`);
}

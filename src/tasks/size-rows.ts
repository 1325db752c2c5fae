/** What a number of stations gives one species: rows for a table, points for a picture, transects at a station. */

import { seededRandom } from '../maths/random.ts';
import { splitLike, toldBetween } from '../planning/rehearse/two-surveys.ts';
import { type CurvePoint, precisionCurve } from '../planning/size/precision-curve.ts';
import { transectsPerStation } from '../planning/size/transects-per-station.ts';
import type { SizeRequest, SizeRow, TransectAdvice } from './size-shapes.ts';
import type { SizeSubject } from './size-subject.ts';

/** Round sizes around what matters, eight or so. */
export function sizesShown(
  subjects: readonly SizeSubject[],
  need: number | null,
  reach: number | null,
): readonly number[] {
  const least = 2 * Math.max(...subjects.map((subject) => subject.strata.length));
  const most = Math.max(1.5 * (need ?? 0), 1.5 * (reach ?? 0), 3 * least);
  const shown = roundSizes.filter((n) => n >= least && n <= most);
  const kept = shown.filter((_, i) => i % Math.ceil(shown.length / 7) === 0);
  const all = [...kept, ...[need, reach].filter((n) => n !== null && n >= least)] as number[];
  return [...new Set(all)].sort((a, b) => a - b);
}

const roundSizes = [
  4, 6, 8, 10, 12, 16, 20, 24, 30, 40, 50, 60, 80, 100, 120, 160, 200, 250, 300, 400, 500, 750,
];

export function rowsOf(
  subject: SizeSubject,
  target: number,
  sizes: readonly number[],
  request: SizeRequest,
): readonly SizeRow[] {
  const each = pointsAt(subject, request, sizes, null);
  return pointsAt(subject, request, sizes, subject.pilotStations).map((point, i) => ({
    ...point,
    cost: point.boatDays === null || request.dayCost === null ? null : point.boatDays * request.dayCost,
    fallEach: each[i]!.fallAssured,
    riseEach: each[i]!.riseAssured,
    told: toldAt(subject, point.stations, target, request),
    falseAlarm: toldAt(subject, point.stations, 1, request),
  }));
}

function pointsAt(
  { name, stationCv, pilotWorth }: SizeSubject,
  request: SizeRequest,
  stations: readonly number[],
  stationsBefore: number | null,
): readonly CurvePoint[] {
  const curve = precisionCurve({
    ...{ stations, stationsPerBoatDay: request.stationsPerDay, power: request.power },
    ...{ significance: 1 - request.confidence, assurance: request.assurance },
    species: [{ species: name, stationCv, pilotStations: pilotWorth, stationsBefore }],
  });
  return curve.value ?? [];
}

/** The curve for a picture, from the smallest size to the largest. */
export function curveOf(
  subject: SizeSubject,
  sizes: readonly number[],
  request: SizeRequest,
): readonly CurvePoint[] {
  return pointsAt(subject, request, closeSizes(sizes), subject.pilotStations);
}

/** A hundred sizes at most. */
function closeSizes(sizes: readonly number[]): readonly number[] {
  const [least, most] = [sizes[0]!, sizes.at(-1)!];
  const step = Math.max(1, Math.ceil((most - least) / 100));
  const close = Array.from({ length: Math.floor((most - least) / step) + 1 }, (_, i) => least + i * step);
  return close.at(-1) === most ? close : [...close, most];
}

export function transectAdvice(
  { transects }: SizeSubject,
  { stationCost, transectCost }: SizeRequest,
): TransectAdvice | null {
  if (transects === null || stationCost === null || transectCost === null) return null;
  const now = Math.max(1, Math.round(transects.transects));
  const { varianceBetween, varianceWithin } = transects;
  const advice = transectsPerStation({
    ...{ varianceBetween, varianceWithin, costPerStation: stationCost, costPerTransect: transectCost },
    ...{ budget: stationCost + now * transectCost, transects: [now], mostTransects: 12 },
  }).value;
  if (advice === null) return null;
  const varianceAt = (m: number) => advice.rows.find((row) => row.transects === m)!.varianceOfMean;
  return {
    ...{ now, best: advice.transects, likeness: advice.likenessWithinStations },
    cvNowOverBest: Math.sqrt(varianceAt(now) / varianceAt(advice.transects)),
  };
}

function toldAt(subject: SizeSubject, stations: number, factor: number, request: SizeRequest): number | null {
  if (request.goal !== 'change') return null;
  const { confidence, simulations, seed } = request;
  const { strata, densitiesPerHa, assuredK } = subject;
  const after = splitLike(strata, stations);
  const before = subject.pilotStations === null ? after : strata;
  const species = { densitiesPerHa, clumpingK: assuredK };
  return toldBetween({ before, after, species, factor, confidence, simulations }, seededRandom(seed)).told;
}

import { type MapArea, type MapFinding, mapFinding, type Position } from '../../survey/map-area.ts';
import { commonGround, joinedGround, meanWidthM } from './area-sets.ts';
import { areaHaOf, areaSize } from './area-size.ts';
import { sliverWidthM } from './check-area.ts';
import { exchanged, isPossibleExchanged, middleOf } from './coordinate-order.ts';
import { distanceBetweenM } from './geodesic.ts';
import { doBoxesMeet, groundIndex } from './inside.ts';
import { openRing } from './plane.ts';

interface NamedArea {
  readonly name: string;
  readonly area: MapArea;
}

/** Farther than this from every other stratum, and nearer than `nearM` once exchanged: our own choice. */
const farM = 500_000;
const nearM = 100_000;

/**
 * What strata say about each other: names twice, ground claimed twice, borders drawn twice, one stratum far away.
 * Give only areas that are sound by themselves (`checkArea`). `near` are places known to belong here, such as the harbour.
 */
export function checkAreas(areas: readonly NamedArea[], near: readonly Position[] = []): MapFinding[] {
  const pairs = neighbours(areas);
  return [
    ...repeatedNames(areas),
    ...areas.flatMap((area, i) => checkPlace(area, [...middlesOf(areas.toSpliced(i, 1)), ...near])),
    ...pairs.flatMap(([one, other]) => overlapOf(one, other)),
    ...gapSlivers([...new Set(pairs.flat())]),
  ];
}

function repeatedNames(areas: readonly NamedArea[]): MapFinding[] {
  const names = areas.map(({ name }) => name);
  const twice = new Set(names.filter((name, i) => names.indexOf(name) !== i));
  return [...twice].map((name) => mapFinding('name-repeated', name, { name }));
}

function middlesOf(areas: readonly NamedArea[]): Position[] {
  return areas.map(({ area }) => middleOf(area.parts.flatMap((part) => part.outer)));
}

function checkPlace(one: NamedArea, others: readonly Position[]): MapFinding[] {
  if (others.length === 0) return [];
  const middle = middlesOf([one])[0]!;
  const nearestM = (from: Position) => Math.min(...others.map((other) => distanceBetweenM(from, other)));
  const awayM = nearestM(middle);
  if (awayM <= farM) return [];
  const exchangedM = isPossibleExchanged(middle) ? nearestM(exchanged(middle)) : Number.POSITIVE_INFINITY;
  if (exchangedM > nearM) return [mapFinding('far-from-neighbours', one.name, { awayKm: awayM / 1000 })];
  const points = one.area.parts.reduce((sum, part) => sum + openRing(part.outer).length, 0);
  const distances = { awayKm: awayM / 1000, exchangedKm: exchangedM / 1000 };
  return [mapFinding('swapped-coordinates', one.name, { points, ...distances })];
}

/** Pairs whose frames meet: only they can share ground or a border. */
function neighbours(areas: readonly NamedArea[]): (readonly [NamedArea, NamedArea])[] {
  const boxes = areas.map(({ area }) => groundIndex(area)?.box ?? null);
  return areas.flatMap((one, i) =>
    areas.slice(i + 1).flatMap((other, k) => {
      const [a, b] = [boxes[i], boxes[i + 1 + k]];
      return a && b && doBoxesMeet(a, b) ? [[one, other] as const] : [];
    }),
  );
}

function overlapOf(one: NamedArea, other: NamedArea): MapFinding[] {
  const common = commonGround(one.area, other.area);
  const size = areaSize(common);
  // Below a square metre it is rounding of coordinates along a shared border.
  if (size.areaHa < 0.0001) return [];
  const widthM = meanWidthM(common);
  const code = widthM < sliverWidthM ? 'overlap-sliver' : 'overlap';
  const { areaHa, edgeErrorHa: errorHa } = size;
  return [mapFinding(code, one.name, { other: other.name, areaHa, errorHa, widthM })];
}

/** Thin holes that appear when all strata are joined: neither stratum holds that ground. */
function gapSlivers(areas: readonly NamedArea[]): MapFinding[] {
  if (areas.length < 2) return [];
  const joined = joinedGround(areas.map(({ area }) => area));
  return joined.parts.flatMap((part) =>
    part.holes.flatMap((hole) => {
      const gap: MapArea = { parts: [{ outer: hole, holes: [] }] };
      const widthM = meanWidthM(gap);
      if (widthM >= sliverWidthM) return [];
      return [mapFinding('gap-sliver', null, { areaHa: areaHaOf(gap), widthM, ...hole[0]! })];
    }),
  );
}

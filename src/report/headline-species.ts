/** The species that the first page of a report speaks of. */

import type { ReportAdvice } from './report-advice.ts';

type Found = Pick<ReportAdvice, 'change' | 'changeByZone' | 'trend' | 'status'>;

/** Our own choice: more would not be read. */
const mostNamed = 6;

/**
 * First the species of which a fall or a rise is told, then the largest fall and rise of the estimates over the
 * surveys, since the last one, and within each zone (where five animals or more were seen each time), then those whose density waits for an answer; with neither, the most numerous.
 */
export function headlineSpecies({ change, changeByZone, trend, status }: Found): readonly string[] {
  const changes = change?.answers ?? [];
  const told = [
    ...[...changes, ...changeByZone]
      .filter((one) => one.told !== null && one.told !== 'cannot tell')
      .map((one) => one.species),
    ...trend.filter((one) => one.told === 'falling' || one.told === 'rising').map((one) => one.species),
  ];
  const enough = status.filter(({ density }) => density.animals >= 5).map(({ density }) => density.species);
  const sloping = trend
    .flatMap((one) => (one.trend === null ? [] : [{ species: one.species, by: one.trend.percentPerYear }]))
    .filter(({ species }) => enough.includes(species));
  const moved = changes
    .flatMap(({ species, ratio }) => (ratio === null ? [] : [{ species, by: ratio - 1 }]))
    .filter(({ species }) => enough.includes(species));
  const waiting = status
    .filter(({ density }) => density.densityPerHa === null)
    .map(({ density }) => density.species);
  const numerous = status
    .toSorted((a, b) => (b.density.densityPerHa ?? 0) - (a.density.densityPerHa ?? 0))
    .slice(0, 3)
    .map(({ density }) => density.species);
  const zones = [...new Set(changeByZone.map(({ scope }) => scope.name))];
  const inZones = zones.flatMap((zone) =>
    ends(
      changeByZone.flatMap(({ species, ratio, scope, animals }) =>
        scope.name !== zone || ratio === null || animals.from < 5 || animals.to < 5
          ? []
          : [{ species, by: ratio - 1 }],
      ),
    ),
  );
  const byMove = [...inZones, ...ends(sloping), ...ends(moved)];
  const chosen = [...told, ...waiting, ...(byMove.length === 0 ? numerous : byMove)];
  return [...new Set(chosen)].slice(0, mostNamed);
}

/** The largest fall and the largest rise. */
function ends(moves: readonly { readonly species: string; readonly by: number }[]): string[] {
  const falling = moves.filter(({ by }) => by < 0).toSorted((a, b) => a.by - b.by);
  const rising = moves.filter(({ by }) => by > 0).toSorted((a, b) => b.by - a.by);
  return [falling[0], rising[0]].flatMap((one) => (one === undefined ? [] : [one.species]));
}

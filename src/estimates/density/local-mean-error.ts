import { roughDistanceM, type Spot } from '../../maths/distance-on-earth.ts';
import type { Reason } from '../../survey/message.ts';
import type { StationObservation } from '../../survey/observation.ts';
import { spreadMean } from '../local-mean.ts';
import { stockTotal } from '../totals.ts';
import { type PointEstimate, weightOf } from './point-estimate.ts';
import type { ScopeInHand } from './scopes.ts';

export interface LocalMeanError {
  readonly point: PointEstimate;
  readonly told: Reason;
}

/**
 * The density with its local-mean standard error, for stations that were drawn spread over their ground.
 *
 * Each station is compared with its neighbours instead of with all: what the spread draw caught of the trend over the
 * reef is no longer counted as chance. The density itself does not change. For a whole survey or stratum whose stations
 * all have a position (visited, else planned) and were chosen at random; otherwise the usual error stands, with the
 * reason. That they were drawn spread is the officer's word. Source: see `spreadMean`.
 */
export function withLocalMeanError(scope: ScopeInHand, point: PointEstimate): LocalMeanError {
  const usual = point.density.standardError;
  const parts = scope.parts.filter(({ sample }) => sample.observed.length > 0);
  const observed = parts.flatMap(({ sample }) => sample.observed);
  const refuse = (why: string): LocalMeanError => ({
    point,
    told: { code: 'local-mean-not-possible', parameters: { why } },
  });
  if (scope.scope.by !== 'survey' && scope.scope.by !== 'stratum')
    return refuse('only a survey or a stratum has one');
  if (usual === null) return refuse('no spread is known');
  const without = observed.filter((one) => spotOf(one) === null);
  if (without.length > 0) return refuse(`no position is on record for ${codesOf(without)}`);
  const chosen = observed.filter(({ selection }) => selection !== 'random' && selection !== 'fixed');
  if (chosen.length > 0) return refuse(`not known to be drawn at random: ${codesOf(chosen)}`);
  const spread = spreadMean(
    parts.map((part) => {
      const spots = part.sample.observed.map((one) => spotOf(one)!);
      const distance = (i: number, j: number) => roughDistanceM(spots[i]!, spots[j]!);
      return {
        name: part.sample.stratum.name,
        weight: weightOf(part),
        values: part.sample.valuesPerHa,
        distance,
      };
    }),
  );
  if (spread.standardError === null) return refuse('no spread is known');
  const { standardError, degreesOfFreedom } = spread;
  const density = { ...point.density, standardError, degreesOfFreedom };
  const stock =
    point.stock === null || point.areaHa === null
      ? point.stock
      : stockTotal(density, { areaHa: point.areaHa, areaStandardErrorHa: 0 });
  const simple = spread.strata.filter(({ method }) => method !== 'local mean').map(({ name }) => name);
  const parameters = { usualPerHa: usual, localPerHa: standardError, strata: simple.join(', ') };
  return { point: { ...point, density, stock }, told: { code: 'local-mean-used', parameters } };
}

function spotOf({ station: { record } }: StationObservation): Spot | null {
  const { latitudeDeg, longitudeDeg, plannedLatitudeDeg, plannedLongitudeDeg } = record;
  if (latitudeDeg !== null && longitudeDeg !== null) return { latitudeDeg, longitudeDeg };
  if (plannedLatitudeDeg === null || plannedLongitudeDeg === null) return null;
  return { latitudeDeg: plannedLatitudeDeg, longitudeDeg: plannedLongitudeDeg };
}

function codesOf(some: readonly StationObservation[]): string {
  return some.map(({ station }) => station.record.code).join(', ');
}

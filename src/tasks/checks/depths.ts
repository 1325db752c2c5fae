/** Depths that were written at a station, and ranges with the leeway that tides and gauges ask for. */

import type { StationWithTransects, TransectWithTallies } from '../../survey/observation.ts';

export interface DepthRange {
  readonly depthMinM: number | null;
  readonly depthMaxM: number | null;
}

/**
 * How far a depth lies outside a range, in metres; 0 inside. Ranges are of charts, depths of gauges at some tide:
 * a metre and a half or a tenth of the depth, whichever is more, is let pass (common practice).
 */
export function outsideByM(depthM: number, { depthMinM, depthMaxM }: DepthRange): number {
  if (depthMinM !== null && depthM < depthMinM - leewayM(depthMinM)) return depthMinM - depthM;
  if (depthMaxM !== null && depthM > depthMaxM + leewayM(depthMaxM)) return depthM - depthMaxM;
  return 0;
}

function leewayM(depthM: number): number {
  return Math.max(1.5, 0.1 * depthM);
}

/** The mean of what was written for a belt, else that of its station; null when nobody wrote one. */
export function depthOfBelt({ record }: TransectWithTallies, station: StationWithTransects): number | null {
  const { depthStartM, depthEndM } = record;
  if (depthStartM !== null && depthEndM !== null) return (depthStartM + depthEndM) / 2;
  return depthStartM ?? depthEndM ?? station.record.depthM;
}

/** "8 to 18 m", "down to 18 m", "from 8 m". */
export function rangeInWords({ depthMinM, depthMaxM }: DepthRange): string {
  if (depthMinM === null) return `down to ${depthMaxM} m`;
  return depthMaxM === null ? `from ${depthMinM} m` : `${depthMinM} to ${depthMaxM} m`;
}

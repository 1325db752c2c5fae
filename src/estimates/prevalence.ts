import type { Reason } from '../survey/message.ts';
import type { Interval } from './shapes.ts';
import { logitInterval, type StationsSeen, wilsonInterval } from './share-intervals.ts';
import { weightedRatio } from './weighted-ratio.ts';

export interface PresenceStratum {
  readonly name: string;
  readonly weight: number;
  readonly present: readonly boolean[];
  readonly populationUnits: number | null;
}

export interface PrevalenceEstimate {
  readonly value: number | null;
  readonly standardError: number | null;
  readonly degreesOfFreedom: number | null;
  readonly interval: Interval | null;
  /** 'wilson of all stations' is the fallback over strata where the logit does not exist. */
  readonly method: 'wilson' | 'logit' | 'wilson of all stations' | null;
  readonly stations: number;
  readonly stationsWithSpecies: number;
  readonly reason: Reason | null;
}

/**
 * Prevalence: the share of stations where the species was seen, weighted by stratum, between 0 and 1.
 *
 * One stratum: Wilson's interval. Several: the logit interval of the design. Where that does not exist
 * (seen at every station or at none, or no spread within any stratum) Wilson's interval of the share over
 * all stations together, said in `method`. A lone station leaves share without spread: interval null, with
 * the reason, unless the share is 0 or 1. Throws without strata; null without stations.
 */
export function prevalence(strata: readonly PresenceStratum[], confidence = 0.95): PrevalenceEstimate {
  const stations = strata.reduce((n, stratum) => n + stratum.present.length, 0);
  const stationsWithSpecies = strata.reduce((n, stratum) => n + stratum.present.filter(Boolean).length, 0);
  const empty = strata.filter((stratum) => stratum.present.length === 0);
  if (empty.length > 0) {
    const reason: Reason = { code: 'no-station', parameters: { where: empty.map((s) => s.name).join(', ') } };
    return { ...unknown, stations, stationsWithSpecies, reason };
  }
  const { value, standardError, degreesOfFreedom, reason } = weightedRatio(strata.map(asRatioStratum));
  const share = boundedShare(value!, { positive: stationsWithSpecies, stations });
  const found = { value: share, standardError, degreesOfFreedom, stations, stationsWithSpecies, reason };
  return { ...found, ...chosenInterval(found, strata.length, confidence) };
}

const unknown = {
  value: null,
  standardError: null,
  degreesOfFreedom: null,
  interval: null,
  method: null,
} as const;

/** Rounding of the weights must not turn "all stations" into 0.9999999. */
function boundedShare(share: number, seen: StationsSeen): number {
  if (seen.positive === 0) return 0;
  return seen.positive === seen.stations ? 1 : share;
}

function chosenInterval(
  found: Pick<PrevalenceEstimate, 'standardError' | 'degreesOfFreedom' | 'stations'> & { value: number },
  strata: number,
  confidence: number,
): Pick<PrevalenceEstimate, 'interval' | 'method'> {
  const { value, standardError, degreesOfFreedom, stations } = found;
  const pooled = wilsonInterval({ positive: value * stations, stations }, confidence);
  if (strata === 1) return { interval: pooled, method: 'wilson' };
  if (value === 0 || value === 1 || standardError === 0) {
    return { interval: pooled, method: 'wilson of all stations' };
  }
  if (standardError === null || degreesOfFreedom === null) return { interval: null, method: null };
  return { interval: logitInterval({ value, standardError, degreesOfFreedom }, confidence), method: 'logit' };
}

function asRatioStratum(stratum: PresenceStratum) {
  return {
    name: stratum.name,
    unitWeight: stratum.weight / stratum.present.length,
    numerators: stratum.present.map((present) => (present ? 1 : 0)),
    denominators: stratum.present.map(() => 1),
    populationUnits: stratum.populationUnits,
  };
}

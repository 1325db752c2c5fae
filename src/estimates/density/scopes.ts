/** Which stations an answer is about: the whole survey, a stratum, a site or zone across strata, or one station. */

import type { StationObservation } from '../../survey/observation.ts';
import type { Scope, ScopeKind } from '../answers.ts';
import type { StratumSample } from './stratum-sample.ts';

export interface ScopePart {
  readonly sample: StratumSample;
  /** For each counting station of the stratum: does it belong to the scope? */
  readonly isMember: readonly boolean[];
}

export interface ScopeInHand {
  readonly scope: Scope;
  /** Only strata in which at least one station, counting or not, belongs to the scope. */
  readonly parts: readonly ScopePart[];
  readonly belongs: (observation: StationObservation) => boolean;
}

export function scopesBy(
  by: ScopeKind,
  survey: string,
  samples: readonly StratumSample[],
): readonly ScopeInHand[] {
  if (by === 'survey') return [scopeOf({ by, name: survey }, samples, () => true)];
  const names = new Set<string>();
  for (const sample of samples) for (const one of sample.all) names.add(nameIn(by, one));
  return [...names]
    .sort(byCode)
    .map((name) => scopeOf({ by, name }, samples, (one) => nameIn(by, one) === name));
}

function nameIn(by: Exclude<ScopeKind, 'survey'>, { station }: StationObservation): string {
  if (by === 'stratum') return station.stratum.name;
  if (by === 'station') return station.record.code;
  return station.record[by] ?? `no ${by} given`;
}

function scopeOf(
  scope: Scope,
  samples: readonly StratumSample[],
  belongs: (observation: StationObservation) => boolean,
): ScopeInHand {
  const parts = samples
    .filter((sample) => sample.all.some(belongs))
    .map((sample) => ({ sample, isMember: sample.observed.map(belongs) }));
  return { scope, parts, belongs };
}

function byCode(a: string, b: string): number {
  return a.localeCompare(b, 'en', { numeric: true });
}

/** The part of two surveys that can be compared for one species: common strata, and the stations that speak for them. */

import { roughDistanceM } from '../../maths/distance-on-earth.ts';
import type { Reason } from '../../survey/message.ts';
import { observeSpecies, type StationObservation, type SurveyInHand } from '../../survey/observation.ts';
import type { Species, Station } from '../../survey/words.ts';
import { type StratumSample, stratumSamples } from '../density/stratum-sample.ts';
import { isHandPicked } from './comparability.ts';

/** auto: places marked as fixed in both surveys; yes: every code that stands in both; no: none. */
export type Pairing = 'auto' | 'yes' | 'no';

/** A station that counts, with its variate per hectare. */
export interface ComparedStation {
  readonly observation: StationObservation;
  readonly valuePerHa: number;
  /** The code of a place worked in both surveys, else null. */
  readonly place: string | null;
}

export interface CommonStratum {
  readonly name: string;
  readonly areaHa: number | null;
  readonly from: readonly ComparedStation[];
  readonly to: readonly ComparedStation[];
}

export interface CommonPart {
  readonly strata: readonly CommonStratum[];
  readonly atTheseStations: boolean;
  readonly reason: Reason | null;
  /** Stations of both that wait for an answer. */
  readonly unresolved: readonly StationObservation[];
  readonly cautions: readonly Reason[];
}

/** Farther apart than this, one code is not one place. GPS and drift of the boat are well within; our own choice. */
const samePlaceM = 250;

export function commonPart(
  {
    from,
    to,
    species,
  }: { readonly from: SurveyInHand; readonly to: SurveyInHand; readonly species: Species },
  pairing: Pairing,
): CommonPart {
  const atTheseStations = [from, to].some((survey) => survey.stations.every(isHandPicked));
  const places = samePlaces(from, to, atTheseStations ? 'yes' : pairing);
  const samples = [from, to].map((survey) => samplesOf(survey, species, atTheseStations));
  const unresolved = samples
    .flat()
    .flatMap((sample) => sample.all.filter((one) => one.state === 'unresolved'));
  const names = samples[0]!.map((one) => one.stratum.name);
  const strata = names.flatMap((name) => {
    const [before, after] = samples.map((list) => list.find((one) => one.stratum.name === name));
    if (before === undefined || after === undefined) return [];
    const [a, b] = [before, after].map((sample) => comparedStations(sample, places.matched, atTheseStations));
    if (a!.length === 0 || b!.length === 0) return [];
    return [{ name, areaHa: before.stratum.areaHa, from: a!, to: b! }];
  });
  const leftOut = [...from.stations, ...to.stations].filter(isHandPicked).length;
  const cautions: Reason[] = [];
  if (!atTheseStations && leftOut > 0) {
    cautions.push({ code: 'change-hand-picked-left-out', parameters: { stations: leftOut } });
  }
  if (places.moved.length > 0) {
    const parameters = { stations: places.moved.join(', '), distanceM: samePlaceM };
    cautions.push({ code: 'change-place-moved', parameters });
  }
  const reason = reasonOf(strata, unresolved, atTheseStations);
  return { strata, atTheseStations, reason, unresolved, cautions };
}

function reasonOf(
  strata: readonly CommonStratum[],
  unresolved: readonly StationObservation[],
  atTheseStations: boolean,
): Reason | null {
  if (unresolved.length > 0) {
    const stations = unresolved.map((one) => one.station.record.code).join(', ');
    return {
      code: 'unresolved-stations',
      parameters: { count: unresolved.length, stations, where: 'both surveys' },
    };
  }
  if (strata.length > 0) return null;
  return atTheseStations
    ? { code: 'change-no-common-station', parameters: {} }
    : { code: 'change-no-common-stratum', parameters: { from: '', to: '' } };
}

/** Random and fixed stations speak for the stratum; hand-picked ones only where there is nothing else. */
function samplesOf(
  survey: SurveyInHand,
  species: Species,
  atTheseStations: boolean,
): readonly StratumSample[] {
  const observations = observeSpecies(survey, species);
  const selection = atTheseStations ? 'all' : 'random';
  return stratumSamples(observations, survey.plannedAreaCm2, { estimator: 'auto', selection });
}

function comparedStations(
  sample: StratumSample,
  matched: ReadonlySet<string>,
  onlyMatched: boolean,
): readonly ComparedStation[] {
  return sample.observed.flatMap((observation, i) => {
    const { code } = observation.station.record;
    const place = matched.has(code) ? code : null;
    return onlyMatched && place === null ? [] : [{ observation, valuePerHa: sample.valuesPerHa[i]!, place }];
  });
}

/** Codes that are one place in both surveys, and those that bear one code but lie apart. */
function samePlaces(from: SurveyInHand, to: SurveyInHand, pairing: Pairing) {
  const matched = new Set<string>();
  const moved: string[] = [];
  if (pairing === 'no') return { matched, moved };
  const later = new Map(to.stations.map(({ record, stratum }) => [record.code, { record, stratum }]));
  for (const { record, stratum } of from.stations) {
    const other = later.get(record.code);
    if (other === undefined || other.stratum.id !== stratum.id) continue;
    const isFixed = record.selection === 'fixed' || other.record.selection === 'fixed';
    if (pairing === 'auto' && !isFixed) continue;
    if (isApart(record, other.record)) moved.push(record.code);
    else matched.add(record.code);
  }
  return { matched, moved };
}

function isApart(a: Station, b: Station): boolean {
  const [first, second] = [a, b].map(({ latitudeDeg, longitudeDeg }) =>
    latitudeDeg === null || longitudeDeg === null ? null : { latitudeDeg, longitudeDeg },
  );
  return first != null && second != null && roughDistanceM(first, second) > samePlaceM;
}

import type { Reason } from '../../survey/message.ts';
import { asWideAsByChance } from './as-wide-by-chance.ts';
import { type HillNumbers, hillNumbersAt } from './hill-numbers.ts';
import { type ExpectedSpecies, speciesAmongAnimals, speciesAtStations } from './rarefaction.ts';
import { type UnseenSpecies, unseenSpecies } from './unseen-species.ts';

/** What is compared: the stations of one survey, stratum, zone or site, counts by species in one order. */
export interface RichnessScope {
  readonly name: string;
  /** One row per station that was searched, rows of zeros included. */
  readonly stations: readonly (readonly number[])[];
  /** Searched area of each station in square metres. */
  readonly stationAreasM2: readonly number[];
}

export interface RichnessRow {
  readonly name: string;
  readonly stations: number;
  readonly animals: number;
  readonly stationAreaM2: number;
  /** Species at the common number of stations; null where held. */
  readonly atStations: ExpectedSpecies | null;
  /** Species at the common number of animals; null where held or where some scope has no animal. */
  readonly atAnimals: ExpectedSpecies | null;
  /** Hill numbers at the common number of animals. */
  readonly hill: HillNumbers | null;
  readonly unseen: UnseenSpecies | null;
  /** Species at 1, 2, … stations, up to the common number. */
  readonly accumulation: readonly ExpectedSpecies[];
}

export interface RichnessComparison {
  readonly commonStations: number;
  readonly commonAnimals: number;
  readonly rows: readonly RichnessRow[];
  /** Share of shuffles of the stations that part the scopes as widely; null where held or of one scope. */
  readonly asWideByChance: number | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

/**
 * Numbers of species of several scopes, each at the smallest number of stations and of animals that any of them has.
 *
 * More stations always show more species, so the raw numbers of two scopes are never set side by side. Stations must
 * be of one size for that: the comparison is held when the middle station of one scope searched over a tenth more
 * than that of another (our threshold), unless accepted; single smaller stations are named.
 */
export function compareRichness(scopes: readonly RichnessScope[], accepted: boolean): RichnessComparison {
  const commonStations = Math.min(...scopes.map(({ stations }) => stations.length));
  const commonAnimals = Math.min(...scopes.map(animalsOf));
  const uneven = unevenAreas(scopes);
  const reason = accepted ? null : uneven;
  const rows = scopes.map((scope) => rowOf(scope, commonStations, commonAnimals, reason !== null));
  const cautions = [accepted ? uneven : null, littleEffort(scopes), smallStations(scopes)].filter(
    (one) => one !== null,
  );
  const asWideByChance = reason === null ? asWideAsByChance(scopes.map(({ stations }) => stations)) : null;
  return { commonStations, commonAnimals, rows, asWideByChance, reason, cautions };
}

/** Below this share of the animals of the largest scope the comparison is called small: a threshold of ours. */
const smallShare = 0.2;

/** The scope with the fewest animals sets the effort for all; said where it is a small part of what another has. */
function littleEffort(scopes: readonly RichnessScope[]): Reason | null {
  const byAnimals = scopes.toSorted((a, b) => animalsOf(a) - animalsOf(b));
  const [small, large] = [byAnimals[0], byAnimals.at(-1)];
  if (small === undefined || large === undefined || scopes.length < 2) return null;
  const animals = animalsOf(small);
  const share = animals / animalsOf(large);
  if (!(share < smallShare)) return null;
  const stations = Math.min(...scopes.map((scope) => scope.stations.length));
  return {
    code: 'richness-little-effort',
    parameters: { small: small.name, stations, animals, large: large.name, percent: 100 * share },
  };
}

function rowOf(
  scope: RichnessScope,
  commonStations: number,
  commonAnimals: number,
  held: boolean,
): RichnessRow {
  const { name, stations } = scope;
  const counts = pooled(stations);
  const numbers = held ? [] : Array.from({ length: commonStations }, (_, i) => i + 1);
  const accumulation = numbers.map((some) => speciesAtStations(stations, some)).filter((one) => one !== null);
  return {
    name,
    stations: stations.length,
    animals: animalsOf(scope),
    stationAreaM2: middle(scope.stationAreasM2),
    atStations: accumulation.at(-1) ?? null,
    atAnimals: held ? null : speciesAmongAnimals(counts, commonAnimals),
    hill: held ? null : hillNumbersAt(counts, commonAnimals),
    unseen: unseenSpecies(counts),
    accumulation,
  };
}

function pooled(stations: readonly (readonly number[])[]): readonly number[] {
  return (stations[0] ?? []).map((_, species) => stations.reduce((all, row) => all + row[species]!, 0));
}

function animalsOf({ stations }: RichnessScope): number {
  return pooled(stations).reduce((all, count) => all + count, 0);
}

function unevenAreas(scopes: readonly RichnessScope[]): Reason | null {
  const areas = scopes.map((scope) => ({ name: scope.name, areaM2: middle(scope.stationAreasM2) }));
  const byArea = areas.toSorted((a, b) => a.areaM2 - b.areaM2);
  const small = byArea[0];
  const large = byArea.at(-1);
  if (small === undefined || large === undefined || large.areaM2 <= 1.1 * small.areaM2) return null;
  return {
    code: 'richness-unequal-stations',
    parameters: { small: small.name, smallM2: small.areaM2, large: large.name, largeM2: large.areaM2 },
  };
}

function smallStations(scopes: readonly RichnessScope[]): Reason | null {
  const count = scopes.reduce(
    (all, { stationAreasM2 }) =>
      all + stationAreasM2.filter((one) => one < (2 / 3) * middle(stationAreasM2)).length,
    0,
  );
  return count === 0 ? null : { code: 'richness-small-stations', parameters: { stations: count } };
}

function middle(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const n = sorted.length;
  if (n === 0) return 0;
  return (sorted[Math.floor((n - 1) / 2)]! + sorted[Math.floor(n / 2)]!) / 2;
}

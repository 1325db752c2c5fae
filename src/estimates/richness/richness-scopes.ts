/** From surveys in hand to the scopes whose species are compared, and what had to be left out of them. */

import type { Reason } from '../../survey/message.ts';
import {
  classifyTransect,
  observeSpecies,
  type StationWithTransects,
  type SurveyInHand,
} from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { RichnessScope } from './compare-richness.ts';

export interface RichnessSettings {
  readonly by: 'survey' | 'stratum' | 'zone' | 'site';
  readonly acceptance: { readonly who: string; readonly why: string } | null;
}

export interface ScopesFound {
  /** Species that were looked for on every belt of every scope. */
  readonly species: readonly Species[];
  readonly scopes: readonly RichnessScope[];
  /** Why nothing may be compared; null when it may. */
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

/** Surveys given together are compared with each other; one alone is cut into its strata, zones or sites. */
export function richnessScopes(surveys: readonly SurveyInHand[], settings: RichnessSettings): ScopesFound {
  const timed = surveys.find(({ protocol }) => protocol?.layout === 'timed');
  const accepted = settings.acceptance !== null;
  const where = surveys.map(({ survey }) => survey.name).join(', ');
  const nothing = { species: [], scopes: [], cautions: [] };
  if (timed !== undefined)
    return { ...nothing, reason: { code: 'timed-search', parameters: { survey: timed.survey.name } } };
  const waiting = surveys.flatMap(unresolvedStations);
  const waits: Reason = {
    code: 'unresolved-stations',
    parameters: {
      count: waiting.length,
      stations: waiting.map(({ record }) => record.code).join(', '),
      where,
    },
  };
  if (waiting.length > 0 && !accepted) return { ...nothing, reason: waits };
  const layouts = new Set(
    surveys.map(({ protocol }) => protocol?.layout ?? null).filter((one) => one !== null),
  );
  const [from, to] = [...layouts];
  const methods: Reason | null =
    from === undefined || to === undefined ? null : { code: 'change-other-method', parameters: { from, to } };
  if (methods !== null && !accepted) return { ...nothing, reason: methods };
  const groups = groupsOf(surveys, new Set(waiting), settings.by);
  const { species, dropped } = commonSpecies(surveys, groups);
  const scopes = [...groups].map(([name, stations]) => scopeOf(name, stations, species));
  const empty = scopes.length === 0 || species.length === 0;
  return {
    species,
    scopes: empty ? [] : scopes,
    reason: empty ? { code: 'no-station', parameters: { where } } : null,
    cautions: [
      ...(dropped.length === 0
        ? []
        : [{ code: 'richness-species-dropped' as const, parameters: { species: dropped.join(', ') } }]),
      ...(waiting.length === 0 ? [] : waiting.map((one) => leftOut(one, settings))),
      ...handPicked(groups),
    ],
  };
}

/** A station that no species is known to have been looked for at: blank, and nobody said why. */
function unresolvedStations(inHand: SurveyInHand): readonly StationWithTransects[] {
  const found = new Set<StationWithTransects>();
  for (const species of inHand.targets) {
    for (const one of observeSpecies(inHand, species)) if (one.state === 'unresolved') found.add(one.station);
  }
  return [...found];
}

type Groups = ReadonlyMap<string, readonly StationWithTransects[]>;

function groupsOf(
  surveys: readonly SurveyInHand[],
  waiting: ReadonlySet<StationWithTransects>,
  by: RichnessSettings['by'],
): Groups {
  const groups = new Map<string, StationWithTransects[]>();
  for (const { survey, stations } of surveys) {
    for (const station of stations) {
      const name = {
        survey: survey.name,
        stratum: station.stratum.name,
        zone: station.record.zone,
        site: station.record.site,
      }[by];
      if (name === null || waiting.has(station) || !station.transects.some(wasSearched)) continue;
      const group = groups.get(name);
      if (group === undefined) groups.set(name, [station]);
      else group.push(station);
    }
  }
  return groups;
}

function wasSearched({ status }: StationWithTransects['transects'][number]): boolean {
  return status === 'done' || status === 'partial';
}

function commonSpecies(surveys: readonly SurveyInHand[], groups: Groups) {
  const all = new Map(surveys.flatMap(({ targets }) => targets.map((one) => [one.id, one] as const)));
  const belts = [...groups.values()].flat().flatMap(({ transects }) => transects.filter(wasSearched));
  const isCommon = (one: Species) =>
    surveys.every(({ targets }) => targets.some(({ id }) => id === one.id)) &&
    belts.every((belt) => classifyTransect(belt, one) !== 'not looked for');
  const [species, dropped] = [
    [...all.values()].filter(isCommon),
    [...all.values()].filter((one) => !isCommon(one)),
  ];
  return { species, dropped: dropped.map(({ name }) => name) };
}

function scopeOf(
  name: string,
  stations: readonly StationWithTransects[],
  species: readonly Species[],
): RichnessScope {
  const searched = stations.map(({ transects }) => transects.filter(wasSearched));
  return {
    name,
    stations: searched.map((belts) =>
      species.map(({ id }) => belts.reduce((all, { tallies }) => all + (tallies.get(id)?.count ?? 0), 0)),
    ),
    stationAreasM2: searched.map((belts) => belts.reduce((all, { areaCm2 }) => all + areaCm2, 0) / 1e4),
  };
}

function leftOut({ record }: StationWithTransects, { acceptance }: RichnessSettings): Reason {
  const { who, why } = acceptance ?? { who: '', why: '' };
  return { code: 'left-out-accepted', parameters: { station: record.code, who, why } };
}

function handPicked(groups: Groups): readonly Reason[] {
  const count = [...groups.values()].flat().filter(({ record }) => record.selection === 'hand-picked').length;
  return count === 0 ? [] : [{ code: 'richness-hand-picked', parameters: { stations: count } }];
}

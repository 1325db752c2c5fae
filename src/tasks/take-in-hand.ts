/** Opens one survey of the book with everything an estimate or a check needs. */

import { Failure } from '../survey/failure.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { StationWithTransects, SurveyInHand } from '../survey/observation.ts';
import type { Store, SurveyRows } from '../survey/store.ts';
import { joinStations, surveyOfStations } from '../survey/survey-in-hand.ts';
import type { Protocol, SizeLimit, Species, Stratum, Survey, Target } from '../survey/words.ts';
import { type TargetList, targetsOf } from './targets.ts';

/** The small tables of a book, read once. */
export interface BookWords {
  readonly strata: readonly Stratum[];
  readonly protocols: readonly Protocol[];
  readonly species: readonly Species[];
  readonly surveys: readonly Survey[];
  readonly targets: readonly Target[];
  readonly limits: readonly SizeLimit[];
  /** Species identities seen in each survey, for lists of targets that nobody wrote down. */
  readonly seen: ReadonlyMap<string, ReadonlySet<string>>;
}

export async function readBookWords(store: Store): Promise<BookWords> {
  return {
    strata: await store.all('stratum'),
    protocols: await store.all('protocol'),
    species: await store.all('species'),
    surveys: [...(await store.all('survey'))].sort(bySurveyStart),
    targets: await store.all('target'),
    limits: await store.all('sizeLimit'),
    seen: await store.speciesSeen(),
  };
}

/** The surveys asked for, oldest first; all of them when none is named. Throws a Failure for an unknown name. */
export function surveysAsked(words: BookWords, name: string | null): readonly Survey[] {
  if (words.surveys.length === 0) throw new Failure('no-survey-yet', {});
  if (name === null) return words.surveys;
  const survey = words.surveys.find((one) => one.name === name);
  if (survey !== undefined) return [survey];
  throw unknownName(
    'unknown-survey-name',
    name,
    words.surveys.map((one) => one.name),
  );
}

/** The species asked for by any of its names. Throws a Failure for an unknown name. */
export function speciesAsked(words: BookWords, name: string): Species {
  const wanted = name.trim().toLowerCase();
  const found = words.species.find((one) =>
    [one.name, one.code, one.commonName, one.localName, ...one.aliases].some(
      (n) => n?.toLowerCase() === wanted,
    ),
  );
  if (found !== undefined) return found;
  const known = words.species.flatMap((one) => [one.name, one.commonName].filter((n) => n !== null));
  throw unknownName('unknown-species-name', name, known);
}

function unknownName(
  code: 'unknown-survey-name' | 'unknown-species-name',
  name: string,
  known: readonly string[],
): Failure {
  const nearest = nearestName(name, known);
  return new Failure(code, { name, nearest: nearest ?? '', known: known.slice(0, 12).join(', ') });
}

export interface SurveyOpened {
  readonly inHand: SurveyInHand;
  readonly targetList: TargetList;
}

/** Joins one survey. `lengths` false leaves the lengths on disk: densities do not need them. */
export async function takeInHand(
  store: Store,
  words: BookWords,
  survey: Survey,
  options: { readonly lengths: boolean },
): Promise<SurveyOpened> {
  const rows = await store.surveyRecords(survey.id, options);
  const targetList = targetsOf(words, survey);
  const protocol = words.protocols.find((one) => one.id === survey.protocolId) ?? null;
  const stations = joinedOnce(words.strata, rows);
  return {
    inHand: surveyOfStations({ survey, protocol, targets: targetList.species }, stations),
    targetList,
  };
}

/** Rows that a store gave again are joined already, and what was learned from their stations is known: see `Archive`. */
const joined = new WeakMap<SurveyRows, { readonly strata: string; readonly stations: Stations }>();
type Stations = readonly StationWithTransects[];

/** Joined anew where a stratum has changed: the stations carry its name and area. */
function joinedOnce(strata: readonly Stratum[], rows: SurveyRows): Stations {
  const text = JSON.stringify(strata);
  const before = joined.get(rows);
  if (before?.strata === text) return before.stations;
  const stations = joinStations(strata, rows);
  joined.set(rows, { strata: text, stations });
  return stations;
}

function bySurveyStart(a: Survey, b: Survey): number {
  return compare(a.starts ?? '', b.starts ?? '') || compare(a.name, b.name);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

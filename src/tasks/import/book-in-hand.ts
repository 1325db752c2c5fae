/** What the book already holds that an import has to be compared with, by the names people use. */

import type { Store } from '../../survey/store.ts';
import type { TableRows } from '../../survey/table-rows.ts';
import type { RecordOf, Tally } from '../../survey/words.ts';
import { SpeciesNames } from './species-names.ts';

export class BookInHand {
  readonly strata = new Map<string, RecordOf<'stratum'>>();
  readonly protocols = new Map<string, RecordOf<'protocol'>>();
  readonly species = new Map<string, RecordOf<'species'>>();
  readonly surveys = new Map<string, RecordOf<'survey'>>();
  readonly mappings = new Map<string, RecordOf<'mapping'>>();
  /** By survey identity and station code. */
  readonly stations = new Map<string, RecordOf<'station'>>();
  /** By station identity, transect code and swim. */
  readonly transects = new Map<string, RecordOf<'transect'>>();
  readonly #tallies = new Map<string, Map<string, Tally>>();
  readonly weights = new Map<string, RecordOf<'weight'>>();
  readonly targets = new Map<string, RecordOf<'target'>>();
  readonly limits = new Map<string, RecordOf<'sizeLimit'>>();
  /** Names of strata whose hectares come from a map. */
  readonly mappedStrata = new Set<string>();
  speciesNames = new SpeciesNames([]);

  /** Reads the small tables whole, and stations, transects and tallies of the surveys that the rows name. */
  static async load(store: Store, rows: TableRows): Promise<BookInHand> {
    const book = new BookInHand();
    for (const record of await store.all('stratum')) book.strata.set(record.name, record);
    for (const record of await store.all('protocol')) book.protocols.set(record.name, record);
    for (const record of await store.all('species')) book.species.set(record.name, record);
    for (const record of await store.all('survey')) book.surveys.set(record.name, record);
    for (const record of await store.all('mapping')) book.mappings.set(record.name, record);
    for (const record of await store.all('weight')) book.weights.set(weightKey(record), record);
    for (const record of await store.all('target')) book.targets.set(targetKey(record), record);
    for (const record of await store.all('sizeLimit')) book.limits.set(record.speciesId, record);
    for (const { name, role } of await store.all('mapArea'))
      if (role === 'stratum') book.mappedStrata.add(name);
    for (const name of surveysNamed(rows)) {
      const survey = book.surveys.get(name);
      if (survey !== undefined) await book.#loadSurvey(store, survey.id);
    }
    book.speciesNames = new SpeciesNames([...book.species.values()]);
    return book;
  }

  async #loadSurvey(store: Store, surveyId: string): Promise<void> {
    const { stations, transects, tallies } = await store.surveyRecords(surveyId);
    for (const station of stations) this.stations.set(stationKey(station.surveyId, station.code), station);
    for (const transect of transects) {
      this.transects.set(transectKey(transect.stationId, transect.code, transect.swim), transect);
    }
    for (const tally of tallies) this.talliesOf(tally.transectId).set(tally.speciesId, tally);
  }

  /** The tallies of one transect by species identity. Joined keys would cost more than all the comparing. */
  talliesOf(transectId: string): Map<string, Tally> {
    let tallies = this.#tallies.get(transectId);
    if (tallies === undefined) {
      tallies = new Map();
      this.#tallies.set(transectId, tallies);
    }
    return tallies;
  }
}

/** A separator that no name can hold, because control characters are refused by the readers' schemas. */
const separator = '\u001f';

export const stationKey = (surveyId: string, code: string): string => surveyId + separator + code;
export const transectKey = (stationId: string, code: string, swim: number): string =>
  stationId + separator + code + separator + swim;
export const targetKey = (target: { surveyId: string; speciesId: string }): string =>
  target.surveyId + separator + target.speciesId;
export const weightKey = (weight: Omit<RecordOf<'weight'>, 'id'>): string =>
  [weight.surveyId, weight.stationCode ?? '', weight.speciesId, weight.ordinal].join(separator);

function surveysNamed(rows: TableRows): ReadonlySet<string> {
  const names = new Set<string>();
  for (const { row } of rows.surveys) names.add(row.name);
  for (const { row } of rows.stations) names.add(row.survey);
  for (const { row } of rows.transects) names.add(row.survey);
  for (const { row } of rows.tallies) names.add(row.survey);
  for (const { row } of rows.targets) names.add(row.survey);
  return names;
}

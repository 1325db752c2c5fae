/** The book, or one survey of it, as the rows of the import tables: what was brought in can be taken out again. */

import type { Store } from '../survey/store.ts';
import { compareCodes } from '../survey/survey-in-hand.ts';
import type {
  Placed,
  StationRow,
  TableRows,
  TallyRow,
  TransectRow,
  WeightRow,
} from '../survey/table-rows.ts';
import type { Species, Station, Stratum, Survey, Tally, Transect, Weight } from '../survey/words.ts';
import { type BookWords, readBookWords, surveysAsked } from './take-in-hand.ts';

/** Rows sorted by the names people use, so that the same data give the same files on every machine. */
export async function bookRows(store: Store, survey: string | null): Promise<TableRows> {
  const words = await readBookWords(store);
  const surveys = surveysAsked(words, survey);
  const names = new Names(words);
  const stations: StationRow[] = [];
  const transects: TransectRow[] = [];
  const tallies: TallyRow[] = [];
  for (const one of surveys) {
    const rows = await store.surveyRecords(one.id, { lengths: true });
    const stationById = new Map(rows.stations.map((station) => [station.id, station]));
    const transectById = new Map(rows.transects.map((transect) => [transect.id, transect]));
    stations.push(...rows.stations.toSorted(byCode).map((station) => stationRow(station, one, names)));
    const transectRows = rows.transects.map((transect) =>
      transectRow(transect, stationById.get(transect.stationId)!, one),
    );
    transects.push(...transectRows.sort(byTransect));
    for (const tally of rows.tallies) {
      const transect = transectById.get(tally.transectId)!;
      tallies.push(tallyRow(tally, transect, stationById.get(transect.stationId)!, one, names));
    }
  }
  return placed({
    ...wordRows(words, surveys, names),
    stations,
    transects,
    tallies: tallies.sort((a, b) => byTransect(a, b) || compareText(a.species, b.species)),
    weights: weightRows(await store.all('weight'), surveys, names),
  });
}

/** Names for identities. */
class Names {
  readonly species: ReadonlyMap<string, Species>;
  readonly strata: ReadonlyMap<string, Stratum>;
  readonly surveys: ReadonlyMap<string, Survey>;
  readonly protocols: ReadonlyMap<string, string>;

  constructor(words: BookWords) {
    this.species = new Map(words.species.map((one) => [one.id, one]));
    this.strata = new Map(words.strata.map((one) => [one.id, one]));
    this.surveys = new Map(words.surveys.map((one) => [one.id, one]));
    this.protocols = new Map(words.protocols.map((one) => [one.id, one.name]));
  }
}

type Rows = { readonly [Table in keyof TableRows]: readonly TableRows[Table][number]['row'][] };

function wordRows(words: BookWords, surveys: readonly Survey[], names: Names) {
  const asked = new Set(surveys.map((one) => one.id));
  return {
    strata: words.strata.map(withoutId).sort(byName),
    protocols: words.protocols.map(withoutId).sort(byName),
    species: words.species.map(withoutId).sort(byName),
    surveys: surveys.map(({ id: _, protocolId, ...survey }) => ({
      ...survey,
      protocol: protocolId === null ? null : names.protocols.get(protocolId)!,
    })),
    targets: words.targets
      .filter((one) => asked.has(one.surveyId))
      .map((one) => ({
        survey: names.surveys.get(one.surveyId)!.name,
        species: names.species.get(one.speciesId)!.name,
      }))
      .sort((a, b) => compareText(a.survey, b.survey) || compareText(a.species, b.species)),
    limits: words.limits
      .map(({ id: _, speciesId, ...limit }) => ({ ...limit, species: names.species.get(speciesId)!.name }))
      .sort((a, b) => compareText(a.species, b.species)),
  };
}

function stationRow(station: Station, survey: Survey, names: Names): StationRow {
  const { id: _, surveyId: __, stratumId, ...fields } = station;
  return { ...fields, survey: survey.name, stratum: names.strata.get(stratumId)!.name };
}

function transectRow(transect: Transect, station: Station, survey: Survey): TransectRow {
  const { id: _, stationId: __, code, ...fields } = transect;
  return { ...fields, survey: survey.name, station: station.code, transect: code };
}

function tallyRow(
  tally: Tally,
  transect: Transect,
  station: Station,
  survey: Survey,
  names: Names,
): TallyRow {
  return {
    survey: survey.name,
    station: station.code,
    transect: transect.code,
    swim: transect.swim,
    species: names.species.get(tally.speciesId)!.name,
    count: tally.count,
    lengths: tally.lengths,
  };
}

function weightRows(weights: readonly Weight[], surveys: readonly Survey[], names: Names): WeightRow[] {
  const asked = new Set(surveys.map((one) => one.id));
  return weights
    .filter((one) => asked.has(one.surveyId))
    .toSorted((a, b) => compareText(a.surveyId, b.surveyId) || a.ordinal - b.ordinal)
    .map(({ id: _, surveyId, stationCode, speciesId, ordinal: __, ...measured }) => ({
      ...measured,
      survey: names.surveys.get(surveyId)!.name,
      station: stationCode,
      species: names.species.get(speciesId)!.name,
    }))
    .sort(
      (a, b) =>
        compareText(a.survey, b.survey) ||
        compareText(a.station ?? '', b.station ?? '') ||
        compareText(a.species, b.species),
    );
}

function placed(rows: Rows): TableRows {
  const withPlace = <Row>(list: readonly Row[]): Placed<Row>[] => list.map((row) => ({ row, place: {} }));
  return {
    strata: withPlace(rows.strata),
    protocols: withPlace(rows.protocols),
    surveys: withPlace(rows.surveys),
    stations: withPlace(rows.stations),
    transects: withPlace(rows.transects),
    tallies: withPlace(rows.tallies),
    species: withPlace(rows.species),
    weights: withPlace(rows.weights),
    targets: withPlace(rows.targets),
    limits: withPlace(rows.limits),
  };
}

function withoutId<Record extends { readonly id: string }>({ id: _, ...fields }: Record): Omit<Record, 'id'> {
  return fields;
}

function byTransect(a: TransectRow | TallyRow, b: TransectRow | TallyRow): number {
  return compareCodes(a.station, b.station) || compareCodes(a.transect, b.transect) || a.swim - b.swim;
}

function byCode(a: Station, b: Station): number {
  return compareCodes(a.code, b.code);
}

function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return compareText(a.name, b.name);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

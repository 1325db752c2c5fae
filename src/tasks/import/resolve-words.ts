/** Strata, protocols, species, surveys and size limits: the words that the other tables refer to. */

import { checkTypedArea } from '../../planning/ground/typed-area.ts';
import type { Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { protocolPresets } from '../../survey/protocol-presets.ts';
import { speciesByName } from '../../survey/species-by-name.ts';
import type { Placed, StratumRow, TableRows } from '../../survey/table-rows.ts';
import type { RecordOf, Species } from '../../survey/words.ts';
import { mapProblems } from '../maps/map-problems.ts';
import type { BookInHand } from './book-in-hand.ts';
import type { Changes } from './changes.ts';

export function resolveWords(rows: TableRows, book: BookInHand, changes: Changes, problems: Problem[]): void {
  for (const placed of rows.strata) keepStratum(placed, book, changes, problems);
  for (const { row } of rows.protocols) changes.keep('protocol', book.protocols, row.name, row);
  for (const { row } of rows.species) {
    book.speciesNames.add(changes.keep('species', book.species, row.name, row));
  }
  resolveSurveys(rows, book, changes, problems);
  makeSpeciesFromCounts(rows, book, changes, problems);
}

/**
 * A stratum with a map keeps the hectares of the map: a typed number never takes their place. One that differs by more
 * than rounding is told, one that differs by more than two maps of one reef is asked about.
 */
function keepStratum(
  { row, place }: Placed<StratumRow>,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): void {
  const mapHa = book.mappedStrata.has(row.name) ? (book.strata.get(row.name)?.areaHa ?? null) : null;
  changes.keep('stratum', book.strata, row.name, mapHa === null ? row : { ...row, areaHa: mapHa });
  const typedHa = row.areaHa;
  if (mapHa === null || typedHa === null || Math.abs(typedHa / mapHa - 1) <= roundingShare) return;
  const asked = mapProblems(checkTypedArea({ name: row.name, typedHa, mapHa }), null);
  if (asked.length > 0) problems.push(...asked.map((problem) => ({ ...problem, place })));
  else
    problems.push(problemOf('area-from-map', place, { parameters: { stratum: row.name, typedHa, mapHa } }));
}

/** Hectares are typed to three figures; our own choice. */
const roundingShare = 0.005;

function resolveSurveys(rows: TableRows, book: BookInHand, changes: Changes, problems: Problem[]): void {
  for (const { row, place } of rows.surveys) {
    const { protocol, ...fields } = row;
    const known =
      protocol === null
        ? null
        : (book.protocols.get(protocol) ?? makeProtocol(protocol, rows, book, changes));
    if (known === undefined) {
      problems.push(
        problemOf('unknown-protocol', place, { value: protocol, parameters: { survey: row.name } }),
      );
      continue;
    }
    changes.keep('survey', book.surveys, row.name, { ...fields, protocolId: known?.id ?? null });
  }
  makeSurveysFromStations(rows, book, changes, problems);
}

/** A protocol that no table describes is made from its name; a name of one of our presets brings its layout. */
function makeProtocol(
  name: string,
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
): RecordOf<'protocol'> | undefined {
  if (rows.protocols.length > 0) return undefined;
  const preset = protocolPresets.find((one) => one.name === name);
  return changes.keep('protocol', book.protocols, name, preset ?? { ...nothingSaid, name }, false);
}

const nothingSaid = {
  layout: null,
  transectsPerStation: null,
  lengthM: null,
  widthM: null,
  gapM: null,
  measureFirst: null,
  lengthUnit: null,
} as const;

/** Without a surveys table the codes in the stations make the surveys; with one, an unlisted code is a slip. */
function makeSurveysFromStations(
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): void {
  const asked = new Set<string>();
  for (const { row, place } of rows.stations) {
    if (book.surveys.has(row.survey) || asked.has(row.survey)) continue;
    if (rows.surveys.length > 0) {
      asked.add(row.survey);
      problems.push(
        problemOf('unknown-survey', place, { value: row.survey, parameters: { survey: row.survey } }),
      );
      continue;
    }
    const survey = { name: row.survey, protocolId: null, starts: null, ends: null, purpose: null };
    changes.keep('survey', book.surveys, row.survey, survey, false);
  }
}

/** With a species list an unlisted name is a stop; without one the names in the counts make the species. */
function makeSpeciesFromCounts(
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): void {
  const listed = rows.species.length > 0 || [...book.species.values()].some(isDescribed);
  const asked = new Set<string>();
  const speciesRows = [rows.tallies, rows.targets, rows.weights, rows.limits].flat();
  for (const { row, place } of speciesRows) {
    const name = row.species;
    if (asked.has(name) || book.speciesNames.find(name) !== undefined) continue;
    asked.add(name);
    const nearest = book.speciesNames.nearest(name);
    if (listed) {
      problems.push(
        problemOf('unknown-species', { ...place, species: name }, { value: name, suggestion: nearest }),
      );
      continue;
    }
    if (nearest !== null) {
      problems.push(
        problemOf('species-spelling', { ...place, species: name }, { value: name, suggestion: nearest }),
      );
    }
    book.speciesNames.add(changes.keep('species', book.species, name, speciesByName(name), false));
  }
}

/** A species that somebody described came from a species table. */
function isDescribed(species: Species): boolean {
  return [species.group, species.code, species.commonName, species.localName].some((text) => text !== null);
}

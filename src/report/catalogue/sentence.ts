/**
 * The one place where a code becomes a sentence. English now; a language is one more catalogue of the
 * same shape, and a missing sentence does not compile.
 */

import type { FailureCode } from '../../survey/failure.ts';
import type { Parameters, Place, Problem, Reason } from '../../survey/message.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import type { ReasonCode } from '../../survey/reason-codes.ts';
import { formatShort, formatSignificant } from '../numbers.ts';
import { failures } from './failures.ts';
import { fillSentence, slotsOf } from './fill.ts';
import { problemsChecks } from './problems-checks.ts';
import { problemsMapping } from './problems-mapping.ts';
import { problemsReading } from './problems-reading.ts';
import { problemsRows } from './problems-rows.ts';
import { problemsSurvey } from './problems-survey.ts';
import { holdsInWords, reasons } from './reasons.ts';

export type Language = 'en';

const problemSentences: Readonly<Record<ProblemCode, string>> = {
  ...problemsReading,
  ...problemsRows,
  ...problemsSurvey,
  ...problemsMapping,
  ...problemsChecks,
};

interface Catalogue {
  readonly problems: Readonly<Record<ProblemCode, string>>;
  readonly reasons: Readonly<Record<ReasonCode, string>>;
  readonly failures: Readonly<Record<FailureCode, string>>;
  /** What an answer can be held for, in words, by the code of the hold. */
  readonly holds: Readonly<Partial<Record<string, string>>>;
}

const catalogues: Readonly<Record<Language, Catalogue>> = {
  en: { problems: problemSentences, reasons, failures, holds: holdsInWords },
};

/** A problem, with where it stands, or a reason, as a person reads it. */
export function sentence(language: Language, message: Problem | Reason): string {
  if (!('severity' in message)) {
    return fillSentence(catalogues[language].reasons[message.code], reasonWords(language, message));
  }
  const { column: _, ...withoutColumn } = message.place;
  const saysColumn = slotsOf(problemTemplate(language, message.code)).includes('column');
  const where = placeInWords(saysColumn ? withoutColumn : message.place);
  const what = problemWithoutPlace(language, message);
  return where === '' ? what : `${where}: ${what}`;
}

/** The sentence of a problem with its slots, for the handbook's list of every problem. */
export function problemTemplate(language: Language, code: ProblemCode): string {
  return catalogues[language].problems[code];
}

/** A failure, as the command line and the screens say it. */
export function failureSentence(
  language: Language,
  failure: { readonly code: FailureCode; readonly parameters: Parameters },
): string {
  return fillSentence(catalogues[language].failures[failure.code], inWords(failure.parameters));
}

/** A problem where its place stands in a column of its own. */
export function problemWithoutPlace(language: Language, problem: Problem): string {
  return fillSentence(catalogues[language].problems[problem.code], {
    ...inWords(placeParameters(problem.place)),
    ...inWords(problem.parameters),
    ...inWords(present({ value: problem.value, suggestion: problem.suggestion })),
  });
}

/** "counts.csv, row 12, column count, North 2026, station S7, transect 3", as much of it as is known. */
function placeInWords(place: Place): string {
  const file = [place.file, place.sheet && `sheet ${place.sheet}`, place.row && `row ${place.row}`];
  const column = place.column !== undefined && place.row !== undefined ? `column ${place.column}` : undefined;
  const survey = [
    place.survey,
    place.station && `station ${place.station}`,
    place.transect && `transect ${place.transect}`,
    place.swim !== undefined && place.swim > 1 && `swim ${place.swim}`,
  ];
  // Both: the row finds the cell, the station finds the sheet of paper.
  const words = [...file, column, ...survey, place.species];
  return words.filter((word) => typeof word === 'string' && word !== '').join(', ');
}

function reasonWords(language: Language, { code, parameters }: Reason): Record<string, string> {
  const words = { ...inWords(parameters), ...(code === 'zero-bound' ? boundsInWords(parameters) : {}) };
  const held = words.held === undefined ? undefined : catalogues[language].holds[words.held];
  return held === undefined ? words : { ...words, held };
}

/** Bounds to two digits: a third would claim to know how animals clump that nobody saw. */
function boundsInWords({ scatteredPerHa, clumpedPerHa }: Parameters): Record<string, string> {
  const words: Record<string, string> = {};
  if (typeof scatteredPerHa === 'number') words.scatteredPerHa = formatSignificant(scatteredPerHa, 2);
  if (typeof clumpedPerHa === 'number') words.clumpedPerHa = formatSignificant(clumpedPerHa, 2);
  return words;
}

function placeParameters(place: Place): Record<string, string | number> {
  const { row, swim, ...rest } = place;
  return {
    ...present(rest),
    ...(row === undefined ? {} : { row: String(row) }),
    ...(swim === undefined ? {} : { swim: String(swim) }),
  };
}

function inWords(parameters: Readonly<Record<string, string | number>>): Record<string, string> {
  const words: Record<string, string> = {};
  for (const [name, value] of Object.entries(parameters)) {
    if (value === '') continue; // an empty parameter is one that nobody could fill
    if (typeof value === 'string') words[name] = value;
    else if (Number.isFinite(value)) words[name] = formatShort(value);
  }
  return words;
}

function present(
  values: Readonly<Record<string, string | number | null | undefined>>,
): Record<string, string | number> {
  const kept: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(values)) {
    if (value !== null && value !== undefined && value !== '') kept[name] = value;
  }
  return kept;
}

/**
 * The one place where a code becomes a sentence, in English or French. A language is one more catalogue
 * of the same shape (french/), and a missing sentence does not compile.
 */

import type { FailureCode } from '../../survey/failure.ts';
import type { Parameters, Place, Problem, Reason } from '../../survey/message.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import type { ReasonCode } from '../../survey/reason-codes.ts';
import { formatSignificant } from '../numbers.ts';
import { englishProblems } from './english-problems.ts';
import { failures } from './failures.ts';
import { fillSentence, slotsOf } from './fill.ts';
import { french } from './french/index.ts';
import { frenchProblems } from './french/problems.ts';
import type { Language } from './language.ts';
import { type ProblemCatalogue, problemSentence, slotsInWords } from './problem-sentence.ts';
import { holdsInWords, reasons } from './reasons.ts';
import { reasonsOnPaper } from './reasons-on-paper.ts';

export type { Language } from './language.ts';

interface Catalogue {
  readonly reasons: Readonly<Record<ReasonCode, string>>;
  readonly onPaper: Readonly<Partial<Record<ReasonCode, string>>>;
  readonly failures: Readonly<Record<FailureCode, string>>;
  /** What an answer can be held for, in words, by the code of the hold. */
  readonly holds: Readonly<Partial<Record<string, string>>>;
}

const catalogues: Readonly<Record<Language, Catalogue>> = {
  en: { reasons, onPaper: reasonsOnPaper, failures, holds: holdsInWords },
  fr: french,
};

const problemCatalogues: Readonly<Record<Language, ProblemCatalogue>> = {
  en: englishProblems,
  fr: frenchProblems,
};

/** A problem, with where it stands, or a reason, as a person reads it. */
export function sentence(language: Language, message: Problem | Reason): string {
  if (!('severity' in message)) {
    return filled(language, catalogues[language].reasons[message.code], reasonWords(language, message));
  }
  const { column: _, ...withoutColumn } = message.place;
  const saysColumn = slotsOf(problemTemplate(language, message.code)).includes('column');
  const where = placeInWords(language, saysColumn ? withoutColumn : message.place);
  const what = problemWithoutPlace(language, message);
  return where === '' ? what : `${where}${language === 'fr' ? '\u00a0' : ''}: ${what}`;
}

/** A reason as a printed report says it: without the commands that the officer at the keyboard is told. */
export function sentenceOnPaper(language: Language, reason: Reason): string {
  const { onPaper, reasons: spoken } = catalogues[language];
  return filled(language, onPaper[reason.code] ?? spoken[reason.code], reasonWords(language, reason));
}

/** The sentence of a problem with its slots, for the handbook's list of every problem. */
export function problemTemplate(language: Language, code: ProblemCode): string {
  return problemCatalogues[language].problems[code];
}

/** A failure, as the command line and the screens say it. */
export function failureSentence(
  language: Language,
  failure: { readonly code: FailureCode; readonly parameters: Parameters },
): string {
  const words = slotsInWords(problemCatalogues[language], failure.code, failure.parameters);
  return filled(language, catalogues[language].failures[failure.code], words);
}

/** A problem where its place stands in a column of its own. */
export function problemWithoutPlace(language: Language, problem: Problem): string {
  return problemSentence(problemCatalogues[language], problem);
}

function filled(language: Language, template: string, words: Readonly<Record<string, string>>): string {
  return fillSentence(template, words, problemCatalogues[language].notGiven);
}

/** "counts.csv, row 12, column count, North 2026, station S7, transect 3", as much of it as is known. */
function placeInWords(language: Language, place: Place): string {
  const words = placeWords[language];
  const file = [
    place.file,
    place.sheet && `${words.sheet} ${place.sheet}`,
    place.row && `${words.row} ${place.row}`,
  ];
  const column =
    place.column !== undefined && place.row !== undefined ? `${words.column} ${place.column}` : undefined;
  const survey = [
    place.survey,
    place.station && `${words.station} ${place.station}`,
    place.transect && `${words.transect} ${place.transect}`,
    place.swim !== undefined && place.swim > 1 && `${words.swim} ${place.swim}`,
  ];
  // Both: the row finds the cell, the station finds the sheet of paper.
  const said = [...file, column, ...survey, place.species];
  return said.filter((word) => typeof word === 'string' && word !== '').join(', ');
}

const placeWords = {
  en: {
    sheet: 'sheet',
    row: 'row',
    column: 'column',
    station: 'station',
    transect: 'transect',
    swim: 'swim',
  },
  fr: {
    sheet: 'feuille',
    row: 'ligne',
    column: 'colonne',
    station: 'station',
    transect: 'bande',
    swim: 'passage',
  },
} as const satisfies Record<Language, object>;

function reasonWords(language: Language, { code, parameters }: Reason): Record<string, string> {
  const bounds = code === 'zero-bound' ? boundsInWords(language, parameters) : {};
  const words = { ...slotsInWords(problemCatalogues[language], code, parameters), ...bounds };
  const held = words.held === undefined ? undefined : catalogues[language].holds[words.held];
  return held === undefined ? words : { ...words, held };
}

/** Bounds to two digits: a third would claim to know how animals clump that nobody saw. */
function boundsInWords(
  language: Language,
  { scatteredPerHa, clumpedPerHa }: Parameters,
): Record<string, string> {
  const words: Record<string, string> = {};
  if (typeof scatteredPerHa === 'number')
    words.scatteredPerHa = formatSignificant(scatteredPerHa, 2, language);
  if (typeof clumpedPerHa === 'number') words.clumpedPerHa = formatSignificant(clumpedPerHa, 2, language);
  return words;
}

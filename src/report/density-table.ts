/** The table of densities: every figure with its stations, its spread and how its interval was made. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import { intervalNames } from './catalogue/method-words.ts';
import { type Language, sentenceOnPaper } from './catalogue/sentence.ts';
import { densityNotes, isStarred } from './density-notes.ts';
import { stationsInWords } from './density-words.ts';
import { list } from './html.ts';
import { htmlTable } from './html-table.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from './numbers.ts';

export interface DensityTableWords {
  readonly caption: string;
  /** Head of the first column: "Species" or "Stratum". */
  readonly head: string;
  readonly label: (answer: DensityAnswer) => string;
  readonly speciesLabel: (answer: DensityAnswer) => string;
  /** Rows stand together under the name of their species. */
  readonly bySpecies: boolean;
  readonly confidence: number;
  readonly language: Language;
}

/** The table and, below it, every reason and caution that belongs to one of its rows, each said once. */
export function densityTable(answers: readonly DensityAnswer[], words: DensityTableWords): string {
  const { language } = words;
  const phrases = densityPhrases(language);
  const { heads } = phrases;
  const methodCell = (row: DensityAnswer) =>
    row.intervalMethod === null ? '–' : intervalNames(language)[row.intervalMethod];
  const methods = [...new Set(answers.filter((row) => row.intervalMethod !== null).map(methodCell))];
  const oneMethod = methods.length === 1 ? methods[0]! : null;
  const columns = [
    { head: words.head, cell: words.label },
    {
      head: heads.foundAt,
      cell: (row: DensityAnswer) => stationsInWords(row, language),
      number: true,
    },
    { head: heads.animals, cell: (row: DensityAnswer) => formatCount(row.animals), number: true },
    { head: heads.searched, cell: (row: DensityAnswer) => formatCount(row.searchedAreaM2), number: true },
    { head: heads.density, cell: (row: DensityAnswer) => densityCell(row, words), number: true },
    { head: heads.error, cell: (row: DensityAnswer) => errorCell(row, words), number: true },
    {
      head: heads.interval(formatShare(words.confidence)),
      cell: (row: DensityAnswer) => intervalCell(row, words),
      number: true,
    },
    ...(oneMethod === null ? [{ head: heads.method, cell: methodCell }] : []),
    { head: heads.stock, cell: (row: DensityAnswer) => stockCell(row, words), number: true },
  ];
  const table = htmlTable(columns, answers, {
    caption: oneMethod === null ? words.caption : phrases.intervalsBy(words.caption, oneMethod),
    across: (row) => (row.densityPerHa === null ? reasonOf(row, words.language) : null),
    acrossFrom: 4,
    ...(words.bySpecies ? { group: words.speciesLabel } : {}),
  });
  const notes = densityNotes(answers, words);
  return notes.length === 0 ? table : `${table}<div class="quiet notes">${list(notes)}</div>`;
}

function reasonOf(row: DensityAnswer, language: Language): string {
  return row.reason === null ? densityPhrases(language).noAnswer : sentenceOnPaper(language, row.reason);
}

type Read = Pick<DensityTableWords, 'language'>;

function densityCell(row: DensityAnswer, { language }: Read): string {
  return row.densityPerHa === 0
    ? densityPhrases(language).notRecorded
    : formatSignificant(row.densityPerHa ?? 0, 3, language);
}

function errorCell(row: DensityAnswer, { language }: Read): string {
  if (row.densityPerHa === 0) return '–';
  return row.standardErrorPerHa === null
    ? densityPhrases(language).unknown
    : formatSignificant(row.standardErrorPerHa, 2, language);
}

function intervalCell(row: DensityAnswer, { language }: Read): string {
  const phrases = densityPhrases(language);
  if (row.intervalPerHa === null) return phrases.unknown;
  const star = isStarred(row) ? '\u00a0*' : '';
  if (row.densityPerHa !== 0) return formatInterval(row.intervalPerHa, 2, language) + star;
  const scattered = row.scatteredBoundPerHa;
  const second = scattered === null ? '' : phrases.boundOr(formatSignificant(scattered, 2, language));
  return `${phrases.below(formatSignificant(row.intervalPerHa[1], 2, language))}${second}${star}`;
}

function stockCell(row: DensityAnswer, { language }: Read): string {
  const phrases = densityPhrases(language);
  if (row.totalAnimals === null) return phrases.unknown;
  if (row.densityPerHa === 0) {
    const bound = row.totalInterval?.[1];
    return bound === undefined ? phrases.notRecorded : phrases.below(formatSignificant(bound, 2, language));
  }
  const range = row.totalInterval === null ? '' : ` (${formatInterval(row.totalInterval, 2, language)})`;
  return `${formatSignificant(row.totalAnimals, 2, language)}${range}`;
}

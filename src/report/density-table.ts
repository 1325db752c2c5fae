/** The table of densities: every figure with its stations, its spread and how its interval was made. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { intervalNames } from './catalogue/method-words.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
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
  const methods = [...new Set(answers.filter((row) => row.intervalMethod !== null).map(methodCell))];
  const oneMethod = methods.length === 1 ? methods[0]! : null;
  const columns = [
    { head: words.head, cell: words.label },
    { head: 'Found at, stations', cell: stationsInWords, number: true },
    { head: 'Animals', cell: (row: DensityAnswer) => formatCount(row.animals), number: true },
    { head: 'Searched, m²', cell: (row: DensityAnswer) => formatCount(row.searchedAreaM2), number: true },
    { head: 'Animals per ha', cell: densityCell, number: true },
    { head: 'Standard error', cell: errorCell, number: true },
    { head: `${formatShare(words.confidence)} interval, per ha`, cell: intervalCell, number: true },
    ...(oneMethod === null ? [{ head: 'Interval by', cell: methodCell }] : []),
    { head: 'Animals in all', cell: stockCell, number: true },
  ];
  const table = htmlTable(columns, answers, {
    caption: oneMethod === null ? words.caption : `${words.caption}; intervals by ${oneMethod}`,
    across: (row) => (row.densityPerHa === null ? reasonOf(row, words.language) : null),
    acrossFrom: 4,
    ...(words.bySpecies ? { group: words.speciesLabel } : {}),
  });
  const notes = densityNotes(answers, words);
  return notes.length === 0 ? table : `${table}<div class="quiet notes">${list(notes)}</div>`;
}

function reasonOf(row: DensityAnswer, language: Language): string {
  return row.reason === null ? 'No answer' : sentence(language, row.reason);
}

function densityCell(row: DensityAnswer): string {
  return row.densityPerHa === 0 ? 'not recorded' : formatSignificant(row.densityPerHa ?? 0);
}

function errorCell(row: DensityAnswer): string {
  if (row.densityPerHa === 0) return '–';
  return row.standardErrorPerHa === null ? 'unknown' : formatSignificant(row.standardErrorPerHa, 2);
}

function intervalCell(row: DensityAnswer): string {
  if (row.intervalPerHa === null) return 'unknown';
  const star = isStarred(row) ? '\u00a0*' : '';
  if (row.densityPerHa !== 0) return formatInterval(row.intervalPerHa) + star;
  const scattered = row.scatteredBoundPerHa;
  const second = scattered === null ? '' : ` or ${formatSignificant(scattered, 2)}`;
  return `below ${formatSignificant(row.intervalPerHa[1], 2)}${second}${star}`;
}

function methodCell(row: DensityAnswer): string {
  return row.intervalMethod === null ? '–' : intervalNames[row.intervalMethod];
}

function stockCell(row: DensityAnswer): string {
  if (row.totalAnimals === null) return 'unknown';
  if (row.densityPerHa === 0) {
    const bound = row.totalInterval?.[1];
    return bound === undefined ? 'not recorded' : `below ${formatSignificant(bound, 2)}`;
  }
  const range = row.totalInterval === null ? '' : ` (${formatInterval(row.totalInterval)})`;
  return `${formatSignificant(row.totalAnimals, 2)}${range}`;
}

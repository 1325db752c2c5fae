/** What has to be read with a table of densities, below it. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import { sentenceOnPaper } from './catalogue/sentence.ts';
import type { DensityTableWords } from './density-table.ts';
import { formatShort } from './numbers.ts';

/** Each reason and caution once, with the rows it belongs to; what the cells or a star tell already, once for all. */
export function densityNotes(answers: readonly DensityAnswer[], words: DensityTableWords): string[] {
  return [...notesOfRows(answers, words), ...zeroStratumNote(answers, words), ...zeroNotes(answers, words)];
}

/** Rows with few stations carry a star in their interval. */
export function isStarred({ cautions, intervalPerHa }: DensityAnswer): boolean {
  return intervalPerHa !== null && cautions.some(({ code }) => code === fewStations);
}

const fewStations = 'few-positive-stations';
const saidForAll = new Set(['zero-bound', 'zero-stratum-prior']);

function notesOfRows(answers: readonly DensityAnswer[], words: DensityTableWords): string[] {
  const rowsByNote = new Map<string, DensityAnswer[]>();
  for (const answer of answers) {
    const reasons = [
      ...(answer.densityPerHa !== null && answer.reason !== null ? [answer.reason] : []),
      ...answer.cautions,
    ].filter(({ code }) => !saidForAll.has(code));
    for (const note of new Set(reasons.map((reason) => sentenceOnPaper(words.language, reason)))) {
      rowsByNote.set(note, [...(rowsByNote.get(note) ?? []), answer]);
    }
  }
  const few = answers.find(isStarred)?.cautions.find(({ code }) => code === fewStations);
  const { noteOfRows } = densityPhrases(words.language);
  return [...rowsByNote].map(([note, rows]) =>
    few !== undefined && note === sentenceOnPaper(words.language, few)
      ? `* ${note}.`
      : noteOfRows(rowsInWords(rows, answers, words), note),
  );
}

/** A note that holds for every row of a stratum names the stratum alone. */
function rowsInWords(
  rows: readonly DensityAnswer[],
  answers: readonly DensityAnswer[],
  words: DensityTableWords,
): string {
  const phrases = densityPhrases(words.language);
  if (rows.length === answers.length && rows.length > 1) return phrases.allRows;
  if (!words.bySpecies) return rows.map(words.speciesLabel).join(', ');
  const named = rows.map((row) => {
    const alike = (all: readonly DensityAnswer[]) =>
      all.filter((other) => other.scope.name === row.scope.name).length;
    return alike(rows) === alike(answers)
      ? words.label(row)
      : phrases.speciesIn(words.speciesLabel(row), words.label(row));
  });
  return [...new Set(named)].join(', ');
}

/** Which strata these are stands in the figures and the table by stratum. */
function zeroStratumNote(answers: readonly DensityAnswer[], words: DensityTableWords): string[] {
  const some = answers.some(({ cautions }) => cautions.some(({ code }) => code === 'zero-stratum-prior'));
  return some ? [densityPhrases(words.language).zeroStrata] : [];
}

/** How clumped each species was taken to be where none was recorded, said once for the whole table. */
function zeroNotes(answers: readonly DensityAnswer[], words: DensityTableWords): string[] {
  const bySource = new Map<string, Set<string>>();
  for (const answer of answers) {
    const bound = answer.cautions.find(({ code }) => code === 'zero-bound')?.parameters;
    if (typeof bound?.k !== 'number') continue;
    const source = String(bound.source ?? '');
    const told = bySource.get(source) ?? new Set();
    bySource.set(source, told.add(`${words.speciesLabel(answer)} ${formatShort(bound.k, words.language)}`));
  }
  if (bySource.size === 0) return [];
  const phrases = densityPhrases(words.language);
  const sources: Readonly<Record<string, string>> = phrases.sources;
  const told = [...bySource].map(([source, ks]) =>
    phrases.kBySource(sources[source] ?? source, [...ks].join(', ')),
  );
  return [phrases.zeroBounds(told.join('; '))];
}

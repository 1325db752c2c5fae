/** Densities as a table for the command line, survey by survey, with what has to be said below it. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { counted } from '../survey/counted.ts';
import type { Species } from '../survey/words.ts';
import { sentence } from './catalogue/sentence.ts';
import { leftOutLines } from './left-out-lines.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from './numbers.ts';
import { reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

interface DensityWords {
  /** 0.95 for 95 %. */
  readonly confidence: number;
  readonly species: readonly Species[];
}

/** Names as people use them; the scientific ones are in the report page and in `--json`. */
export function densityLines(answers: readonly DensityAnswer[], words: DensityWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const named = answers.map((answer) => ({
    ...answer,
    species: nameOf(answer.species).label,
    reason: reasonInPeoplesWords(answer.reason, nameOf),
  }));
  const surveys = [...new Set(named.map((answer) => answer.survey))];
  return surveys.flatMap((survey, i) => {
    const own = named.filter((answer) => answer.survey === survey);
    const table = textTable(columns(words.confidence, own), own);
    return [...(i > 0 ? [''] : []), survey, '', table, ...notes(own), ...leftOutLines(own)];
  });
}

function columns(confidence: number, answers: readonly DensityAnswer[]): readonly Column<DensityAnswer>[] {
  const bySurvey = answers.every((answer) => answer.scope.by === 'survey');
  const scope = { head: answers[0]?.scope.by ?? 'scope', cell: (answer: DensityAnswer) => answer.scope.name };
  return [
    { head: 'species', cell: (answer) => answer.species },
    ...(bySurvey ? [] : [scope]),
    { head: 'seen at', cell: seenAt, number: true },
    { head: 'animals', cell: (answer) => formatCount(answer.animals), number: true },
    { head: 'per ha', cell: (answer) => orDash(answer.densityPerHa), number: true },
    { head: 'SE', cell: (answer) => orDash(answer.standardErrorPerHa), number: true },
    { head: `${formatShare(confidence)} interval`, cell: intervalCell, number: true },
    { head: 'method', cell: (answer) => answer.intervalMethod ?? '' },
    { head: 'stock', cell: stockCell, number: true },
  ];
}

function seenAt(answer: DensityAnswer): string {
  return `${answer.stationsWithSpecies} of ${counted(answer.stations, 'station')}`;
}

function intervalCell(answer: DensityAnswer): string {
  if (answer.intervalPerHa === null) return '–';
  if (answer.animals === 0) return `below ${formatSignificant(answer.intervalPerHa[1], 2)}`;
  return formatInterval(answer.intervalPerHa);
}

/** A stock of "0" would say that the animals are gone; none seen only bounds it. */
function stockCell(answer: DensityAnswer): string {
  if (answer.animals > 0 || answer.totalInterval === null) return orDash(answer.totalAnimals);
  return `below ${formatSignificant(answer.totalInterval[1], 2)}`;
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

/** Reasons and cautions: each sentence once, with the rows it belongs to. */
function notes(answers: readonly DensityAnswer[]): readonly string[] {
  const rowsOf = new Map<string, string[]>();
  for (const answer of answers) {
    const said = [answer.reason, ...answer.cautions].filter((reason) => reason !== null);
    for (const text of said.map((reason) => sentence('en', reason))) {
      rowsOf.set(text, [...(rowsOf.get(text) ?? []), rowName(answer)]);
    }
  }
  if (rowsOf.size === 0) return [];
  return ['', ...[...rowsOf].map(([text, rows]) => `  ${rowsInWords(rows, answers.length)}: ${text}`)];
}

function rowName(answer: DensityAnswer): string {
  return answer.scope.by === 'survey' ? answer.species : `${answer.species}, ${answer.scope.name}`;
}

function rowsInWords(rows: readonly string[], all: number): string {
  if (rows.length === all && all > 1) return 'All rows';
  return rows.length <= 4 ? rows.join('; ') : `${rows.slice(0, 3).join('; ')} and ${rows.length - 3} more`;
}

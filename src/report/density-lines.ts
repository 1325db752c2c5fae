/** Densities as a table for the command line, survey by survey, with what has to be said below it. */

import type { DensityAnswer } from '../estimates/answers.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from './numbers.ts';
import { type Column, textTable } from './text-table.ts';

export function densityLines(answers: readonly DensityAnswer[], confidence: number): readonly string[] {
  const surveys = [...new Set(answers.map((answer) => answer.survey))];
  return surveys.flatMap((survey, i) => {
    const own = answers.filter((answer) => answer.survey === survey);
    return [...(i > 0 ? [''] : []), survey, '', textTable(columns(confidence, own), own), ...notes(own)];
  });
}

function columns(confidence: number, answers: readonly DensityAnswer[]): readonly Column<DensityAnswer>[] {
  const bySurvey = answers.every((answer) => answer.scope.by === 'survey');
  const scope = { head: answers[0]?.scope.by ?? 'scope', cell: (answer: DensityAnswer) => answer.scope.name };
  return [
    { head: 'species', cell: (answer) => answer.species },
    ...(bySurvey ? [] : [scope]),
    {
      head: 'stations with',
      cell: (answer) => `${answer.stationsWithSpecies} of ${answer.stations}`,
      number: true,
    },
    { head: 'animals', cell: (answer) => formatCount(answer.animals), number: true },
    { head: 'per ha', cell: (answer) => orDash(answer.densityPerHa), number: true },
    { head: 'SE', cell: (answer) => orDash(answer.standardErrorPerHa), number: true },
    { head: `${formatShare(confidence)} interval`, cell: intervalCell, number: true },
    { head: 'method', cell: (answer) => answer.intervalMethod ?? '' },
    { head: 'stock', cell: (answer) => orDash(answer.totalAnimals), number: true },
  ];
}

function intervalCell(answer: DensityAnswer): string {
  if (answer.intervalPerHa === null) return '–';
  if (answer.animals === 0) return `below ${formatSignificant(answer.intervalPerHa[1], 2)}`;
  return formatInterval(answer.intervalPerHa);
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

/** Reasons, cautions and what was left out: each sentence once, with the rows it belongs to. */
function notes(answers: readonly DensityAnswer[]): readonly string[] {
  const rowsOf = new Map<string, string[]>();
  for (const answer of answers) {
    const said = [answer.reason, ...answer.cautions].filter((reason) => reason !== null);
    for (const text of said.map((reason) => sentence('en', reason))) {
      rowsOf.set(text, [...(rowsOf.get(text) ?? []), rowName(answer)]);
    }
  }
  const leftOut = new Set(
    answers.flatMap((answer) => answer.leftOut.map(({ reason }) => sentence('en', reason))),
  );
  return [
    ...(rowsOf.size > 0 ? ['', ...[...rowsOf].map(([text, rows]) => `  ${listOf(rows)}: ${text}`)] : []),
    ...(leftOut.size > 0 ? ['', '  Left out:', ...[...leftOut].map((text) => `  - ${text}`)] : []),
  ];
}

function rowName(answer: DensityAnswer): string {
  return answer.scope.by === 'survey' ? answer.species : `${answer.species}, ${answer.scope.name}`;
}

function listOf(rows: readonly string[]): string {
  return rows.length <= 4 ? rows.join('; ') : `${rows.slice(0, 3).join('; ')} and ${rows.length - 3} more`;
}

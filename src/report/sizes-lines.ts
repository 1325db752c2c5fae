/** Sizes as a table for the command line. */

import type { SizesAnswer } from '../estimates/answers.ts';
import { counted } from '../survey/counted.ts';
import type { Species } from '../survey/words.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from './numbers.ts';
import { reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

export function sizesLines(answers: readonly SizesAnswer[], species: readonly Species[]): readonly string[] {
  const nameOf = speciesNames(species);
  const named = answers.map((answer) => ({
    ...answer,
    species: nameOf(answer.species).label,
    reason: reasonInPeoplesWords(answer.reason, nameOf),
  }));
  const surveys = [...new Set(named.map((answer) => answer.survey))];
  return surveys.flatMap((survey, i) => {
    const own = named.filter((answer) => answer.survey === survey);
    return [...(i > 0 ? [''] : []), survey, '', textTable(columns(own), own), ...notes(own)];
  });
}

function columns(answers: readonly SizesAnswer[]): readonly Column<SizesAnswer>[] {
  const bySurvey = answers.every((answer) => answer.scope.by === 'survey');
  const scope = { head: answers[0]?.scope.by ?? 'scope', cell: (answer: SizesAnswer) => answer.scope.name };
  return [
    { head: 'species', cell: (answer) => answer.species },
    ...(bySurvey ? [] : [scope]),
    { head: 'animals', cell: (answer) => formatCount(answer.animals), number: true },
    { head: 'measured', cell: (answer) => formatCount(answer.measured), number: true },
    { head: 'mean mm', cell: (answer) => orDash(answer.meanLengthMm), number: true },
    { head: 'SE', cell: (answer) => orDash(answer.standardErrorMm), number: true },
    { head: 'middle half mm', cell: middleHalf, number: true },
    { head: 'limit mm', cell: (answer) => String(answer.shareAtLeast?.limitMm ?? '–'), number: true },
    { head: 'at or above', cell: shareCell, number: true },
  ];
}

function middleHalf({ quantilesMm }: SizesAnswer): string {
  return quantilesMm === null ? '–' : formatInterval([quantilesMm.p25, quantilesMm.p75]);
}

function shareCell({ shareAtLeast }: SizesAnswer): string {
  if (shareAtLeast === null) return '–';
  const { share, interval } = shareAtLeast;
  return interval === null
    ? formatShare(share)
    : `${formatShare(share)} (${formatShare(interval[0])}–${formatShare(interval[1])})`;
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

function notes(answers: readonly SizesAnswer[]): readonly string[] {
  const lines = answers.flatMap((answer) => {
    const row = answer.scope.by === 'survey' ? answer.species : `${answer.species}, ${answer.scope.name}`;
    const borrowed =
      answer.borrowedAnimals > 0
        ? [
            `  ${row}: ${counted(formatCount(answer.borrowedAnimals), 'animal was', 'animals were')} counted where none was measured; ${answer.borrowedAnimals === 1 ? 'its size is borrowed from its' : 'their sizes are borrowed from their'} station or stratum`,
          ]
        : [];
    return answer.reason === null ? borrowed : [`  ${row}: ${sentence('en', answer.reason)}`, ...borrowed];
  });
  return lines.length > 0 ? ['', ...lines] : [];
}

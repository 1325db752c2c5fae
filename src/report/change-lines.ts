/** Change between two surveys as text: the verdict, the table, and a sentence for each species. */

import type { ChangeAnswer } from '../estimates/change/change-answer.ts';
import type { Comparability } from '../estimates/change/comparability.ts';
import type { Species } from '../survey/words.ts';
import { changePhrases } from './catalogue/change-phrases.ts';
import {
  changeInNumbers,
  falseAlarmInWords,
  ratioInDigits,
  toldInWords,
  whatItTakesInWords,
} from './catalogue/change-sentences.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatShare, formatSignificant } from './numbers.ts';
import { inPeoplesWords, reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

export interface ChangeWords {
  readonly confidence: number;
  readonly species: readonly Species[];
}

export interface ChangeToSay {
  readonly from: string;
  readonly to: string;
  readonly comparability: Comparability;
  readonly answers: readonly ChangeAnswer[];
}

const verdicts = {
  same: 'the two surveys can be compared',
  limited: 'the two surveys can be compared, with limits',
  held: 'the two surveys cannot be compared as they stand',
} as const;

export function changeLines(change: ChangeToSay, words: ChangeWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const answers = change.answers.map((answer) => ({
    ...answer,
    species: nameOf(answer.species).label,
    reason: reasonInPeoplesWords(answer.reason, nameOf),
  }));
  const table = textTable(columns(answers, words.confidence), answers);
  return [
    ...comparabilityLines(change, nameOf),
    '',
    ...answers.flatMap((answer) => answerLines(answer, words.confidence)),
    '',
    table,
    `  ${changePhrases('en').commonWeights}`,
    ...(answers.some((one) => one.atTheseStations)
      ? ['', 'Stations were picked by hand: a change at these stations, and at no other place.']
      : []),
    ...cautionLines(answers),
  ];
}

function comparabilityLines(
  { from, to, comparability }: ChangeToSay,
  nameOf: ReturnType<typeof speciesNames>,
): readonly string[] {
  const said = comparability.aspects.flatMap(({ verdict, reason }) =>
    reason === null
      ? []
      : [
          `  ${verdict === 'held' ? '' : verdict === 'limited' ? 'limit: ' : ''}${sentence('en', inPeoplesWords(reason, nameOf))}`,
        ],
  );
  return [`${from} to ${to}: ${verdicts[comparability.verdict]}`, ...said];
}

function rowName(answer: ChangeAnswer): string {
  return answer.scope.by === 'survey' ? answer.species : `${answer.species}, ${answer.scope.name}`;
}

/** The answer first: what can be told, in words, then the numbers. */
function answerLines(answer: ChangeAnswer, confidence: number): readonly string[] {
  const { told, reason } = answer;
  if (told === null) return reason === null ? [] : [`${rowName(answer)}: ${sentence('en', reason)}`];
  const where = answer.atTheseStations ? ` at these ${answer.pairs} stations` : '';
  const head = `${rowName(answer)}: ${toldInWords(told, confidence)}${where}: ${changeInNumbers(answer)}`;
  const more = whatItTakesInWords(answer);
  return [`${head}${more === '' ? '' : `; ${more}`}.`];
}

function columns(answers: readonly ChangeAnswer[], confidence: number): readonly Column<ChangeAnswer>[] {
  const bySurvey = answers.every((answer) => answer.scope.by === 'survey');
  const both = (pair: { readonly from: number; readonly to: number }) => `${pair.from} → ${pair.to}`;
  return [
    { head: 'species', cell: (answer) => answer.species },
    ...(bySurvey
      ? []
      : [{ head: answers[0]?.scope.by ?? '', cell: (answer: ChangeAnswer) => answer.scope.name }]),
    { head: 'stations', cell: ({ stations }) => both(stations), number: true },
    { head: 'revisited', cell: ({ pairs }) => `${pairs}`, number: true },
    { head: 'animals', cell: ({ animals }) => both(animals), number: true },
    { head: 'per ha', cell: densities, number: true },
    {
      head: 'ratio',
      cell: ({ ratio }) => (ratio === null ? '–' : formatSignificant(ratio, 2)),
      number: true,
    },
    { head: `${formatShare(confidence)} interval`, cell: intervalCell, number: true },
    { head: 'by design', cell: designCell, number: true },
    { head: 'chance alone p', cell: permutationCell, number: true },
  ];
}

function densities({ densityPerHa }: ChangeAnswer): string {
  if (densityPerHa === null) return '–';
  return `${formatSignificant(densityPerHa.from)} → ${formatSignificant(densityPerHa.to)}`;
}

function intervalCell({ ratioInterval }: ChangeAnswer): string {
  if (ratioInterval === null) return '–';
  const [low, high] = ratioInterval;
  if (high === null) return `over ${ratioInDigits(low)}`;
  return low === 0 ? `below ${ratioInDigits(high)}` : `${ratioInDigits(low)} to ${ratioInDigits(high)}`;
}

function designCell({ logRatio }: ChangeAnswer): string {
  const interval = logRatio?.interval ?? null;
  if (interval === null) return '–';
  return interval.map((end) => ratioInDigits(Math.exp(end))).join(' to ');
}

function permutationCell({ permutation }: ChangeAnswer): string {
  if (permutation === null) return '–';
  return `${formatSignificant(permutation.pTwoSided, 2)}${permutation.isExact ? ' exact' : ''}`;
}

function cautionLines(answers: readonly ChangeAnswer[]): readonly string[] {
  const said = new Map<string, string[]>();
  for (const answer of answers) {
    const beside = answer.told === null ? [] : [answer.reason];
    for (const reason of [...beside, ...answer.cautions].filter((one) => one !== null)) {
      const text = sentence('en', reason);
      said.set(text, [...(said.get(text) ?? []), rowName(answer)]);
    }
  }
  const lines = [...said].map(
    ([text, rows]) => `  ${rows.length === answers.length ? '' : `${rows.join('; ')}: `}${text}`,
  );
  return lines.length === 0 ? [] : ['', ...lines];
}

/** How often the design-based comparison cries wolf, species by species. */
export function falseAlarmLines(change: ChangeToSay, words: ChangeWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const known = change.answers.filter((one) => one.falseAlarmByDesign !== null);
  if (known.length === 0) return [];
  return [
    '',
    ...known.map(
      (one) =>
        `  ${nameOf(one.species).label}: ${falseAlarmInWords(one.falseAlarmByDesign!, words.confidence)}`,
    ),
  ];
}

/** Status in words for the command line: species by species, the answer first, its source and its n beside it. */

import type {
  Comparison,
  ReferenceUsed,
  SizeShare,
  StatusAnswer,
} from '../estimates/status/status-answer.ts';
import { counted } from '../survey/counted.ts';
import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import { sentence } from './catalogue/sentence.ts';
import { answerSentence } from './density-words.ts';
import { formatCount, formatShort } from './numbers.ts';
import { fullName, reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { comparisonSentence, referenceInWords, shareSentence } from './status-words.ts';

interface StatusWords {
  readonly confidence: number;
  readonly species: readonly Species[];
}

export function statusLines(answers: readonly StatusAnswer[], words: StatusWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const sources = sourceList();
  const surveys = [...new Set(answers.map((answer) => answer.density.survey))];
  const lines = surveys.flatMap((survey) => [
    survey,
    ...answers
      .filter((answer) => answer.density.survey === survey)
      .flatMap((answer) => [
        '',
        ...statusOf(answer, fullName(nameOf(answer.density.species)), { ...words, sources }),
      ]),
  ]);
  return [
    ...lines,
    ...notesBelow(answers, (name) => nameOf(name).label),
    ...sources.lines(),
    ...memoryNote(answers),
  ];
}

function memoryNote(answers: readonly StatusAnswer[]): readonly string[] {
  const remembered = answers.some(({ comparisons, atMaturity }) =>
    [...comparisons.map(({ reference }) => reference), ...atMaturity].some(
      ({ status }) => status === 'memory',
    ),
  );
  return remembered
    ? [
        '',
        '“From memory, not checked” means that nobody has compared the number with its source: look it up before anything is decided by it.',
      ]
    : [];
}

interface SourceList {
  /** The number of a source, as "[2]". */
  readonly mark: (told: string) => string;
  readonly lines: () => readonly string[];
}

/** Sources in full stand once, at the end; beside each number stands who said it, when, how counted and how sure. */
function sourceList(): SourceList {
  const known: string[] = [];
  return {
    mark: (told) => {
      if (!known.includes(told)) known.push(told);
      return `[${known.indexOf(told) + 1}]`;
    },
    lines: () =>
      known.length === 0 ? [] : ['', 'Sources', ...known.map((told, i) => `  [${i + 1}] ${told}`)],
  };
}

interface Wording extends StatusWords {
  readonly sources: SourceList;
}

function statusOf(answer: StatusAnswer, name: string, words: Wording): readonly string[] {
  const { density, comparisons } = answer;
  const where = density.scope.by === 'survey' ? '' : `, ${density.scope.by} ${density.scope.name}`;
  const compared = comparisons.filter((one) => one.held === null);
  return [
    `${name}${where}`,
    `  ${capital(answerSentence(density, words.confidence, 'en'))}.`,
    ...(comparisons.length === 0 ? [`  ${noReference}`] : []),
    ...compared.flatMap((one) => comparedLines(one, words)),
    ...heldLines(comparisons, words),
    ...sizeLines(answer, words),
  ];
}

const noReference =
  'No published density of this species is known here; give one with --reference "value: source: method", or “slateline values --add FILE.csv”.';

function comparedLines(one: Comparison, { sources }: Wording): readonly string[] {
  return [
    `  ${capital(comparisonSentence(one))} ${sources.mark(referenceInFull(one.reference))}.`,
    ...one.limitations
      .filter(({ code }) => code !== saidOnce)
      .map((limitation) => `    ${sentence('en', limitation)}.`),
  ];
}

const saidOnce = 'reference-other-width';

/** Each reason once, with the densities it holds back. */
function heldLines(comparisons: readonly Comparison[], { sources }: Wording): readonly string[] {
  const byReason = new Map<string, string[]>();
  for (const { held, reference } of comparisons) {
    if (held === null) continue;
    const reason = sentence('en', held);
    const named = `${referenceInWords(reference)} ${sources.mark(referenceInFull(reference))}`;
    byReason.set(reason, [...(byReason.get(reason) ?? []), named]);
  }
  return [...byReason].map(([reason, named]) => `  Not compared with ${named.join(', ')}. ${reason}.`);
}

/** Cautions of the densities and belts of another width: each once, with the species it belongs to. */
function notesBelow(answers: readonly StatusAnswer[], labelOf: (name: string) => string): readonly string[] {
  const rowsOf = new Map<string, Set<string>>();
  for (const { density, comparisons } of answers) {
    const widths = comparisons.flatMap((one) => one.limitations.filter(({ code }) => code === saidOnce));
    for (const text of new Set(
      [...density.cautions.filter(isWorthSaying), ...widths].map((one) => sentence('en', one)),
    )) {
      const row = density.scope.by === 'survey' ? '' : `, ${density.scope.name}`;
      rowsOf.set(text, (rowsOf.get(text) ?? new Set()).add(`${labelOf(density.species)}${row}`));
    }
  }
  if (rowsOf.size === 0) return [];
  const notes = [...rowsOf].map(([text, rows]) =>
    rows.size === answers.length && rows.size > 1
      ? `  All rows: ${text}.`
      : `  ${[...rows].join('; ')}: ${text}.`,
  );
  return ['', ...notes];
}

/** What the sentence of the answer already tells, or what changes nothing here, is not said again. */
function isWorthSaying({ code }: Reason): boolean {
  return (
    code !== 'zero-bound' &&
    code !== 'zero-stratum-prior' &&
    code !== 'accepted' &&
    code !== 'finite-population'
  );
}

function sizeLines(
  { atMaturity, atLegalSize, density, measured }: StatusAnswer,
  words: Wording,
): readonly string[] {
  if (density.animals === 0) return [];
  const n = `${formatCount(measured)} of ${counted(formatCount(density.animals), 'animal')} measured`;
  const nameOf = speciesNames(words.species);
  const named = (one: SizeShare) => ({ ...one, reason: reasonInPeoplesWords(one.reason, nameOf) });
  const lines = atMaturity.map(
    (one) =>
      `  ${shareSentence(named(one), 'size at first maturity')} ${words.sources.mark(one.source)}; ${n}.`,
  );
  return atLegalSize === null
    ? lines
    : [...lines, `  ${shareSentence(named(atLegalSize), 'size limit of the book')}; ${n}.`];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Everything that is known of a reference: for the list of sources. */
function referenceInFull({ content, source, note }: ReferenceUsed): string {
  const { cv, method, beltWidthM, place, meaning } = content;
  const told = [
    source,
    method === 'not stated' ? 'way of counting not told' : method,
    beltWidthM === null ? null : `${formatShort(beltWidthM)} m wide`,
    place,
    meaning,
    note,
    cv === null ? null : `coefficient of variation ${formatShort(cv)}`,
  ];
  return told.filter((part) => part !== null && part !== '').join('; ');
}

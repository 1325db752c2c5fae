/** Harvest options for the command line: the answer, every step with its numbers, and the table of other choices. */

import type { Catch, Closure, HarvestAnswer, LegalShare } from '../estimates/harvest/harvest-answer.ts';
import { counted } from '../survey/counted.ts';
import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import { harvestPhrases } from './catalogue/harvest-phrases.ts';
import { harvestWords } from './catalogue/harvest-words.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { formatTonnes, optionTable, percent } from './harvest-option-lines.ts';
import { chanceAndRisk, closureStep, harvestSteps } from './harvest-steps.ts';
import { formatCount, formatShort, formatSignificant } from './numbers.ts';
import {
  fullName,
  inPeoplesWords,
  reasonInPeoplesWords,
  type SpeciesName,
  speciesNames,
} from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

export interface HarvestWords {
  readonly species: readonly Species[];
  /** How many were given: fewer than three are refused with a sentence. */
  readonly rates: number;
}

export function harvestLines(given: HarvestAnswer, words: HarvestWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const answer = inNamesPeopleUse(given, nameOf);
  const name = answer.species === null ? 'typed numbers' : fullName(nameOf(answer.species));
  const head = answer.survey === null ? `${name}: typed, no survey` : `${name}, ${answer.survey}`;
  return [
    head,
    '',
    ...headline(answer, words),
    ...(answer.reason === null ? [harvestWords.decision] : []),
    ...section('Step by step', harvestSteps(answer)),
    ...closureSection(answer),
    ...catchTable(answer),
    ...optionTable(answer),
    ...notes(answer),
  ];
}

function inNamesPeopleUse(answer: HarvestAnswer, nameOf: (name: string) => SpeciesName): HarvestAnswer {
  const named = (reason: Reason | null) => reasonInPeoplesWords(reason, nameOf);
  return {
    ...answer,
    reason: named(answer.reason),
    weightReason: named(answer.weightReason),
    cautions: answer.cautions.map((caution) => inPeoplesWords(caution, nameOf)),
    options: answer.options.map((option) => ({ ...option, reason: named(option.reason) })),
  };
}

/** What the numbers come to, in one or two sentences. */
function headline(answer: HarvestAnswer, { rates }: HarvestWords): readonly string[] {
  const closure = ruleSentences(answer);
  if (answer.reason !== null)
    return [...closure, `No catch can be worked out. ${sentence('en', answer.reason)}.`];
  if (rates === 0) return [...closure, harvestWords.noRate];
  if (answer.catches.length === 0) return [...closure, harvestWords.fewRates];
  const first = answer.catches[0]!;
  const last = answer.catches.at(-1)!;
  const range = `${catchInWords(first)} at ${percent(first.rate)}, ${catchInWords(last)} at ${percent(last.rate)} a year`;
  return [
    ...closure,
    answer.closure?.closed
      ? `Were it open, the arithmetic would give ${range}.`
      : `The arithmetic gives ${range}.`,
  ];
}

/** What the rule says, or that it cannot say; nothing where none was chosen. */
export function ruleSentences(
  { closure, ruleUntold }: Pick<HarvestAnswer, 'closure' | 'ruleUntold'>,
  language: Language = 'en',
): readonly string[] {
  if (closure !== null) return [closureSentence(closure, language)];
  if (ruleUntold === null) return [];
  const limit = formatShort(ruleUntold.limitPerHa, language);
  return [harvestPhrases(language).ruleUntold(limit, ruleUntold.source)];
}

/** "closed: the chance of being below 50 per ha is 0.63, more than the chosen risk of 0.10". */
function closureSentence(closure: Closure, language: Language): string {
  const words = harvestPhrases(language);
  const limit = formatShort(closure.limitPerHa, language);
  if (closure.probabilityBelow === null)
    return words.ruleNoneSeen(limit, formatSignificant(closure.boundPerHa!, 2, language));
  const { chance, risk } = chanceAndRisk(closure.probabilityBelow, closure.risk, language);
  return words.rule(closure.closed, limit, chance, risk);
}

function catchInWords({ animals, tonnes }: Catch): string {
  const weight = tonnes === null ? '' : ` (${formatTonnes(tonnes)} t)`;
  return `${counted(formatCount(animals), 'animal')}${weight}`;
}

function closureSection({ closure, ruleUntold }: HarvestAnswer): readonly string[] {
  if (ruleUntold !== null) return [];
  return closure === null
    ? ['', harvestWords.noLimitReference]
    : section('Closure rule', closureStep(closure));
}

function section(head: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', head, ...lines.map((line) => `  ${line}`)];
}

function catchTable({ catches, closure }: HarvestAnswer): readonly string[] {
  if (catches.length === 0) return [];
  const columns: readonly Column<Catch>[] = [
    { head: 'rate a year', cell: ({ rate }) => percent(rate), number: true },
    { head: 'animals', cell: ({ animals }) => formatCount(animals), number: true },
    { head: 'tonnes', cell: ({ tonnes }) => (tonnes === null ? '–' : formatTonnes(tonnes)), number: true },
    { head: 'of the whole stock', cell: ({ shareOfStock }) => percent(shareOfStock), number: true },
    { head: 'from the estimate itself', cell: ({ pointAnimals }) => formatCount(pointAnimals), number: true },
    { head: 'source of the rate', cell: ({ source }) => source },
  ];
  const head = closure?.closed ? harvestWords.closedTable : 'Catch a year, from the lower limit';
  return ['', head, '', textTable(columns, catches)];
}

function notes({ zones, options, weightReason, cautions, legal, stock }: HarvestAnswer): readonly string[] {
  const closedNamed = options.some(({ kind }) => kind === 'closed-zone');
  const lines = [
    ...(zones.length > 0 && !closedNamed && stock !== null
      ? [
          `The stock is that of all zones (${zones.join(', ')}), closed ones included; leave one out with --closed-zone NAME.`,
        ]
      : []),
    ...(weightReason === null ? [] : [`${sentence('en', weightReason)}.`]),
    ...shareNote(legal),
    ...cautions.map((caution) => ended(sentence('en', caution))),
    ...(stock === null ? [] : [harvestWords.sampledOnly]),
  ];
  return lines.length === 0 ? [] : ['', ...new Set(lines)].map((line) => (line === '' ? '' : `  ${line}`));
}

function ended(text: string): string {
  return /[.?]$/.test(text) ? text : `${text}.`;
}

function shareNote(legal: LegalShare | null): readonly string[] {
  if (legal === null || legal.measured === null || legal.cv !== null) return [];
  return [harvestWords.shareWithoutSpread];
}

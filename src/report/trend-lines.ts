/** Percent per year as text: the answer, the surveys behind it, and what is not on the line. */

import type { ComparedAspect } from '../estimates/change/comparability.ts';
import type { Trend } from '../estimates/change/trend.ts';
import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import { changePhrases } from './catalogue/change-phrases.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { formatShare, formatSignificant } from './numbers.ts';
import { reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { textTable } from './text-table.ts';

export interface TrendToSay {
  readonly species: string;
  readonly strata: readonly string[];
  readonly surveys: readonly {
    readonly survey: string;
    readonly year: number;
    readonly stations: number;
    readonly animals: number;
    readonly densityPerHa: number | null;
    readonly standardErrorPerHa: number | null;
    readonly onTheLine: boolean;
  }[];
  readonly trend: Trend | null;
  readonly told: 'falling' | 'rising' | 'cannot tell' | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

interface Comparison {
  readonly from: string;
  readonly to: string;
  readonly aspects: readonly ComparedAspect[];
}

export function trendLines(
  answers: readonly TrendToSay[],
  comparability: readonly Comparison[],
  words: { readonly confidence: number; readonly species: readonly Species[] },
): readonly string[] {
  const nameOf = speciesNames(words.species);
  const limits = comparability.flatMap(({ from, to, aspects }) =>
    aspects.flatMap(({ verdict, reason }) =>
      reason === null || verdict === 'not known' ? [] : [`  ${from} to ${to}: ${sentence('en', reason)}`],
    ),
  );
  return [
    ...(limits.length === 0 ? [] : ['The surveys are compared with limits', ...limits, '']),
    ...answers.flatMap((answer, i) => [
      ...(i > 0 ? [''] : []),
      ...trendOfSpecies(
        {
          ...answer,
          species: nameOf(answer.species).label,
          reason: reasonInPeoplesWords(answer.reason, nameOf),
        },
        words.confidence,
      ),
    ]),
  ];
}

function trendOfSpecies(answer: TrendToSay, confidence: number): readonly string[] {
  const notes = [answer.reason, ...answer.cautions].filter((one) => one !== null);
  const said = notes.map((reason) => `  ${sentence('en', reason)}`);
  const table =
    answer.surveys.length === 0
      ? []
      : textTable(
          [
            { head: '  survey', cell: (one) => `  ${one.survey}` },
            { head: 'middle', cell: (one) => one.year.toFixed(1), number: true },
            { head: 'stations', cell: (one) => `${one.stations}`, number: true },
            { head: 'animals', cell: (one) => `${one.animals}`, number: true },
            { head: 'per ha', cell: (one) => orDash(one.densityPerHa), number: true },
            { head: 'SE', cell: (one) => orDash(one.standardErrorPerHa), number: true },
            { head: 'on the line', cell: (one) => (one.onTheLine ? 'yes' : 'no') },
          ],
          answer.surveys,
        ).split('\n');
  return [trendSentence(answer, confidence), ...said, ...table];
}

/** "Sandfish: falling: −20 % a year (…), over 3 surveys of …". */
function trendSentence(answer: TrendToSay, confidence: number): string {
  const words = changePhrases('en');
  const said = partsOf(answer, confidence, 'en');
  return said === null
    ? words.noTrend(answer.species)
    : words.trend({ ...said, strata: answer.strata.join(', ') });
}

/** The same without the strata, where they are the same for all. */
export function trendInBrief(answer: TrendToSay, confidence: number, language: Language): string {
  const words = changePhrases(language);
  const said = partsOf(answer, confidence, language);
  return said === null ? words.noTrend(answer.species) : words.trendShort(said);
}

function partsOf({ species, trend, told, surveys }: TrendToSay, confidence: number, language: Language) {
  if (trend === null || told === null) return null;
  const [low, high] = trend.intervalPercent;
  return {
    species,
    told: changePhrases(language).trendTold[told],
    perYear: percentPerYear(trend.percentPerYear, language),
    share: formatShare(confidence),
    low: percentPerYear(low, language),
    high: percentPerYear(high, language),
    surveys: `${surveys.filter((one) => one.onTheLine).length}`,
  };
}

/** "−20 %", "+5.7 %", "more than +1 000 %". */
export function percentPerYear(percent: number, language: Language): string {
  if (percent > 1000) return changePhrases(language).overThousandPercent;
  return `${percent < 0 ? '−' : '+'}${formatSignificant(Math.abs(percent), 2, language)}\u00a0%`;
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

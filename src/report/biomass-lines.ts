/** Biomass as a table for the command line, survey by survey, with the weights it rests on and what has to be said. */

import type { BiomassAnswer } from '../estimates/biomass/biomass-answer.ts';
import type { FittedPair } from '../estimates/biomass/fit-length-weight.ts';
import type { Interval } from '../estimates/shapes.ts';
import type { Reason } from '../survey/message.ts';
import type { MeanWeight } from '../survey/value-words.ts';
import type { Species } from '../survey/words.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { weightPhrases } from './catalogue/weight-phrases.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';
import { meanWeightInWords, pairInWords } from './value-words.ts';

interface BiomassWords {
  readonly confidence: number;
  readonly species: readonly Species[];
  readonly fits: readonly { readonly species: string; readonly fit: FittedPair }[];
}

export function biomassLines(answers: readonly BiomassAnswer[], words: BiomassWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const fits = words.fits.map((one) => ({ ...one, species: nameOf(one.species).label }));
  const named = answers.map((answer) => ({ ...answer, species: nameOf(answer.species).label }));
  const surveys = [...new Set(named.map((answer) => answer.survey))];
  return surveys.flatMap((survey, i) => {
    const own = named.filter((answer) => answer.survey === survey);
    const table = textTable(columns(words.confidence, own), own);
    return [...(i > 0 ? [''] : []), survey, '', table, ...basisLines(own, fits), ...biomassNotes(own)];
  });
}

function columns(confidence: number, answers: readonly BiomassAnswer[]): readonly Column<BiomassAnswer>[] {
  const bySurvey = answers.every((answer) => answer.scope.by === 'survey');
  const scope = { head: answers[0]?.scope.by ?? 'scope', cell: (answer: BiomassAnswer) => answer.scope.name };
  const percent = formatShare(confidence);
  return [
    { head: 'species', cell: (answer) => answer.species },
    ...(bySurvey ? [] : [scope]),
    { head: 'stations', cell: (answer) => formatCount(answer.stations), number: true },
    { head: 'measured', cell: measuredCell, number: true },
    { head: 'state', cell: (answer) => (answer.basis === null ? '–' : answer.state) },
    { head: 'g/animal', cell: (answer) => orDash(answer.meanWeightG), number: true },
    { head: 'kg/ha', cell: (answer) => orDash(answer.kgPerHa), number: true },
    { head: 'SE', cell: (answer) => orDash(answer.standardErrorKgPerHa), number: true },
    { head: `${percent} interval`, cell: (answer) => intervalOf(answer.intervalKgPerHa), number: true },
    { head: 'design', cell: (answer) => intervalOf(answer.designIntervalKgPerHa), number: true },
    {
      head: 'ha',
      cell: (answer) => orDash(answer.totalIntervalKg === null ? null : answer.areaHa),
      number: true,
    },
    { head: 'tonnes', cell: (answer) => tonnes(answer.totalKg), number: true },
    { head: `${percent} interval`, cell: (answer) => tonnesInterval(answer.totalIntervalKg), number: true },
  ];
}

function measuredCell({ animals, measured }: BiomassAnswer): string {
  return `${formatCount(measured)} of ${formatCount(animals)}`;
}

function orDash(value: number | null): string {
  return value === null ? '–' : formatSignificant(value);
}

function intervalOf(interval: Interval | null): string {
  return interval === null ? '–' : formatInterval(interval);
}

function tonnes(kg: number | null): string {
  return kg === null ? '–' : formatSignificant(kg / 1000);
}

function tonnesInterval(interval: Interval | null): string {
  return interval === null ? '–' : formatInterval([interval[0] / 1000, interval[1] / 1000]);
}

/** Where the weights come from: once per species. */
export function basisLines(
  answers: readonly BiomassAnswer[],
  fits: readonly { readonly species: string; readonly fit: FittedPair }[],
  language: Language = 'en',
): readonly string[] {
  const words = weightPhrases(language);
  const lines = new Set<string>();
  for (const { species, basis } of answers) {
    if (basis === null) continue;
    const { status, source } = basis.origin;
    const from = status === 'memory' ? words.memory(source) : words.source(source);
    const told =
      basis.by === 'pair'
        ? pairInWords(basis.pair, language)
        : basis.means.map((mean) => meanInWords(mean, language)).join(words.or);
    lines.add(`  ${words.basis(species, told, from)}`);
    const fit = fits.find((one) => one.species === species)?.fit;
    if (fit !== undefined && status === 'fit')
      lines.add(`      ${fitInWords(fit, basis.by === 'pair' ? basis.correction : 1, language)}`);
  }
  return lines.size === 0 ? [] : ['', 'Weights', ...lines];
}

function meanInWords(mean: MeanWeight, language: Language): string {
  const told = meanWeightInWords(mean, language);
  return mean.place === null ? told : `${mean.place} ${told}`;
}

function fitInWords(fit: FittedPair, correction: number, language: Language): string {
  const factor = formatShort(correction, language);
  const slope = formatShort(fit.geometricMeanSlope, language);
  return weightPhrases(language).fit(formatShare(fit.rSquared), factor, slope);
}

/** Reasons and cautions: each sentence once, with the rows it belongs to. */
export function biomassNotes(
  answers: readonly BiomassAnswer[],
  language: Language = 'en',
): readonly string[] {
  const rowsOf = new Map<string, string[]>();
  for (const answer of answers) {
    const said = [answer.reason, ...answer.cautions].filter((reason): reason is Reason => reason !== null);
    for (const text of new Set(said.map((reason) => sentence(language, reason)))) {
      rowsOf.set(text, [...(rowsOf.get(text) ?? []), rowName(answer)]);
    }
  }
  if (rowsOf.size === 0) return [];
  const { noteOf } = weightPhrases(language);
  return [
    '',
    ...[...rowsOf].map(([text, rows]) => `  ${noteOf(rowsInWords(rows, answers.length, language), text)}`),
  ];
}

function rowName(answer: BiomassAnswer): string {
  return answer.scope.by === 'survey' ? answer.species : `${answer.species}, ${answer.scope.name}`;
}

function rowsInWords(rows: readonly string[], all: number, language: Language): string {
  const words = weightPhrases(language);
  if (rows.length === all && all > 1) return words.allRows;
  return rows.length <= 4
    ? rows.join(words.between)
    : words.andMore(rows.slice(0, 3).join(words.between), rows.length - 3);
}

/** Biomass as a table for the command line, survey by survey, with the weights it rests on and what has to be said. */

import type { BiomassAnswer, WeightBasis } from '../estimates/biomass/biomass-answer.ts';
import type { FittedPair } from '../estimates/biomass/fit-length-weight.ts';
import type { Interval } from '../estimates/shapes.ts';
import type { Reason } from '../survey/message.ts';
import type { MeanWeight } from '../survey/value-words.ts';
import type { Species } from '../survey/words.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { weightPhrases } from './catalogue/weight-phrases.ts';
import { groupedNotes } from './grouped-notes.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { fullName, speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';
import { meanWeightInWords, pairInWords } from './value-words.ts';

interface BiomassWords {
  readonly confidence: number;
  readonly species: readonly Species[];
  readonly fits: readonly { readonly species: string; readonly fit: FittedPair }[];
}

/** Survey by survey the table; the weights they rest on and what has to be said stand once, below them all. */
export function biomassLines(answers: readonly BiomassAnswer[], words: BiomassWords): readonly string[] {
  const nameOf = speciesNames(words.species);
  const surveys = [...new Set(answers.map((answer) => answer.survey))];
  const tables = surveys.flatMap((survey, i) => {
    const own = answers
      .filter((answer) => answer.survey === survey)
      .map((answer) => ({ ...answer, species: nameOf(answer.species).label }));
    return [...(i > 0 ? [''] : []), survey, '', textTable(columns(words.confidence, own), own)];
  });
  return [...tables, ...basisLines(answers, words), ...biomassNotes(answers, words)];
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

/** Where the weights come from: once per species, with its scientific name. */
function basisLines(answers: readonly BiomassAnswer[], { species, fits }: BiomassWords): readonly string[] {
  const words = weightPhrases('en');
  const nameOf = speciesNames(species);
  const lines = new Set<string>();
  for (const { species: name, basis } of answers) {
    if (basis === null) continue;
    lines.add(
      `  ${words.pairLine(fullName(nameOf(name)), basisInWords(basis), originInWords(basis.origin))}`,
    );
    const fit = fits.find((one) => one.species === name)?.fit;
    if (fit !== undefined && basis.by === 'pair' && basis.origin.status === 'fit')
      lines.add(`      ${fitInWords(fit, basis.correction, 'en')}`);
  }
  return lines.size === 0 ? [] : ['', words.weightsHead, ...lines];
}

function basisInWords(basis: WeightBasis): string {
  return basis.by === 'pair'
    ? pairInWords(basis.pair)
    : basis.means.map((mean) => meanInWords(mean)).join(weightPhrases('en').or);
}

function originInWords({ source, status }: WeightBasis['origin']): string {
  const words = weightPhrases('en');
  return status === 'memory' ? words.memory(source) : words.source(source);
}

function meanInWords(mean: MeanWeight): string {
  const told = meanWeightInWords(mean);
  return mean.place === null ? told : `${mean.place} ${told}`;
}

export function fitInWords(fit: FittedPair, correction: number, language: Language): string {
  const factor = formatShort(correction, language);
  const slope = formatShort(fit.geometricMeanSlope, language);
  return weightPhrases(language).fit(formatShare(fit.rSquared), factor, slope);
}

/** Reasons and cautions: each sentence once, with the species it belongs to. */
function biomassNotes(answers: readonly BiomassAnswer[], { species }: BiomassWords): readonly string[] {
  const manySurveys = new Set(answers.map(({ survey }) => survey)).size > 1;
  const rows = answers.map(({ species: name, survey, scope, reason, cautions }) => ({
    species: name,
    scope: [...(manySurveys ? [survey] : []), ...(scope.by === 'survey' ? [] : [scope.name])].join(' '),
    reasons: [reason, ...cautions].filter((one): one is Reason => one !== null),
  }));
  const say = (reason: Reason) => sentence('en', reason);
  const lines = groupedNotes(rows, { language: 'en', nameOf: speciesNames(species), say });
  return lines.length === 0 ? [] : ['', ...lines.map((line) => `  ${line}`)];
}

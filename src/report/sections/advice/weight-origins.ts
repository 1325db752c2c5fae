/** Where the weights come from: curves as a table, mean weights as an order of magnitude, and what has no weight. */

import type { BiomassAnswer, WeightBasis } from '../../../estimates/biomass/biomass-answer.ts';
import type { ReasonCode } from '../../../survey/reason-codes.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { weightPhrases } from '../../catalogue/weight-phrases.ts';
import { groupedNotes } from '../../grouped-notes.ts';
import { heading, list, paragraph } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatInterval, formatShare, formatShort, withDecimalMark } from '../../numbers.ts';
import type { SpeciesName } from '../../species-names.ts';
import { shortSource, standingInWords } from '../../status-words.ts';
import { curveInWords } from '../../value-words.ts';

interface Naming {
  readonly nameOf: (species: string) => SpeciesName;
  readonly language: Language;
}

type Based<By extends WeightBasis['by']> = BiomassAnswer & { readonly basis: WeightBasis & { by: By } };

export function weightOrigins(answers: readonly BiomassAnswer[], naming: Naming): readonly string[] {
  const words = weightPhrases(naming.language);
  const seen = answers.filter(({ animals }) => animals > 0);
  const curves = seen.filter((one): one is Based<'pair'> => one.basis?.by === 'pair');
  const means = seen.filter((one): one is Based<'mean weight'> => one.basis?.by === 'mean weight');
  return [
    ...(curves.length === 0
      ? []
      : [
          heading(3, words.origins.head),
          paragraph(words.origins.explained, 'quiet'),
          curveTable(curves, naming),
        ]),
    ...(means.length === 0
      ? []
      : [
          heading(3, words.means.head),
          paragraph(words.means.explained, 'quiet'),
          list(means.map((one) => meanLine(one, naming))),
        ]),
    ...notes(words.without, answers, naming, ({ reason }) => (reason === null ? [] : [reason])),
    ...notes(words.toRead, answers, naming, ({ cautions }) =>
      cautions.filter(({ code }) => !toldAbove.has(code)),
    ),
  ];
}

/** What the table of curves, and the words above the mean weights, say already. */
const toldAbove: ReadonlySet<ReasonCode> = new Set<ReasonCode>([
  'weight-of-one',
  'outside-fitted-range',
  'fitted-range-unknown',
  'mean-weight-used',
  'mean-weights-differ',
]);

function curveTable(answers: readonly Based<'pair'>[], { nameOf, language }: Naming): string {
  const words = weightPhrases(language).origins;
  return htmlTable(
    [
      { head: reportPhrases(language).heads.species, cell: ({ species }) => nameOf(species).label },
      { head: words.from, cell: ({ basis }) => originInWords(basis, language) },
      { head: words.lengths, cell: ({ basis }) => lengthsCell(basis, language) },
      { head: words.curve, cell: ({ basis }) => curveCell(basis, language) },
      { head: words.scatter, cell: ({ basis }) => scatterCell(basis), number: true },
      { head: words.one, cell: (one) => oneAnimal(one, language) },
      { head: words.outside, cell: (one) => outsideCell(one, language), number: true },
    ],
    answers,
    { caption: words.caption },
  );
}

/** "56 animals weighed in this book", "Purcell and others 2012, from memory, not checked". */
function originInWords({ origin }: WeightBasis, language: Language): string {
  if (origin.status === 'fit') return weightPhrases(language).source(origin.source);
  const standing = standingInWords(origin.status, language);
  return [shortSource(origin.source, language), standing].filter((part) => part !== null).join(', ');
}

function lengthsCell({ pair }: Based<'pair'>['basis'], language: Language): string {
  const { lengthMinMm: low, lengthMaxMm: high } = pair;
  return low === null || high === null
    ? weightPhrases(language).origins.notTold
    : weightPhrases(language).origins.between(formatShort(low, language), formatShort(high, language));
}

function curveCell({ pair }: Based<'pair'>['basis'], language: Language): string {
  const { lengthUnit, weightUnit } = pair;
  return weightPhrases(language)
    .origins.units(curveInWords(pair, language), lengthUnit, weightUnit)
    .replaceAll(' ', '\u00a0');
}

/** One standard deviation of ln W, as the share by which an animal is heavier than the curve. */
function scatterCell({ pair }: Based<'pair'>['basis']): string {
  return pair.residualSdLn === null ? '–' : formatShare(Math.exp(pair.residualSdLn) - 1);
}

function oneAnimal({ cautions }: BiomassAnswer, language: Language): string {
  const { lengthMm, weightG } = cautions.find(({ code }) => code === 'weight-of-one')?.parameters ?? {};
  if (typeof lengthMm !== 'number' || typeof weightG !== 'number') return '–';
  return weightPhrases(language)
    .origins.weighs(formatShort(lengthMm, language), formatShort(weightG, language))
    .replaceAll(' ', '\u00a0');
}

function outsideCell({ cautions, basis }: BiomassAnswer, language: Language): string {
  const words = weightPhrases(language).origins;
  if (basis?.by === 'pair' && basis.pair.lengthMinMm === null) return '–';
  const { percent } = cautions.find(({ code }) => code === 'outside-fitted-range')?.parameters ?? {};
  if (typeof percent !== 'number') return words.noneOutside;
  return `${withDecimalMark(formatShort(percent), language)}\u00a0%`;
}

/** "Leopardfish: 13 to 210 t from 23 animals at 28 stations; one animal 1 800 to 2 000 g live (…)". */
function meanLine(answer: Based<'mean weight'>, { nameOf, language }: Naming): string {
  const words = weightPhrases(language);
  const { totalIntervalKg, animals, stations, basis } = answer;
  const tonnes =
    totalIntervalKg === null
      ? words.means.noTonnes
      : words.means.tonnes(
          formatInterval([totalIntervalKg[0] / 1000, totalIntervalKg[1] / 1000], 2, language),
          formatCount(animals),
          formatCount(stations),
        );
  const grams = basis.means.map(({ weightG }) => weightG);
  const said = (value: number) => formatShort(value, language);
  const [low, high] = [Math.min(...grams), Math.max(...grams)];
  const state = words.states[basis.means[0]!.weightState];
  const weights =
    low === high
      ? words.means.oneWeight(said(low), state)
      : words.means.weights(said(low), said(high), state);
  const told = words.means.by(weights, originInWords(basis, language));
  return `${words.means.line(nameOf(answer.species).label, tonnes, told)}.`;
}

function notes(
  head: string,
  answers: readonly BiomassAnswer[],
  { nameOf, language }: Naming,
  reasonsOf: (answer: BiomassAnswer) => BiomassAnswer['cautions'],
): readonly string[] {
  const rows = answers.map((one) => ({ species: one.species, scope: '', reasons: reasonsOf(one) }));
  const say = (reason: BiomassAnswer['cautions'][number]) => sentenceOnPaper(language, reason);
  const lines = groupedNotes(rows, { nameOf, language, say });
  return lines.length === 0 ? [] : [heading(3, head), `<div class="quiet notes">${list(lines)}</div>`];
}

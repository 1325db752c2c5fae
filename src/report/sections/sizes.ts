/** Sizes: the spread of lengths with the limit, and the share at or above it. */

import type { SizesAnswer } from '../../estimates/answers.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentence } from '../catalogue/sentence.ts';
import { escapeText } from '../escape.ts';
import { list, paragraph, phoneWidth, section } from '../html.ts';
import { htmlTable } from '../html-table.ts';
import { lengthFrequencies, sizesInWords } from '../length-frequencies.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';

export function sizesSection(input: ReportInput, survey: ReportSurvey, drawing: Drawing): string {
  const { language } = drawing;
  const words = reportWords(language);
  const answers = sortBySpecies(survey.sizes, input);
  const measured = answers.filter((answer) => answer.measured > 0);
  if (measured.length === 0) return section('sizes', words.sizes, [paragraph(words.noSizes)]);
  const drawn = measured
    .filter((answer) => answer.measured >= fewestDrawn)
    .flatMap((answer) => lengthFigure(answer, { input, survey, drawing }));
  return section('sizes', words.sizes, [
    paragraph(words.sizesExplained),
    `<div class="pairs">${drawn.join('\n')}</div>`,
    sizesTable(measured, input),
    `<div class="quiet notes">${list(notes(answers, input, language))}</div>`,
  ]);
}

/** Fewer measured animals than this have lengths but no shape: they stand in the table alone (our own choice). */
const fewestDrawn = 5;

interface Context {
  readonly input: ReportInput;
  readonly survey: ReportSurvey;
  readonly drawing: Drawing;
}

function lengthFigure(answer: SizesAnswer, { input, survey, drawing }: Context): string[] {
  const name = speciesNames(input.species)(answer.species);
  const measure = measureOf(survey, answer.species);
  const inWords = `Lengths of ${fullName(name)}: ${sizesInWords(answer, drawing.language)}`;
  const drawn = lengthFrequencies(answer, { ...drawing, width: phoneWidth, inWords, measure });
  if (drawn === null) return [];
  return [
    `<figure><h4>${nameMarkup(name)}</h4>${drawn}<figcaption>${escapeText(sizesInWords(answer, drawing.language))}</figcaption></figure>`,
  ];
}

/** "shell length" where all its measures agree, else "length". */
function measureOf(survey: ReportSurvey, species: string): string {
  const id = survey.inHand.targets.find((target) => target.name === species)?.id;
  const measures = new Set<string>();
  for (const station of survey.inHand.stations) {
    for (const transect of station.transects) {
      const tally = id === undefined ? undefined : transect.tallies.get(id);
      for (const length of tally?.lengths ?? []) if (length.measure !== null) measures.add(length.measure);
    }
  }
  const [only] = measures;
  if (measures.size !== 1 || only === undefined) return 'length';
  return only.startsWith('body') ? `body length, ${only.slice(5)}` : only;
}

function sizesTable(answers: readonly SizesAnswer[], input: ReportInput): string {
  const nameOf = speciesNames(input.species);
  const mm = (value: number | null | undefined) =>
    value === null || value === undefined ? 'unknown' : formatSignificant(value);
  return htmlTable(
    [
      { head: 'Species', cell: (row) => nameOf(row.species).label },
      { head: 'Animals', cell: (row) => formatCount(row.animals), number: true },
      { head: 'Measured', cell: (row) => formatCount(row.measured), number: true },
      { head: 'Mean, mm', cell: (row) => mm(row.meanLengthMm), number: true },
      {
        head: 'Standard error, mm',
        cell: (row) => (row.standardErrorMm === null ? 'unknown' : formatSignificant(row.standardErrorMm, 2)),
        number: true,
      },
      { head: 'Half are below, mm', cell: (row) => mm(row.quantilesMm?.p50), number: true },
      {
        head: 'Limit, mm',
        cell: (row) => (row.shareAtLeast === null ? 'none given' : formatShort(row.shareAtLeast.limitMm)),
        number: true,
      },
      { head: 'At or above the limit', cell: shareCell, number: true },
    ],
    answers,
    { caption: `Lengths, ${input.surveys.at(-1)?.inHand.survey.name ?? ''}` },
  );
}

function shareCell({ shareAtLeast }: SizesAnswer): string {
  if (shareAtLeast === null) return '–';
  const interval = shareAtLeast.interval;
  if (interval === null) return formatShare(shareAtLeast.share);
  const ends = formatInterval([interval[0] * 100, interval[1] * 100]);
  return `${formatShare(shareAtLeast.share)} (${ends})`;
}

function notes(answers: readonly SizesAnswer[], input: ReportInput, language: Language): string[] {
  const nameOf = speciesNames(input.species);
  const byName = new Map(input.species.map((species) => [species.id, species.name]));
  const bySource = Map.groupBy(input.sizeLimits, (limit) => limit.source);
  const limits = [...bySource].map(([source, own]) => {
    const told = own.map(({ speciesId, minimumMm }) => {
      const { label } = nameOf(byName.get(speciesId) ?? 'a species that is not listed');
      return `${label} ${formatShort(minimumMm)} mm`;
    });
    return `Limits, ${source}: ${told.join(', ')}.`;
  });
  const borrowed = answers
    .filter((answer) => answer.borrowedAnimals > 0 && answer.animals > 0)
    .map(
      (answer) =>
        `${nameOf(answer.species).label}: ${formatCount(answer.borrowedAnimals)} of ${formatCount(answer.animals)} animals were on belts where none was measured; they take the lengths of their station, or else of their stratum.`,
    );
  const none = answers
    .filter((answer) => answer.measured === 0 || answer.reason !== null)
    .map(
      (answer) =>
        `${nameOf(answer.species).label}: ${answer.reason === null ? sizesInWords(answer, language) : sentence(language, answer.reason)}.`,
    );
  return [...limits, ...borrowed, ...none];
}

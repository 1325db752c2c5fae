/** Sizes: the spread of lengths with the limit, and the share at or above it. */

import type { SizesAnswer } from '../../estimates/answers.ts';
import type { LengthMeasure } from '../../survey/words.ts';
import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentenceOnPaper } from '../catalogue/sentence.ts';
import { escapeText } from '../escape.ts';
import { list, paragraph, phoneWidth, section } from '../html.ts';
import { htmlTable } from '../html-table.ts';
import { lengthFrequencies, sizesInWords } from '../length-frequencies.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, inPeoplesWords, sortBySpecies, speciesNames } from '../species-names.ts';
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
    sizesTable(measured, input, language),
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
  const measure = measureOf(survey, answer.species, drawing.language);
  const inWords = reportPhrases(drawing.language).sizes.inWords(
    fullName(name),
    sizesInWords(answer, drawing.language),
  );
  const drawn = lengthFrequencies(answer, { ...drawing, width: phoneWidth, inWords, measure });
  if (drawn === null) return [];
  return [
    `<figure><h4>${nameMarkup(name)}</h4>${drawn}<figcaption>${escapeText(sizesInWords(answer, drawing.language))}</figcaption></figure>`,
  ];
}

/** "shell length" where all its measures agree, else "length". */
function measureOf(survey: ReportSurvey, species: string, language: Language): string {
  const id = survey.inHand.targets.find((target) => target.name === species)?.id;
  const measures = new Set<LengthMeasure>();
  for (const station of survey.inHand.stations) {
    for (const transect of station.transects) {
      const tally = id === undefined ? undefined : transect.tallies.get(id);
      for (const length of tally?.lengths ?? []) if (length.measure !== null) measures.add(length.measure);
    }
  }
  const [only] = measures;
  const { sizes } = reportPhrases(language);
  return measures.size !== 1 || only === undefined ? sizes.length : sizes.measures[only];
}

function sizesTable(answers: readonly SizesAnswer[], input: ReportInput, language: Language): string {
  const { heads, sizes, unknown } = reportPhrases(language);
  const nameOf = speciesNames(input.species);
  const mm = (value: number | null | undefined) =>
    value === null || value === undefined ? unknown : formatSignificant(value, 3, language);
  return htmlTable(
    [
      { head: heads.species, cell: (row) => nameOf(row.species).label },
      { head: heads.animals, cell: (row) => formatCount(row.animals), number: true },
      { head: heads.measured, cell: (row) => formatCount(row.measured), number: true },
      { head: heads.meanMm, cell: (row) => mm(row.meanLengthMm), number: true },
      {
        head: heads.errorMm,
        cell: (row) =>
          row.standardErrorMm === null ? unknown : formatSignificant(row.standardErrorMm, 2, language),
        number: true,
      },
      { head: heads.halfBelowMm, cell: (row) => mm(row.quantilesMm?.p50), number: true },
      {
        head: heads.limitMm,
        cell: (row) =>
          row.shareAtLeast === null ? sizes.noLimit : formatShort(row.shareAtLeast.limitMm, language),
        number: true,
      },
      { head: heads.atLeastLimit, cell: (row) => shareCell(row, language), number: true },
    ],
    answers,
    { caption: sizes.caption(input.surveys.at(-1)?.inHand.survey.name ?? '') },
  );
}

function shareCell({ shareAtLeast }: SizesAnswer, language: Language): string {
  if (shareAtLeast === null) return '–';
  const interval = shareAtLeast.interval;
  if (interval === null) return formatShare(shareAtLeast.share);
  const ends = formatInterval([interval[0] * 100, interval[1] * 100], 2, language);
  return `${formatShare(shareAtLeast.share)} (${ends})`;
}

function notes(answers: readonly SizesAnswer[], input: ReportInput, language: Language): string[] {
  const { sizes } = reportPhrases(language);
  const nameOf = speciesNames(input.species);
  const byName = new Map(input.species.map((species) => [species.id, species.name]));
  const bySource = Map.groupBy(input.sizeLimits, (limit) => limit.source);
  const limits = [...bySource].map(([source, own]) => {
    const told = own.map(({ speciesId, minimumMm }) => {
      const { label } = nameOf(byName.get(speciesId) ?? sizes.notListed);
      return `${label} ${formatShort(minimumMm, language)} mm`;
    });
    return sizes.limits(source, told.join(', '));
  });
  const borrowed = answers
    .filter((answer) => answer.borrowedAnimals > 0 && answer.animals > 0)
    .map((answer) => {
      const [some, all] = [formatCount(answer.borrowedAnimals), formatCount(answer.animals)];
      return sizes.borrowed(nameOf(answer.species).label, some, all);
    });
  const none = answers
    .filter((answer) => answer.measured === 0 || answer.reason !== null)
    .map((answer) =>
      sizes.noteOf(
        nameOf(answer.species).label,
        answer.reason === null
          ? sizesInWords(answer, language)
          : sentenceOnPaper(language, inPeoplesWords(answer.reason, nameOf)),
      ),
    );
  return [...limits, ...borrowed, ...none];
}

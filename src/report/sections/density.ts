/** Densities: all species over the whole surveyed area, then each species stratum by stratum. */

import type { DensityAnswer } from '../../estimates/answers.ts';
import { densityPhrases } from '../catalogue/density-phrases.ts';
import type { Language } from '../catalogue/language.ts';
import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type DensityTableWords, densityTable } from '../density-table.ts';
import { type BandRow, fadingBands, fewAnimalsExplained } from '../fading-band.ts';
import { bothWidths, figure, heading, paragraph, phoneWidth, section } from '../html.ts';
import { formatShort } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';

export function densitySection(input: ReportInput, survey: ReportSurvey, drawing: Drawing): string {
  const { density, heads } = reportPhrases(drawing.language);
  const nameOf = speciesNames(input.species);
  const answers = sortBySpecies(survey.densityBySurvey, input);
  const rows = answers.map((answer): BandRow => {
    const { label, scientific } = nameOf(answer.species);
    return { label, note: scientific, answer };
  });
  const inWords = density.wholeInWords(answers.length);
  const whole = figure(
    bothWidths((width, kind) => fadingBands(rows, { ...drawing, width, name: `whole-${kind}`, inWords })),
    [densityPhrases(drawing.language).bandsExplained, fewAnimalsExplained(rows, drawing.language)]
      .filter((words) => words !== '')
      .join(' '),
  );
  const words = {
    speciesLabel: (answer) => nameOf(answer.species).label,
    confidence: input.settings.confidence,
    language: drawing.language,
  } satisfies Partial<DensityTableWords>;
  const table = densityTable(answers, {
    ...words,
    caption: density.whole(survey.inHand.survey.name),
    head: heads.species,
    label: words.speciesLabel,
    bySpecies: false,
  });
  return section('density', reportWords(drawing.language).density, [
    whole,
    table,
    ...byStratum(input, survey, { drawing, words, saidAbove: fewAnimalsExplained(rows) !== '' }),
  ]);
}

interface Given {
  readonly drawing: Drawing;
  /** Whether the sentence on few animals stands under the first figure already. */
  readonly saidAbove: boolean;
  readonly words: Pick<DensityTableWords, 'speciesLabel' | 'confidence' | 'language'>;
}

/** A small figure for each species, then one table of all of them. */
function byStratum(input: ReportInput, survey: ReportSurvey, { drawing, words, saidAbove }: Given): string[] {
  const { density, heads } = reportPhrases(drawing.language);
  const nameOf = speciesNames(input.species);
  const order = survey.strata.map((stratum) => stratum.name);
  const answers = sortBySpecies(
    survey.densityByStratum.toSorted((a, b) => order.indexOf(a.scope.name) - order.indexOf(b.scope.name)),
    input,
  );
  if (answers.length === 0) return [];
  const groups = [...Map.groupBy(answers, (answer) => answer.species)].map(([species, own]) => {
    const rows = own.map((answer): BandRow => {
      const area =
        answer.areaHa === null ? density.areaUnknown : `${formatShort(answer.areaHa, words.language)} ha`;
      return { label: answer.scope.name, note: area, answer };
    });
    const inWords = density.speciesInWords(fullName(nameOf(species)), own.length);
    return { species, inWords, rows };
  });
  const figures = groups.map(({ species, ...group }, i) =>
    smallBands(nameMarkup(nameOf(species)), { ...group, name: `species-${i + 1}` }, drawing),
  );
  const table = densityTable(answers, {
    ...words,
    caption: density.byStratum(survey.inHand.survey.name),
    head: heads.stratum,
    label: (answer) => answer.scope.name,
    bySpecies: true,
  });
  return [
    heading(3, density.stratumByStratum),
    ...(saidAbove
      ? []
      : fewAnimalsOnce(
          groups.flatMap((group) => group.rows),
          words.language,
        )),
    `<div class="pairs">${figures.join('\n')}</div>`,
    table,
    ...upperEnds(answers, survey.densityBySurvey, words.language),
  ];
}

/** Said only where a reader would see it: more animals at most in one stratum than in all of them. */
function upperEnds(
  byOne: readonly DensityAnswer[],
  whole: readonly DensityAnswer[],
  language: Language,
): string[] {
  const most = new Map(whole.map(({ species, totalInterval }) => [species, totalInterval?.[1] ?? Infinity]));
  const isSeen = byOne.some(
    ({ species, totalInterval, animals }) =>
      animals > 0 && (totalInterval?.[1] ?? 0) > (most.get(species) ?? Infinity),
  );
  return isSeen ? [paragraph(densityPhrases(language).upperEnds, 'quiet')] : [];
}

interface SmallBands {
  readonly name: string;
  readonly inWords: string;
  readonly rows: readonly BandRow[];
}

/** Bands at the width of a phone, two beside each other on a sheet. */
export function smallBands(title: string, { rows, ...frame }: SmallBands, drawing: Drawing): string {
  return `<figure><h4>${title}</h4>${fadingBands(rows, { ...drawing, ...frame, width: phoneWidth })}</figure>`;
}

/** The sentence on few animals, for several figures together. */
export function fewAnimalsOnce(rows: readonly BandRow[], language: Language): string[] {
  const words = fewAnimalsExplained(rows, language);
  return words === '' ? [] : [paragraph(words, 'quiet')];
}

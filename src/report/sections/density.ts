/** Densities: all species over the whole surveyed area, then each species stratum by stratum. */

import { reportWords } from '../catalogue/report-words.ts';
import { type DensityTableWords, densityTable } from '../density-table.ts';
import { type BandRow, bandsExplained, fadingBands, fewAnimalsExplained } from '../fading-band.ts';
import { bothWidths, figure, heading, paragraph, phoneWidth, section } from '../html.ts';
import { formatShort } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';

export function densitySection(input: ReportInput, survey: ReportSurvey, drawing: Drawing): string {
  const nameOf = speciesNames(input.species);
  const answers = sortBySpecies(survey.densityBySurvey, input);
  const rows = answers.map((answer): BandRow => {
    const { label, scientific } = nameOf(answer.species);
    return { label, note: scientific, answer };
  });
  const inWords = `Densities over the whole surveyed area, ${answers.length} species`;
  const whole = figure(
    bothWidths((width, kind) => fadingBands(rows, { ...drawing, width, name: `whole-${kind}`, inWords })),
    [bandsExplained, fewAnimalsExplained(rows)].filter((words) => words !== '').join(' '),
  );
  const words = {
    speciesLabel: (answer) => nameOf(answer.species).label,
    confidence: input.settings.confidence,
    language: drawing.language,
  } satisfies Partial<DensityTableWords>;
  const table = densityTable(answers, {
    ...words,
    caption: `Whole surveyed area, ${survey.inHand.survey.name}`,
    head: 'Species',
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
  const nameOf = speciesNames(input.species);
  const order = survey.strata.map((stratum) => stratum.name);
  const answers = sortBySpecies(
    survey.densityByStratum.toSorted((a, b) => order.indexOf(a.scope.name) - order.indexOf(b.scope.name)),
    input,
  );
  if (answers.length === 0) return [];
  const groups = [...Map.groupBy(answers, (answer) => answer.species)].map(([species, own]) => {
    const rows = own.map((answer): BandRow => {
      const area = answer.areaHa === null ? 'area not known' : `${formatShort(answer.areaHa)} ha`;
      return { label: answer.scope.name, note: area, answer };
    });
    const inWords = `${fullName(nameOf(species))}: densities in ${own.length} strata`;
    return { species, inWords, rows };
  });
  const figures = groups.map(({ species, ...group }, i) =>
    smallBands(nameMarkup(nameOf(species)), { ...group, name: `species-${i + 1}` }, drawing),
  );
  const table = densityTable(answers, {
    ...words,
    caption: `By stratum, ${survey.inHand.survey.name}`,
    head: 'Stratum',
    label: (answer) => answer.scope.name,
    bySpecies: true,
  });
  return [
    heading(3, 'Stratum by stratum'),
    ...(saidAbove ? [] : fewAnimalsOnce(groups.flatMap((group) => group.rows))),
    `<div class="pairs">${figures.join('\n')}</div>`,
    table,
  ];
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
export function fewAnimalsOnce(rows: readonly BandRow[]): string[] {
  const words = fewAnimalsExplained(rows);
  return words === '' ? [] : [paragraph(words, 'quiet')];
}

/** Densities: all species over the whole surveyed area, then each species stratum by stratum. */

import type { DensityAnswer } from '../../estimates/answers.ts';
import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { densityTable } from '../density-table.ts';
import { type BandRow, bandsExplained, fadingBands } from '../fading-band.ts';
import { bothWidths, figure, section } from '../html.ts';
import { formatShort } from '../numbers.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { fullName, sortBySpecies, speciesNames } from '../species-names.ts';
import { nameMarkup } from './answer.ts';

export function densitySection(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const nameOf = speciesNames(input.species);
  const answers = sortBySpecies(survey.densityBySurvey, input);
  const rows = answers.map((answer): BandRow => {
    const { label, scientific } = nameOf(answer.species);
    return { label, note: scientific, answer };
  });
  const whole = bandFigure(
    rows,
    { name: 'whole', inWords: `Densities over the whole surveyed area, ${answers.length} species`, language },
    bandsExplained,
  );
  const table = densityTable(answers, {
    caption: `Whole surveyed area, ${survey.inHand.survey.name}`,
    head: 'Species',
    label: (answer) => fullName(nameOf(answer.species)),
    shortLabel: (answer) => nameOf(answer.species).label,
    confidence: input.settings.confidence,
    language,
  });
  const bySpecies = answers.map((answer, i) => speciesBlock(answer, i, { input, survey, language }));
  return section('density', reportWords(language).density, [whole, table, ...bySpecies]);
}

interface Context {
  readonly input: ReportInput;
  readonly survey: ReportSurvey;
  readonly language: Language;
}

function speciesBlock(whole: DensityAnswer, index: number, { input, survey, language }: Context): string {
  const name = speciesNames(input.species)(whole.species);
  const order = survey.strata.map((stratum) => stratum.name);
  const strata = survey.densityByStratum
    .filter((answer) => answer.species === whole.species)
    .toSorted((a, b) => order.indexOf(a.scope.name) - order.indexOf(b.scope.name));
  if (strata.length === 0) return '';
  const rows = strata.map(
    (answer): BandRow => ({ label: answer.scope.name, note: areaNote(answer), answer }),
  );
  const inWords = `${fullName(name)}: densities in ${strata.length} strata`;
  const table = densityTable([...strata, whole], {
    caption: `${fullName(name)}, by stratum`,
    head: 'Stratum',
    label: scopeLabel,
    shortLabel: scopeLabel,
    confidence: input.settings.confidence,
    language,
  });
  const drawn = bandFigure(rows, { name: `species-${index + 1}`, inWords, language });
  return `<h3>${nameMarkup(name)}</h3>\n${drawn}\n${table}`;
}

function scopeLabel({ scope }: DensityAnswer): string {
  return scope.by === 'survey' ? 'Whole surveyed area' : scope.name;
}

function areaNote(answer: DensityAnswer): string {
  return answer.areaHa === null ? 'area not known' : `${formatShort(answer.areaHa)} ha`;
}

export function bandFigure(
  rows: readonly BandRow[],
  frame: { readonly name: string; readonly inWords: string; readonly language: Language },
  caption = '',
): string {
  const draw = (width: number, kind: string) =>
    fadingBands(rows, { ...frame, width, name: `${frame.name}-${kind}` });
  return figure(bothWidths(draw), caption);
}

/** What may be taken? Options, and only where somebody chose rates; the decision is the manager's. */

import type { HarvestAnswer } from '../../../estimates/harvest/harvest-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { harvestWords } from '../../catalogue/harvest-words.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { closureSentence } from '../../harvest-lines.ts';
import { formatTonnes, percent } from '../../harvest-option-lines.ts';
import { closureStep, harvestSteps } from '../../harvest-steps.ts';
import { heading, list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { details, ended } from './words-of-advice.ts';

const example = '--rate "0.05: source" --rate "0.1: source" --rate "0.2: source"';

export function takenSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const { harvest, rates } = advice;
  const able = harvest.filter(({ catches }) => catches.length > 0);
  const first =
    rates === 0
      ? words.noCatch(example)
      : able.length === 0 && rates < 3
        ? words.fewRates
        : words.catchAnswer(able.length, harvest.length);
  return section('taken', words.take, [
    paragraph(first),
    paragraph(words.decision),
    ...harvest.flatMap((answer) => oneSpecies(input, answer, language)),
    ...(harvest.length === 0 ? [] : [paragraph(harvestWords.sampledOnly, 'quiet')]),
  ]);
}

function oneSpecies(input: ReportInput, answer: HarvestAnswer, language: Language): string[] {
  const nameOf = speciesNames(input.species);
  const { catches, closure, reason, cautions } = answer;
  const notes = [...new Set(cautions.map((one) => ended(sentence(language, one))))];
  return [
    heading(3, nameOf(answer.species!).label),
    ...(closure === null ? [] : [paragraph(closureSentence(closure))]),
    ...(reason === null ? [] : [paragraph(ended(sentence(language, inPeoplesWords(reason, nameOf))))]),
    ...(catches.length === 0 ? [] : [catchTable(answer)]),
    ...(notes.length === 0 ? [] : [`<div class="quiet notes">${list(notes)}</div>`]),
    ...(answer.stock === null
      ? []
      : [
          details(adviceWords(language).steps, [
            ...harvestSteps(answer),
            ...(closure === null ? [] : closureStep(closure)),
          ]),
        ]),
  ];
}

function catchTable({ catches, closure }: HarvestAnswer): string {
  return htmlTable(
    [
      { head: 'Rate a year', cell: ({ rate }) => percent(rate), number: true },
      { head: 'Animals', cell: ({ animals }) => formatCount(animals), number: true },
      { head: 'Tonnes', cell: ({ tonnes }) => (tonnes === null ? '–' : formatTonnes(tonnes)), number: true },
      { head: 'Of the whole stock', cell: ({ shareOfStock }) => percent(shareOfStock), number: true },
      { head: 'Source of the rate', cell: ({ source }) => source },
    ],
    catches,
    {
      caption: closure?.closed ? harvestWords.closedTable : 'Catch a year, from the lower limit',
      slim: true,
    },
  );
}

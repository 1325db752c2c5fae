/** What may be taken? Options, and only where somebody chose rates; the decision is the manager's. */

import type { HarvestAnswer } from '../../../estimates/harvest/harvest-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
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
    ...(harvest.length === 0 ? [] : [paragraph(harvestPhrases(language).sampledOnly, 'quiet')]),
  ]);
}

function oneSpecies(input: ReportInput, answer: HarvestAnswer, language: Language): string[] {
  const nameOf = speciesNames(input.species);
  const { catches, closure, reason, cautions } = answer;
  const notes = [...new Set(cautions.map((one) => ended(sentence(language, one))))];
  return [
    heading(3, nameOf(answer.species!).label),
    ...(closure === null ? [] : [paragraph(closureSentence(closure, language))]),
    ...(reason === null ? [] : [paragraph(ended(sentence(language, inPeoplesWords(reason, nameOf))))]),
    ...(catches.length === 0 ? [] : [catchTable(answer, language)]),
    ...(notes.length === 0 ? [] : [`<div class="quiet notes">${list(notes)}</div>`]),
    ...(answer.stock === null
      ? []
      : [
          details(adviceWords(language).steps, [
            ...harvestSteps(answer, language),
            ...(closure === null ? [] : closureStep(closure, language)),
          ]),
        ]),
  ];
}

function catchTable({ catches, closure }: HarvestAnswer, language: Language): string {
  const words = harvestPhrases(language);
  const { heads } = words;
  return htmlTable(
    [
      { head: heads.rate, cell: ({ rate }) => percent(rate, language), number: true },
      {
        head: reportPhrases(language).heads.animals,
        cell: ({ animals }) => formatCount(animals),
        number: true,
      },
      {
        head: heads.tonnes,
        cell: ({ tonnes }) => (tonnes === null ? '–' : formatTonnes(tonnes, language)),
        number: true,
      },
      { head: heads.ofStock, cell: ({ shareOfStock }) => percent(shareOfStock, language), number: true },
      { head: heads.source, cell: ({ source }) => source },
    ],
    catches,
    {
      caption: closure?.closed ? words.closedCaption : words.caption,
      slim: true,
    },
  );
}

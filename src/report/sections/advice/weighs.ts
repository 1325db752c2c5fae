/** How much does it weigh? Biomass by stratum, with the weights it rests on. */

import type { BiomassAnswer } from '../../../estimates/biomass/biomass-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import type { Language } from '../../catalogue/sentence.ts';
import { weightPhrases } from '../../catalogue/weight-phrases.ts';
import { paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { nameInSentence, speciesNames } from '../../species-names.ts';
import { weightOrigins } from './weight-origins.ts';

export function weighsSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const { biomass } = advice;
  const origins = weightOrigins(biomass, { nameOf, language });
  const known = biomass.filter(({ totalKg }) => totalKg !== null && totalKg > 0);
  const largest = known.toSorted((a, b) => b.totalKg! - a.totalKg!)[0];
  if (largest === undefined) return section('weight', words.weighs, [paragraph(words.noWeights), ...origins]);
  const ranges = biomass.filter((one) => one.totalKg === null && one.totalIntervalKg !== null).length;
  const rows = known.flatMap((one) => [
    ...advice.biomassByStratum.filter((part) => part.species === one.species && part.animals > 0),
    one,
  ]);
  const phrases = weightPhrases(language);
  const most = phrases.largest(
    nameInSentence(nameOf(largest.species)),
    tonnes(largest.totalKg, language),
    interval(largest, language),
    phrases.states[largest.state],
  );
  const labelled = rows.map((one) => ({ ...one, species: nameOf(one.species).label }));
  return section('weight', words.weighs, [
    paragraph(words.weightAnswer(known.length, biomass.length, ranges, most)),
    table(labelled, input.settings.confidence, language),
    paragraph(words.weightLimits, 'quiet'),
    ...origins,
  ]);
}

function tonnes(kg: number | null, language: Language): string {
  return kg === null ? '–' : formatSignificant(kg / 1000, 3, language);
}

function interval({ totalIntervalKg }: BiomassAnswer, language: Language): string {
  return totalIntervalKg === null
    ? '–'
    : formatInterval([totalIntervalKg[0] / 1000, totalIntervalKg[1] / 1000], 2, language);
}

function table(rows: readonly BiomassAnswer[], confidence: number, language: Language): string {
  const phrases = weightPhrases(language);
  const { heads } = phrases;
  const orDash = (value: number | null) => (value === null ? '–' : formatSignificant(value, 3, language));
  return htmlTable(
    [
      { head: heads.where, cell: ({ scope }) => (scope.by === 'survey' ? phrases.allStrata : scope.name) },
      {
        head: reportPhrases(language).heads.stations,
        cell: ({ stations }) => formatCount(stations),
        number: true,
      },
      {
        head: heads.measured,
        cell: ({ measured, animals }) => phrases.someOf(formatCount(measured), formatCount(animals)),
        number: true,
      },
      { head: heads.meanG, cell: ({ meanWeightG }) => orDash(meanWeightG), number: true },
      { head: heads.kgPerHa, cell: ({ kgPerHa }) => orDash(kgPerHa), number: true },
      { head: heads.tonnes, cell: ({ totalKg }) => tonnes(totalKg, language), number: true },
      {
        head: heads.interval(formatShare(confidence)),
        cell: (one) => interval(one, language),
        number: true,
      },
    ],
    rows,
    {
      caption: phrases.caption,
      group: ({ species, state }) => `${species}, ${phrases.states[state]}`,
      strong: ({ scope }) => scope.by === 'survey',
    },
  );
}

/** How much does it weigh? Biomass by stratum, with the weights it rests on. */

import type { BiomassAnswer } from '../../../estimates/biomass/biomass-answer.ts';
import { basisLines, biomassNotes } from '../../biomass-lines.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import type { Language } from '../../catalogue/sentence.ts';
import { list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { speciesNames } from '../../species-names.ts';

export function weighsSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const label = (answers: readonly BiomassAnswer[]) =>
    answers.map((one) => ({ ...one, species: nameOf(one.species).label }));
  const whole = label(advice.biomass);
  const known = whole.filter(({ totalKg }) => totalKg !== null && totalKg > 0);
  const largest = known.toSorted((a, b) => b.totalKg! - a.totalKg!)[0];
  const fits = advice.fits.map((one) => ({ ...one, species: nameOf(one.species).label }));
  const said = [...basisLines(whole, fits).slice(2), ...biomassNotes(whole)].filter((text) => text !== '');
  const notes =
    said.length === 0 ? [] : [`<div class="quiet notes">${list(said.map((text) => text.trim()))}</div>`];
  if (largest === undefined) return section('weight', words.weighs, [paragraph(words.noWeights), ...notes]);
  const rows = known.flatMap((one) => [
    ...label(advice.biomassByStratum).filter((part) => part.species === one.species && part.animals > 0),
    one,
  ]);
  const most = `${largest.species}, ${tonnes(largest.totalKg)} t (${interval(largest)} t), ${largest.state}`;
  return section('weight', words.weighs, [
    paragraph(words.weightAnswer(known.length, whole.length, most)),
    table(rows, input.settings.confidence),
    paragraph(words.weightLimits, 'quiet'),
    ...notes,
  ]);
}

export function tonnes(kg: number | null): string {
  return kg === null ? '–' : formatSignificant(kg / 1000);
}

function interval({ totalIntervalKg }: BiomassAnswer): string {
  return totalIntervalKg === null
    ? '–'
    : formatInterval([totalIntervalKg[0] / 1000, totalIntervalKg[1] / 1000]);
}

function table(rows: readonly BiomassAnswer[], confidence: number): string {
  const orDash = (value: number | null) => (value === null ? '–' : formatSignificant(value));
  return htmlTable(
    [
      { head: 'Where', cell: ({ scope }) => (scope.by === 'survey' ? 'All sampled strata' : scope.name) },
      { head: 'Stations', cell: ({ stations }) => formatCount(stations), number: true },
      {
        head: 'Measured of animals',
        cell: ({ measured, animals }) => `${formatCount(measured)} of ${formatCount(animals)}`,
        number: true,
      },
      { head: 'Mean weight, g', cell: ({ meanWeightG }) => orDash(meanWeightG), number: true },
      { head: 'kg per ha', cell: ({ kgPerHa }) => orDash(kgPerHa), number: true },
      { head: 'Tonnes', cell: ({ totalKg }) => tonnes(totalKg), number: true },
      { head: `${formatShare(confidence)} interval`, cell: interval, number: true },
    ],
    rows,
    {
      caption: 'Weight by stratum',
      group: ({ species, state }) => `${species}, ${state}`,
      strong: ({ scope }) => scope.by === 'survey',
    },
  );
}

/** Does it stand? Answers that rest on one station in words, the rest as a table. */

import type { SensitivityAnswer } from '../../../estimates/sensitivity/sensitivity-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatShare, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { sensitivitySentences } from '../../sensitivity-lines.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { ended, names } from './words-of-advice.ts';

export function standsSection(input: ReportInput, { sensitivity }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const label = ({ density }: SensitivityAnswer) => nameOf(density.species).label;
  const tried = sensitivity.filter(({ verdict }) => verdict !== null);
  if (tried.length === 0) return section('stands', words.stands, [paragraph(words.nothingToTry)]);
  const having = (verdict: string) => tried.filter((one) => one.verdict === verdict);
  const rest = tried.filter((one) => one.verdict !== 'rests');
  const without = sensitivity
    .filter(({ reason }) => reason !== null)
    .map((one) => ended(`${label(one)}: ${sentence(language, inPeoplesWords(one.reason!, nameOf))}`));
  return section('stands', words.stands, [
    paragraph(
      words.standsAnswer(
        tried.length,
        names(having('rests').map(label), words.none),
        names(having('leans').map(label), words.none),
      ),
    ),
    list(having('rests').map((one) => `${label(one)}: ${sensitivitySentences(one)[0]}`)),
    ...(rest.length === 0 ? [] : [table(rest, label)]),
    ...(without.length === 0 ? [] : [`<div class="quiet notes">${list(without)}</div>`]),
  ]);
}

function table(rows: readonly SensitivityAnswer[], label: (one: SensitivityAnswer) => string): string {
  const perHa = (value: number | null | undefined) =>
    value === null || value === undefined ? '–' : formatSignificant(value);
  return htmlTable(
    [
      { head: 'Species', cell: label },
      { head: 'Verdict', cell: ({ verdict }) => (verdict === 'leans' ? 'leans on one station' : 'stands') },
      { head: 'Per ha', cell: ({ density }) => perHa(density.densityPerHa), number: true },
      { head: 'Least without one', cell: ({ lowest }) => perHa(lowest?.densityPerHa), number: true },
      { head: 'Most without one', cell: ({ highest }) => perHa(highest?.densityPerHa), number: true },
      { head: 'Station that moves it most', cell: ({ stations }) => stations[0]?.station ?? '–' },
      {
        head: 'Its share of the animals',
        cell: ({ stations }) => (stations[0] === undefined ? '–' : formatShare(stations[0].shareOfAnimals)),
        number: true,
      },
    ],
    rows,
    { caption: 'One station left out at a time' },
  );
}

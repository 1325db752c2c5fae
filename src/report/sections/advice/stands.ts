/** Does it stand? Answers that rest on one station in words, the rest as a table. */

import type { SensitivityAnswer } from '../../../estimates/sensitivity/sensitivity-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { sensitivityPhrases } from '../../catalogue/sensitivity-phrases.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatShare, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { standingSentence } from '../../sensitivity-lines.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { ended, names } from './words-of-advice.ts';

export function standsSection(input: ReportInput, { sensitivity }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const { colon } = changePhrases(language);
  const label = ({ density }: SensitivityAnswer) => nameOf(density.species).label;
  const tried = sensitivity.filter(({ verdict }) => verdict !== null);
  if (tried.length === 0) return section('stands', words.stands, [paragraph(words.nothingToTry)]);
  const having = (verdict: string) => tried.filter((one) => one.verdict === verdict);
  const rest = tried.filter((one) => one.verdict !== 'rests');
  const without = sensitivity
    .filter(({ reason }) => reason !== null)
    .map((one) => ended(colon(label(one), sentence(language, inPeoplesWords(one.reason!, nameOf)))));
  return section('stands', words.stands, [
    paragraph(
      words.standsAnswer(
        tried.length,
        names(having('rests').map(label), words.none),
        names(having('leans').map(label), words.none),
      ),
    ),
    list(having('rests').map((one) => colon(label(one), standingSentence(one, language)))),
    ...(rest.length === 0 ? [] : [table(rest, label, language)]),
    ...(without.length === 0 ? [] : [`<div class="quiet notes">${list(without)}</div>`]),
  ]);
}

function table(
  rows: readonly SensitivityAnswer[],
  label: (one: SensitivityAnswer) => string,
  language: Language,
): string {
  const words = sensitivityPhrases(language);
  const { heads } = words;
  const perHa = (value: number | null | undefined) =>
    value === null || value === undefined ? '–' : formatSignificant(value, 3, language);
  return htmlTable(
    [
      { head: reportPhrases(language).heads.species, cell: label },
      {
        head: heads.verdict,
        cell: ({ verdict }) => (verdict === 'leans' ? words.leansCell : words.standsCell),
      },
      { head: heads.perHa, cell: ({ density }) => perHa(density.densityPerHa), number: true },
      { head: heads.least, cell: ({ lowest }) => perHa(lowest?.densityPerHa), number: true },
      { head: heads.most, cell: ({ highest }) => perHa(highest?.densityPerHa), number: true },
      { head: heads.station, cell: ({ stations }) => stations[0]?.station ?? '–' },
      {
        head: heads.share,
        cell: ({ stations }) => (stations[0] === undefined ? '–' : formatShare(stations[0].shareOfAnimals)),
        number: true,
      },
    ],
    rows,
    { caption: words.caption },
  );
}

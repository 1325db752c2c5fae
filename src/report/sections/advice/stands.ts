/** Does it stand? What a verdict means is said once; the numbers behind each stand in one table. */

import type {
  SensitivityAnswer,
  StationInfluence,
} from '../../../estimates/sensitivity/sensitivity-answer.ts';
import type { Reason } from '../../../survey/message.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { sensitivityPhrases } from '../../catalogue/sensitivity-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { groupedNotes } from '../../grouped-notes.ts';
import { list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatShare, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { changeInWords } from '../../sensitivity-lines.ts';
import { nameInSentence, speciesNames } from '../../species-names.ts';
import { names } from './words-of-advice.ts';

export function standsSection(input: ReportInput, { sensitivity }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const label = ({ density }: SensitivityAnswer) => nameOf(density.species).label;
  const tried = sensitivity.filter(({ verdict }) => verdict !== null);
  if (tried.length === 0) return section('stands', words.stands, [paragraph(words.nothingToTry)]);
  const having = (verdict: string) =>
    tried.filter((one) => one.verdict === verdict).map((one) => nameInSentence(nameOf(one.density.species)));
  const rows = sensitivity.map(({ density, reason }) => ({
    species: density.species,
    scope: '',
    reasons: reason === null ? [] : [reason],
  }));
  const say = (reason: Reason) => sentenceOnPaper(language, reason);
  const without = groupedNotes(rows, { nameOf, language, say });
  const phrases = sensitivityPhrases(language);
  return section('stands', words.stands, [
    paragraph(
      words.standsAnswer(
        tried.length,
        names(having('rests'), words.none),
        names(having('leans'), words.none),
      ),
    ),
    paragraph(phrases.explained, 'quiet'),
    table(tried, label, language),
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
  const verdicts = { rests: words.restsCell, leans: words.leansCell, stands: words.standsCell };
  const perHa = (value: number | null | undefined) =>
    value === null || value === undefined ? '–' : formatSignificant(value, 3, language);
  const ofMost = (say: (most: StationInfluence) => string) => (one: SensitivityAnswer) =>
    one.stations[0] === undefined ? '–' : say(one.stations[0]);
  return htmlTable(
    [
      { head: reportPhrases(language).heads.species, cell: label },
      { head: heads.verdict, cell: ({ verdict }) => verdicts[verdict!] },
      { head: heads.animals, cell: ({ density }) => formatCount(density.animals), number: true },
      { head: heads.perHa, cell: ({ density }) => perHa(density.densityPerHa), number: true },
      { head: heads.least, cell: ({ lowest }) => perHa(lowest?.densityPerHa), number: true },
      { head: heads.most, cell: ({ highest }) => perHa(highest?.densityPerHa), number: true },
      { head: heads.station, cell: ofMost(({ station, stratum }) => words.stationIn(station, stratum)) },
      {
        head: heads.share,
        cell: ofMost((most) => words.ofAll(formatCount(most.animals), formatShare(most.shareOfAnimals))),
        number: true,
      },
      { head: heads.change, cell: ofMost(({ change }) => changeInWords(change, language)), number: true },
    ],
    rows,
    { caption: words.caption },
  );
}

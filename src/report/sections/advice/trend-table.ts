/** Over all surveys: which species fall or rise, then percent a year of each with its interval and its surveys. */

import type { Reason } from '../../../survey/message.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { groupedNotes } from '../../grouped-notes.ts';
import { list, paragraph } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatShare } from '../../numbers.ts';
import { nameInSentence, type SpeciesName } from '../../species-names.ts';
import { percentPerYear, type TrendToSay } from '../../trend-lines.ts';
import { names } from './words-of-advice.ts';

interface Naming {
  readonly nameOf: (species: string) => SpeciesName;
  readonly confidence: number;
  readonly language: Language;
}

export function trendOf(answers: readonly TrendToSay[], naming: Naming): readonly string[] {
  const { nameOf, language } = naming;
  const words = changePhrases(language);
  const { none } = adviceWords(language);
  const telling = (told: TrendToSay['told']) =>
    names(
      answers.filter((one) => one.told === told).map(({ species }) => nameInSentence(nameOf(species))),
      none,
    );
  return [
    paragraph(
      words.sides(words.theTrend, [
        [words.falling, telling('falling')],
        [words.rising, telling('rising')],
        [words.trendCannotTell, telling('cannot tell')],
      ]),
    ),
    ...over(answers, language),
    ...(answers.some(({ trend }) => trend !== null) ? [table(answers, naming)] : []),
    ...notes(answers, naming),
  ];
}

/** The surveys and strata once, where they are the same for all. */
function over(answers: readonly TrendToSay[], language: Language): readonly string[] {
  const all = answers.filter(({ trend }) => trend !== null);
  return [...Map.groupBy(all, ({ strata }) => strata.join(', '))].map(([strata, those]) =>
    paragraph(changePhrases(language).trendOver(`${those[0]!.surveys.length}`, strata), 'quiet'),
  );
}

function table(answers: readonly TrendToSay[], { nameOf, confidence, language }: Naming): string {
  const words = changePhrases(language);
  const told = { falling: words.falling, rising: words.rising, 'cannot tell': words.trendCannotTell };
  const said = (percent: number) => percentPerYear(percent, language);
  return htmlTable<TrendToSay>(
    [
      { head: reportPhrases(language).heads.species, cell: ({ species }) => nameOf(species).label },
      {
        head: words.heads.perYear,
        cell: ({ trend }) => (trend === null ? '–' : said(trend.percentPerYear)),
        number: true,
      },
      {
        head: words.heads.interval(formatShare(confidence)),
        cell: ({ trend }) => (trend === null ? '–' : trend.intervalPercent.map(said).join(words.to)),
        number: true,
      },
      { head: words.heads.told, cell: (one) => (one.told === null ? '–' : told[one.told]) },
      {
        head: words.heads.onTheLine,
        cell: ({ surveys }) =>
          words.someOf(`${surveys.filter((one) => one.onTheLine).length}`, `${surveys.length}`),
        number: true,
      },
    ],
    answers.filter(({ trend }) => trend !== null),
    { caption: words.trendCaption, slim: true },
  );
}

function notes(answers: readonly TrendToSay[], { nameOf, language }: Naming): readonly string[] {
  const rows = answers.map(({ species, reason, cautions }) => ({
    species,
    scope: '',
    reasons: [reason, ...cautions].filter((one) => one !== null),
  }));
  const say = (reason: Reason) => sentenceOnPaper(language, reason);
  const lines = groupedNotes(rows, { nameOf, language, say });
  return lines.length === 0 ? [] : [`<div class="quiet notes">${list(lines)}</div>`];
}

/** Is it more or less than before? Against the survey before, then over all of them. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { changeInNumbers, toldInWords, whatItTakesInWords } from '../../catalogue/change-sentences.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { reportWords } from '../../catalogue/report-words.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { bothWidths, figure, heading, list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatShare, formatSignificant } from '../../numbers.ts';
import type { Drawing } from '../../plot-figure.ts';
import { ratioBands } from '../../ratio-bands.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, nameInSentence, sortBySpecies, speciesNames } from '../../species-names.ts';
import { overTime } from '../over-time.ts';
import { trendOf } from './trend-table.ts';
import { capital, ended, names, twoCounted } from './words-of-advice.ts';

export function moreOrLessSection(input: ReportInput, advice: ReportAdvice, drawing: Drawing): string {
  const { language } = drawing;
  const words = adviceWords(language);
  const { change } = advice;
  if (change === null) return section('change', words.moreOrLess, [paragraph(words.oneSurvey)]);
  const nameOf = speciesNames(input.species);
  const { confidence } = input.settings;
  const labelOf = (answer: ChangeAnswer) =>
    answer.scope.by === 'survey'
      ? nameOf(answer.species).label
      : `${nameOf(answer.species).label}, ${answer.scope.name}`;
  const answers = sortBySpecies(change.answers, input);
  const told = (...which: readonly (string | null)[]) =>
    names(
      answers.filter((one) => which.includes(one.told)).map(({ species }) => nameInSentence(nameOf(species))),
      words.none,
    );
  const answer = changePhrases(language).sides(words.told(change.from, change.to), [
    [words.lower, told('lower', 'probably lower')],
    [words.higher, told('higher', 'probably higher')],
    [words.cannotTell, told('cannot tell', null)],
  ]);
  const rows = answers
    .filter((one) => one.belief !== null)
    .map((one) => ({ label: labelOf(one), answer: one }));
  const zones = advice.changeByZone.filter(({ animals }) => animals.from + animals.to > 0);
  const toldOnes = [...answers, ...zones].filter((one) => one.told !== null && one.told !== 'cannot tell');
  const naming = { labelOf, nameOf, confidence, language };
  return section('change', words.moreOrLess, [
    paragraph(answer),
    paragraph(words.verdicts[change.comparability.verdict]),
    ...limits(advice, nameOf, language),
    ...(rows.length === 0
      ? []
      : [
          figure(
            bothWidths((width) =>
              ratioBands(rows, {
                width,
                name: `change-${width}`,
                inWords: answer,
                axis: words.axis,
              }),
            ),
            words.bandsExplained,
          ),
        ]),
    ...(toldOnes.length === 0 ? [] : [list(toldOnes.map((one) => changeSentence(one, naming)))]),
    changeTable([...answers, ...byZone(zones.filter(({ told }) => told !== null))], naming),
    paragraph(changePhrases(language).commonWeights, 'quiet'),
    ...manyComparisons([...answers, ...zones], naming),
    ...silentZones(zones, naming),
    ...zoneCautions(zones, language),
    heading(3, words.trendHead),
    ...(advice.trend.length === 0
      ? [paragraph(words.twoSurveys)]
      : trendOf(advice.trend, { nameOf, confidence, language })),
    paragraph(reportWords(language).surveysCaution, 'quiet'),
    ...overTime(input, drawing),
  ]);
}

interface Naming {
  readonly labelOf: (answer: ChangeAnswer) => string;
  readonly nameOf: ReturnType<typeof speciesNames>;
  readonly confidence: number;
  readonly language: Language;
}

/** What can be told, the numbers, the n, and what it would take. */
function changeSentence(answer: ChangeAnswer, { labelOf, confidence, language }: Naming): string {
  const words = changePhrases(language);
  if (answer.told === null) return '';
  const takes = whatItTakesInWords(answer, language);
  const told = words.toldWith(
    toldInWords(answer.told, confidence, language),
    changeInNumbers(answer, language),
  );
  const n = words.seen(twoCounted(answer, language));
  const head = `${words.colon(labelOf(answer), told)}${words.semicolon}${n}.`;
  return `${head}${takes === '' ? '' : ` ${ended(capital(takes))}`}`;
}

function changeTable(rows: readonly ChangeAnswer[], { nameOf, confidence, language }: Naming): string {
  const phrases = changePhrases(language);
  const { heads } = reportPhrases(language);
  const perHa = (value: number) => formatSignificant(value, 3, language);
  const both = (pair: { readonly from: number; readonly to: number }) =>
    `${formatCount(pair.from)}\u00a0→\u00a0${formatCount(pair.to)}`;
  return htmlTable(
    [
      { head: heads.species, cell: ({ species }) => nameOf(species).label },
      { head: heads.stations, cell: ({ stations }) => both(stations), number: true },
      { head: heads.animals, cell: ({ animals }) => both(animals), number: true },
      {
        head: phrases.heads.perHa,
        cell: ({ densityPerHa: pair }) =>
          pair === null ? '–' : `${perHa(pair.from)}\u00a0→\u00a0${perHa(pair.to)}`,
        number: true,
      },
      {
        head: phrases.heads.told,
        cell: ({ told }) => (told === null ? '' : toldInWords(told, confidence, language)),
      },
      { head: phrases.heads.change, cell: (one) => changeInNumbers(one, language), number: true },
      { head: phrases.heads.halving, cell: (one) => halvingCell(one, language), number: true },
    ],
    rows,
    {
      caption: phrases.caption(formatShare(confidence)),
      across: ({ told, reason }) =>
        told !== null || reason === null
          ? null
          : ended(sentenceOnPaper(language, inPeoplesWords(reason, nameOf))),
      acrossFrom: 4,
      group: ({ scope }) => (scope.by === 'survey' ? phrases.wholeGroup : phrases.zoneGroup(scope.name)),
    },
  );
}

/** The zones one after the other, so that each stands under its own head. */
function byZone(zones: readonly ChangeAnswer[]): readonly ChangeAnswer[] {
  return [...Map.groupBy(zones, ({ scope }) => scope.name).values()].flat();
}

/** Zones of which nothing can be told: each reason once, with its species. */
function silentZones(zones: readonly ChangeAnswer[], { nameOf, language }: Naming): string[] {
  const silent = zones.filter(({ told, reason }) => told === null && reason !== null);
  if (silent.length === 0) return [];
  const { colon } = changePhrases(language);
  const byReason = Map.groupBy(silent, (one) =>
    colon(
      changePhrases(language).zoneGroup(one.scope.name),
      ended(sentenceOnPaper(language, inPeoplesWords(one.reason!, nameOf))),
    ),
  );
  const said = [...byReason].map(
    ([reason, those]) =>
      `${capital(reason).slice(0, -1)} (${those.map((one) => nameInSentence(nameOf(one.species))).join(', ')}).`,
  );
  return [`<div class="quiet notes">${list(said)}</div>`];
}

/** Many comparisons side by side: some are told by luck alone. */
function manyComparisons(all: readonly ChangeAnswer[], { confidence, language }: Naming): string[] {
  const compared = all.filter(({ told }) => told !== null).length;
  const byLuck = Math.round(compared * (1 - confidence));
  if (byLuck < 1) return [];
  const words = changePhrases(language);
  return [paragraph(words.byLuck(formatCount(compared), formatCount(byLuck)), 'quiet')];
}

/** What weakens the answer of a zone, once for all species it holds for. */
function zoneCautions(zones: readonly ChangeAnswer[], language: Language): string[] {
  const { colon, zoneGroup } = changePhrases(language);
  const said = zones
    .filter(({ told }) => told !== null)
    .flatMap(({ scope, cautions }) =>
      cautions.map((one) => colon(zoneGroup(scope.name), ended(sentenceOnPaper(language, one)))),
    );
  return said.length === 0 ? [] : [`<div class="quiet notes">${list([...new Set(said)])}</div>`];
}

function halvingCell(
  { stationsMoreForHalving, neverTold, stationsEachForHalving }: ChangeAnswer,
  language: Language,
): string {
  const words = changePhrases(language);
  const stations = (n: number) => formatSignificant(n, 2, language);
  if (neverTold && stationsEachForHalving !== null) return words.aboutEach(stations(stationsEachForHalving));
  if (stationsMoreForHalving === null) return '–';
  return stationsMoreForHalving === 0
    ? words.theseWouldDo
    : words.aboutMore(stations(stationsMoreForHalving));
}

/** How the two surveys differ, what was dropped, and cautions said once. */
function limits({ change }: ReportAdvice, nameOf: Naming['nameOf'], language: Language): string[] {
  const aspects = change!.comparability.aspects.flatMap(({ reason }) => (reason === null ? [] : [reason]));
  const cautions = change!.answers.flatMap((one) => one.cautions);
  const said = [
    ...new Set(
      [...aspects, ...cautions].map((one) => ended(sentenceOnPaper(language, inPeoplesWords(one, nameOf)))),
    ),
  ];
  const hand = change!.answers.some((one) => one.atTheseStations)
    ? [paragraph(adviceWords(language).handPicked)]
    : [];
  return [...(said.length === 0 ? [] : [`<div class="quiet notes">${list(said)}</div>`]), ...hand];
}

/** Is it more or less than before? Against the survey before, then over all of them. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changeInNumbers, toldInWords, whatItTakesInWords } from '../../catalogue/change-sentences.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { bothWidths, figure, heading, list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatShare, formatSignificant } from '../../numbers.ts';
import { ratioBands } from '../../ratio-bands.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { inPeoplesWords, sortBySpecies, speciesNames } from '../../species-names.ts';
import { trendSentence } from '../../trend-lines.ts';
import { capital, counted, ended, names } from './words-of-advice.ts';

export function moreOrLessSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const { change } = advice;
  if (change === null) return section('change', words.moreOrLess, [paragraph(words.oneSurvey)]);
  const nameOf = speciesNames(input.species);
  const labelOf = (answer: ChangeAnswer) =>
    answer.scope.by === 'survey'
      ? nameOf(answer.species).label
      : `${nameOf(answer.species).label}, ${answer.scope.name}`;
  const answers = sortBySpecies(change.answers, input);
  const told = (...which: readonly (string | null)[]) =>
    names(answers.filter((one) => which.includes(one.told)).map(labelOf), words.none);
  const answer = `${words.told(change.from, change.to)}: ${words.lower}: ${told('lower', 'probably lower')}; ${words.higher}: ${told('higher', 'probably higher')}; ${words.cannotTell}: ${told('cannot tell', null)}.`;
  const rows = answers
    .filter((one) => one.belief !== null)
    .map((one) => ({ label: labelOf(one), answer: one }));
  const zones = advice.changeByZone.filter(({ animals }) => animals.from + animals.to > 0);
  const toldOnes = [...answers, ...zones].filter((one) => one.told !== null && one.told !== 'cannot tell');
  return section('change', words.moreOrLess, [
    paragraph(answer),
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
    ...(toldOnes.length === 0
      ? []
      : [list(toldOnes.map((one) => changeSentence(one, { labelOf, nameOf, input })))]),
    changeTable([...answers, ...zones.filter(({ told }) => told !== null)], { labelOf, nameOf, input }),
    ...silentZones(zones, nameOf),
    paragraph(words.verdicts[change.comparability.verdict]),
    ...limits(advice, language),
    heading(3, words.trendHead),
    ...(advice.trend.length === 0
      ? [paragraph(words.twoSurveys)]
      : [
          paragraph(words.trendExplained, 'quiet'),
          list(
            sortBySpecies(advice.trend, input).map((one) => {
              const label = nameOf(one.species).label;
              const why =
                one.reason === null ? '' : `: ${sentence(language, inPeoplesWords(one.reason, nameOf))}`;
              return ended(`${trendSentence({ ...one, species: label }, input.settings.confidence)}${why}`);
            }),
          ),
        ]),
  ]);
}

interface Naming {
  readonly labelOf: (answer: ChangeAnswer) => string;
  readonly nameOf: ReturnType<typeof speciesNames>;
  readonly input: ReportInput;
}

/** What can be told, the numbers, the n, and what it would take. */
function changeSentence(answer: ChangeAnswer, { labelOf, input }: Naming): string {
  const { told, animals, stations } = answer;
  if (told === null) return '';
  const n = `${counted(animals.from, 'animal')} at ${counted(stations.from, 'station')} before, ${formatCount(animals.to)} at ${formatCount(stations.to)} now`;
  const takes = whatItTakesInWords(answer);
  const head = `${labelOf(answer)}: ${toldInWords(told, input.settings.confidence)}: ${changeInNumbers(answer)}; ${n}.`;
  return `${head}${takes === '' ? '' : ` ${ended(capital(takes))}`}`;
}

function changeTable(rows: readonly ChangeAnswer[], { labelOf, nameOf, input }: Naming): string {
  const { confidence } = input.settings;
  const both = (pair: { readonly from: number; readonly to: number }) =>
    `${formatCount(pair.from)} → ${formatCount(pair.to)}`;
  return htmlTable(
    [
      { head: 'Species', cell: labelOf },
      { head: 'Stations', cell: ({ stations }) => both(stations), number: true },
      { head: 'Animals', cell: ({ animals }) => both(animals), number: true },
      {
        head: 'Per ha',
        cell: ({ densityPerHa: pair }) =>
          pair === null ? '–' : `${formatSignificant(pair.from)} → ${formatSignificant(pair.to)}`,
        number: true,
      },
      { head: 'Told', cell: ({ told }) => (told === null ? '' : toldInWords(told, confidence)) },
      { head: 'Change', cell: (one) => changeInNumbers(one), number: true },
      { head: 'Stations to tell a halving', cell: halvingCell },
    ],
    rows,
    {
      caption: `Change, with its ${formatShare(confidence)} interval`,
      across: ({ told, reason }) =>
        told !== null || reason === null ? null : ended(sentence('en', inPeoplesWords(reason, nameOf))),
      acrossFrom: 4,
    },
  );
}

/** Zones of which nothing can be told: each reason once, with its species. */
function silentZones(zones: readonly ChangeAnswer[], nameOf: Naming['nameOf']): string[] {
  const silent = zones.filter(({ told, reason }) => told === null && reason !== null);
  if (silent.length === 0) return [];
  const byReason = Map.groupBy(
    silent,
    (one) => `${one.scope.name}: ${ended(sentence('en', inPeoplesWords(one.reason!, nameOf)))}`,
  );
  const said = [...byReason].map(
    ([reason, those]) => `${capital(reason)} (${those.map((one) => nameOf(one.species).label).join(', ')})`,
  );
  return [`<div class="quiet notes">${list(said)}</div>`];
}

function halvingCell({ stationsMoreForHalving, neverTold, stationsEachForHalving }: ChangeAnswer): string {
  if (neverTold && stationsEachForHalving !== null)
    return `about ${formatSignificant(stationsEachForHalving, 2)} each time`;
  if (stationsMoreForHalving === null) return '–';
  return stationsMoreForHalving === 0
    ? 'these would do'
    : `about ${formatSignificant(stationsMoreForHalving, 2)} more`;
}

/** How the two surveys differ, what was dropped, and cautions said once. */
function limits({ change }: ReportAdvice, language: Language): string[] {
  const aspects = change!.comparability.aspects.flatMap(({ reason }) => (reason === null ? [] : [reason]));
  const cautions = change!.answers.flatMap((one) => one.cautions);
  const said = [...new Set([...aspects, ...cautions].map((one) => ended(sentence(language, one))))];
  const hand = change!.answers.some((one) => one.atTheseStations)
    ? [paragraph(adviceWords(language).handPicked)]
    : [];
  return [...(said.length === 0 ? [] : [`<div class="quiet notes">${list(said)}</div>`]), ...hand];
}

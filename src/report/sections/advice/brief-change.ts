/** Whether it goes up or down, in a short line: the whole, the zones, and the trend over all surveys. */

import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { briefPhrases } from '../../catalogue/brief-phrases.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { changeInNumbers, changeRange, toldInWords } from '../../catalogue/change-sentences.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { formatCount } from '../../numbers.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { percentPerYear } from '../../trend-lines.ts';
import { type BriefInput, line } from './brief-line.ts';

export function upOrDown(species: string, { input, advice, language }: BriefInput): string {
  const words = briefPhrases(language);
  const { change } = advice;
  if (change === null) return adviceWords(language).oneSurvey;
  const { confidence } = input.settings;
  const nameOf = speciesNames(input.species);
  const whole = change.answers.find((one) => one.species === species);
  const since = whole === undefined ? null : sinceInWords(whole, change.from, { confidence, language });
  const silent =
    whole?.reason == null ? [] : [sentenceOnPaper(language, inPeoplesWords(whole.reason, nameOf))];
  const zones = advice.changeByZone
    .filter((one) => one.species === species && one.told !== null && one.told !== 'cannot tell')
    .map(({ told, ...one }) =>
      words.zoneTold(
        one.scope.name,
        toldInWords(told!, confidence, language),
        changeInNumbers({ told, ...one }, language),
      ),
    );
  const open = whole?.told === 'cannot tell';
  return line(
    [...(since === null ? silent : [since]), ...zones, ...trendOf(species, { advice, language, open })],
    language,
  );
}

function sinceInWords(
  one: ChangeAnswer,
  from: string,
  { confidence, language }: { readonly confidence: number; readonly language: Language },
): string | null {
  if (one.told === null) return null;
  const words = briefPhrases(language);
  const range = one.told === 'cannot tell' ? changeRange(one, language) : null;
  const said =
    range === null
      ? words.since(toldInWords(one.told, confidence, language), from, changeInNumbers(one, language))
      : (range.inTimes ? words.openSinceTimes : words.openSince)(from, range.low, range.high);
  return one.atTheseStations ? words.atStations(said, formatCount(one.pairs)) : said;
}

function trendOf(
  species: string,
  { advice, language, open }: Pick<BriefInput, 'advice' | 'language'> & { readonly open: boolean },
): readonly string[] {
  const words = briefPhrases(language);
  const own = advice.trend.find((one) => one.species === species);
  if (own?.trend == null || own.told === null) return [];
  const surveys = formatCount(own.surveys.filter(({ onTheLine }) => onTheLine).length);
  if (own.told === 'cannot tell') return [open ? words.trendOpen(surveys) : words.trendOpenToo(surveys)];
  const told = changePhrases(language).trendTold[own.told];
  return [words.trend(told, percentPerYear(own.trend.percentPerYear, language), surveys)];
}

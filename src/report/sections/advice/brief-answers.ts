/** The four questions of one species, each in a short line: what a minister or a chief carries away. */

import type { HarvestAnswer } from '../../../estimates/harvest/harvest-answer.ts';
import type { Comparison, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import type { ReasonCode } from '../../../survey/reason-codes.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { briefPhrases } from '../../catalogue/brief-phrases.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { ruleSentences } from '../../harvest-lines.ts';
import { percent } from '../../harvest-option-lines.ts';
import { chanceAndRisk } from '../../harvest-steps.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from '../../numbers.ts';
import { inPeoplesWords, speciesNames } from '../../species-names.ts';
import { sourceWithMark } from '../../status-words.ts';
import { howMuch } from './brief-amount.ts';
import { upOrDown } from './brief-change.ts';
import { type BriefInput, line } from './brief-line.ts';

/** Each question with its line, in the order in which people ask. */
export function briefAnswers(
  species: string,
  given: BriefInput,
): readonly (readonly [question: string, answer: string])[] {
  const words = briefPhrases(given.language);
  const status = given.advice.status.find(({ density }) => density.species === species);
  const harvest = given.advice.harvest.find((one) => one.species === species);
  return [
    [words.howMuch, status === undefined ? '' : howMuch(status, given)],
    [words.upOrDown, upOrDown(species, given)],
    [words.healthy, status === undefined ? '' : healthy(status, given)],
    [words.take, mayBeTaken(harvest, given)],
  ];
}

function healthy({ comparisons, atMaturity }: StatusAnswer, { language }: BriefInput): string {
  const words = briefPhrases(language);
  const compared = comparisons.filter(({ held }) => held === null).map((one) => beside(one, language));
  const isOther = comparisons.some(({ held }) => held !== null && !ofReference.has(held.code));
  const silent = isOther ? words.notSetBeside : words.noneToCompare;
  const told = compared.length === 0 ? [silent] : compared;
  return line([...told, ...matureInWords(atMaturity, language)], language);
}

/** Held for what the published one is, and not for what this survey lacks. */
const ofReference: ReadonlySet<string> = new Set<ReasonCode>([
  'reference-other-method',
  'reference-method-unknown',
]);

/** Sizes at maturity from several places tell several shares: their range, and never the first of them alone. */
function matureInWords(atMaturity: StatusAnswer['atMaturity'], language: Language): readonly string[] {
  const words = briefPhrases(language);
  const known = atMaturity
    .flatMap(({ limitMm, share }) =>
      share?.interval == null ? [] : [{ limitMm, share: share.share, interval: share.interval }],
    )
    .toSorted((a, b) => a.share - b.share);
  const [least, most] = [known[0], known.at(-1)];
  if (least === undefined || most === undefined) return [];
  if (known.length === 1) {
    const between = formatInterval([100 * least.interval[0], 100 * least.interval[1]], 2, language);
    return [words.mature(formatShare(least.share), between, formatShort(least.limitMm, language))];
  }
  const sizes = known.map(({ limitMm }) => formatShort(limitMm, language)).join(words.or);
  return [words.matureRange(formatShare(least.share), formatShare(most.share), sizes)];
}

function beside({ reference, statusClass, bound }: Comparison, language: Language): string {
  const words = briefPhrases(language);
  const side =
    bound === null
      ? words.sides[statusClass ?? 'cannot tell']
      : bound.isBelow
        ? words.boundBelow(formatSignificant(bound.perHa, 2, language))
        : words.sides['cannot tell'];
  const perHa = formatShort(reference.content.densityPerHa, language);
  const say = reference.status === 'own' ? words.besideOwn : words.beside;
  return say(side, perHa, sourceWithMark(reference, language));
}

function mayBeTaken(own: HarvestAnswer | undefined, { input, advice, language }: BriefInput): string {
  const words = briefPhrases(language);
  if (own === undefined) return line([words.noRate], language);
  const rule = ruleInBrief(own, language);
  if (own.closure?.closed) return line(rule, language);
  if (own.reason !== null) {
    const reason = inPeoplesWords(own.reason, speciesNames(input.species));
    return [...rule, sentenceOnPaper(language, reason)].map((one) => line([one], language)).join(' ');
  }
  if (own.catches.length === 0)
    return line([...rule, advice.rates === 0 ? words.noRate : adviceWords(language).fewRates], language);
  const { option } = harvestPhrases(language);
  const options = own.catches.map(({ rate, animals }) =>
    option(formatCount(animals), percent(rate, language)),
  );
  return line([...rule, words.options(options.join(', '))], language);
}

function ruleInBrief(own: HarvestAnswer, language: Language): readonly string[] {
  const words = briefPhrases(language);
  const { closure } = own;
  if (closure === null) return ruleSentences(own, language);
  if (closure.probabilityBelow === null) return [words.closedNoneSeen];
  const { chance } = chanceAndRisk(closure.probabilityBelow, closure.risk, language);
  const say = closure.closed ? words.closed : words.open;
  return [say(formatShort(closure.limitPerHa, language), chance)];
}

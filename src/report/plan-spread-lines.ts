/** Spread over the ground, and what the spacing did; sentences, because the numbers mean little alone. */

import { mostRemembered } from '../planning/draw/spaced-stations.ts';
import type { PlanContent } from '../survey/plan-words.ts';
import type { Language } from './catalogue/language.ts';
import { planPhrases } from './catalogue/plan-phrases.ts';
import { formatCount, formatShare, formatShort, formatSignificant } from './numbers.ts';

/** Lines that stand in from the edge belong to the line before them. */
export function spreadLines(content: PlanContent, language: Language = 'en'): readonly string[] {
  const { spread } = planPhrases(language);
  const balances = balanceLines(content, language);
  const spacings = spacingLines(content, language);
  const { minimumSpacingM } = content;
  return [
    ...(balances.length === 0 ? [] : ['', spread.head, ...balances]),
    ...(minimumSpacingM === null
      ? []
      : ['', spread.apart(formatShort(minimumSpacingM, language), passedInWords(content, language))]),
    ...(spacings.length === 0 ? [] : [spread.spacingHead, ...spacings]),
    ...(spacings.length > 0 && content.stations.some(({ selection }) => selection !== 'random')
      ? [`  ${spread.nearGiven}`]
      : []),
  ];
}

function balanceLines({ strata }: PlanContent, language: Language): readonly string[] {
  const { spread } = planPhrases(language);
  const two = (value: number) => formatSignificant(value, 2, language);
  return strata.flatMap(({ name, balance }) => {
    if (balance === undefined) return [];
    const { drawn, simpleRandom, shareAsGood, simpleDraws } = balance;
    const share = formatShare(shareAsGood);
    return [`  ${spread.balance(name, two(drawn), two(simpleRandom), share, formatCount(simpleDraws))}`];
  });
}

function spacingLines({ strata }: PlanContent, language: Language): readonly string[] {
  const { spread } = planPhrases(language);
  const two = (value: number) => formatSignificant(value, 2, language);
  return strata.flatMap(({ name, spacing }) => {
    if (spacing === undefined) return [];
    const { lowestRatio, highestRatio, noise, redraws, failed } = spacing;
    const luck = two(3 * noise);
    const said = spread.spacing(name, two(lowestRatio), two(highestRatio), luck, formatCount(redraws));
    return [`  ${said}${failed === 0 ? '' : spread.failed(formatCount(failed))}`];
  });
}

function passedInWords({ passedOver }: PlanContent, language: Language): string {
  const { spread } = planPhrases(language);
  const passed = passedOver.length;
  if (passed === 0) return spread.nonePassed;
  if (passed === 1) return spread.onePassed;
  const count = formatCount(passed);
  return passed >= mostRemembered ? spread.passedMore(count) : spread.passed(count);
}

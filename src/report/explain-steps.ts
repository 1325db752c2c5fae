/** The formula in words with the numbers put in, for each kind of figure. */

import type { ClumpedPriors } from '../estimates/clumped/clumped-priors.ts';
import type { ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { explainPhrases } from './catalogue/explain-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { exact } from './exact-number.ts';
import { sizeSteps, weightSteps } from './explain-amount-steps.ts';
import { partSteps } from './explain-part-steps.ts';
import { formatCount, formatShort } from './numbers.ts';

export function explainSteps(explanation: Explanation, language: Language = 'en'): readonly string[] {
  if (explanation.value === null) return [];
  const own =
    explanation.of === 'size'
      ? sizeSteps(explanation, language)
      : explanation.isWhole
        ? wholeSteps(explanation, language)
        : partSteps(explanation, language);
  return [...weightSteps(explanation, language), ...own, ...intervalSteps(explanation, language)];
}

function wholeSteps(explanation: Explanation, language: Language): readonly string[] {
  const { strata, of, areaHa } = explanation;
  const words = explainPhrases(language);
  const said = (value: number) => exact(value, language);
  const means = strata.map((one) =>
    words.mean(
      one.stratum,
      meanInWords(one, language),
      said(one.meanPerHa ?? 0),
      spreadInWords(one, language),
    ),
  );
  const perHa = strata.reduce((total, one) => total + one.weight * (one.meanPerHa ?? 0), 0);
  const terms = strata.map((one) => `${said(one.weight)} × ${said(one.meanPerHa ?? 0)}`).join(' + ');
  const area = areaHa === null ? words.allStrata : `${said(areaHa)} ha`;
  const sum = strata.length > 1 ? [words.byArea(terms, said(perHa), area)] : [];
  const stock =
    of === 'stock' && areaHa !== null ? [words.stock(said(perHa), said(areaHa), said(perHa * areaHa))] : [];
  return [...means, ...sum, ...stock, errorStep(explanation, language)];
}

function meanInWords({ estimator, stations, stationCount }: ExplainedStratum, language: Language): string {
  const said = (value: number) => exact(value, language);
  const amount = stations.reduce((total, one) => total + one.amount, 0);
  const areaM2 = stations.reduce((total, one) => total + one.searchedAreaM2, 0);
  if (estimator === 'ratio of sums') return `${said(amount)} / ${said(areaM2)} m² × 10000`;
  const values = stations.reduce((total, one) => total + (one.valuePerHa ?? 0), 0);
  return explainPhrases(language).overStations(said(values), formatCount(stationCount));
}

function spreadInWords({ standardDeviationPerHa }: ExplainedStratum, language: Language): string {
  const words = explainPhrases(language);
  return standardDeviationPerHa === null
    ? words.oneStation
    : words.deviation(exact(standardDeviationPerHa, language));
}

function errorStep(explanation: Explanation, language: Language): string {
  const { strata, standardError, degreesOfFreedom, of, areaHa } = explanation;
  const words = explainPhrases(language);
  if (standardError === null) return words.noError;
  const said = (value: number) => exact(value, language);
  const terms = strata.map(
    (one) =>
      `${said(one.weight)}² × ${said(one.standardDeviationPerHa ?? 0)}² / ${formatCount(one.stationCount)}`,
  );
  const root = Math.sqrt(strata.reduce((total, one) => total + (one.variance ?? 0), 0));
  const error = words.error(terms.join(' + '), said(root));
  const told =
    of === 'stock' && areaHa !== null ? words.errorOfStock(error, said(areaHa), said(standardError)) : error;
  return degreesOfFreedom === null ? told : words.freedom(told, said(degreesOfFreedom));
}

function intervalSteps(
  { interval, intervalMethod, priors, of, strata }: Explanation,
  language: Language,
): readonly string[] {
  if (interval === null) return [];
  const words = explainPhrases(language);
  const animals = strata.reduce(
    (total, one) =>
      total + one.stations.reduce((sum, { animals: n, isMember }) => sum + (isMember ? n : 0), 0),
    0,
  );
  if (animals === 0) return [words.zero];
  const widened = of === 'biomass' ? [words.widened] : [];
  if (intervalMethod === 'lognormal') return [words.lognormal, ...widened];
  if (intervalMethod !== 'clumped') return [words.otherInterval(intervalMethod ?? words.none)];
  return [words.clumped, ...(priors === null ? [] : [priorInWords(priors, language)]), ...widened];
}

function priorInWords(
  { source, earlierSurveys, negativeBinomialK, logRateSd }: ClumpedPriors,
  language: Language,
): string {
  const words = explainPhrases(language);
  return words.prior(
    formatShort(negativeBinomialK.median, language),
    formatShort(logRateSd.median, language),
    source === 'archive' ? words.fromArchive(formatCount(earlierSurveys)) : words.fromHouse,
  );
}

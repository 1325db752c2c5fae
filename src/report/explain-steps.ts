/** The formula in words with the numbers put in, for each kind of figure. */

import type { ClumpedPriors } from '../estimates/clumped/clumped-priors.ts';
import type { ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { explainPhrases } from './catalogue/explain-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { formatCount, formatShort, withDecimalMark } from './numbers.ts';
import { pairInWords, valueInWords } from './value-words.ts';

export function explainSteps(explanation: Explanation, language: Language = 'en'): readonly string[] {
  if (explanation.value === null) return [];
  const own =
    explanation.of === 'size'
      ? sizeSteps(explanation)
      : explanation.isWhole
        ? wholeSteps(explanation, language)
        : partSteps(explanation);
  return [...weightSteps(explanation), ...own, ...intervalSteps(explanation, language)];
}

/** Six digits without an exponent: what is printed here can be added up again. */
export function exact(value: number, language: Language = 'en'): string {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  const rounded = Number(value.toPrecision(6));
  const text = rounded.toFixed(Math.min(20, Math.max(0, 5 - size)));
  return withDecimalMark(text.includes('.') ? text.replace(/\.?0+$/, '') : text, language);
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

/** A site or zone: its stations by what they stand for, over all that stand for it. */
function partSteps(explanation: Explanation): readonly string[] {
  const { strata, of, areaHa, value, standardError } = explanation;
  const inside = strata.filter((one) => one.memberCount > 0);
  const weightOf = (one: ExplainedStratum) => (one.weight * one.memberCount) / one.stationCount;
  const total = inside.reduce((sum, one) => sum + weightOf(one), 0);
  const perHa = inside.reduce((sum, one) => sum + weightOf(one) * (one.meanPerHa ?? 0), 0) / total;
  const means = inside.map(
    (one) =>
      `inside ${one.stratum}: ${formatCount(one.memberCount)} of ${formatCount(one.stationCount)} stations, so ${exact(one.weight)} × ${formatCount(one.memberCount)} / ${formatCount(one.stationCount)} = ${exact(weightOf(one))} of the area; mean ${exact(one.meanPerHa ?? 0)} per ha`,
  );
  const sum = `by those areas: (${inside.map((one) => `${exact(weightOf(one))} × ${exact(one.meanPerHa ?? 0)}`).join(' + ')}) / ${exact(total)} = ${exact(perHa)} per ha`;
  const stock =
    of === 'stock' && areaHa !== null && value !== null
      ? [
          `stock = ${exact(perHa)} per ha × ${exact(areaHa)} ha (estimated from the stations inside) = ${exact(value)} animals`,
        ]
      : [];
  const error =
    standardError === null
      ? ['no standard error']
      : [
          of === 'stock'
            ? `standard error ${exact(standardError)} animals: the area inside is itself estimated, and all stations of these strata enter`
            : `standard error = √(sum over strata of n × s² of the stations’ contributions) = √(${strata.map((one) => exact(one.variance ?? 0)).join(' + ')}) = ${exact(standardError)} per ha; stations outside contribute 0 and stay in`,
        ];
  return [...means, sum, ...stock, ...error];
}

function sizeSteps({ strata, value, standardError }: Explanation): readonly string[] {
  const all = strata.flatMap(({ stations }) => stations);
  const lengths = all.reduce((total, one) => total + one.amount, 0);
  const animals = all.reduce((total, one) => total + (one.weightedAnimals ?? 0), 0);
  return [
    'each measured animal stands for the counted ones of its belt (count / measured), and those for the stratum’s area (area / stations × 10000 / m²)',
    `mean length = sum of animals × length / sum of animals = ${exact(lengths)} / ${exact(animals)} = ${exact(value ?? 0)} mm`,
    standardError === null
      ? 'no standard error'
      : `standard error = √(sum over strata of n × s² of the stations’ (animals × (length − mean)) / all animals) = √(${strata.map((one) => exact(one.variance ?? 0)).join(' + ')}) = ${exact(standardError)} mm; stations without animals stay in`,
  ];
}

function weightSteps({ weights, of }: Explanation): readonly string[] {
  if (of !== 'biomass' || weights === null) return [];
  const { basis, conversion } = weights;
  const origin = `${basis.origin.source}${basis.origin.status === 'memory' ? '; from memory, not checked' : ''}`;
  const line =
    basis.by === 'pair'
      ? `grams of a station = sum over its animals of the weight of each length, by ${pairInWords(basis.pair)}${basis.correction === 1 ? '' : `, × ${exact(basis.correction)} for mean weights`} (${origin})`
      : `grams of a station = animals × ${basis.means.map(valueInWords).join(', or ')} (${origin})`;
  const ratio = conversion?.content.ratio ?? null;
  return ratio === null
    ? [line]
    : [
        line,
        `then × ${exact(ratio)}, from ${conversion!.content.from} to ${conversion!.content.to} (${conversion!.source})`,
      ];
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

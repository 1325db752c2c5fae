/** The formula in words with the numbers put in, for each kind of figure. */

import type { ClumpedPriors } from '../estimates/clumped/clumped-priors.ts';
import type { ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { explainWords } from './catalogue/explain-words.ts';
import { formatCount, formatShort } from './numbers.ts';
import { pairInWords, valueInWords } from './value-words.ts';

export function explainSteps(explanation: Explanation): readonly string[] {
  if (explanation.value === null) return [];
  const own =
    explanation.of === 'size'
      ? sizeSteps(explanation)
      : explanation.isWhole
        ? wholeSteps(explanation)
        : partSteps(explanation);
  return [...weightSteps(explanation), ...own, ...intervalSteps(explanation)];
}

/** Six digits without an exponent: what is printed here can be added up again. */
export function exact(value: number): string {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  const rounded = Number(value.toPrecision(6));
  const text = rounded.toFixed(Math.min(20, Math.max(0, 5 - size)));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function wholeSteps(explanation: Explanation): readonly string[] {
  const { strata, of, areaHa } = explanation;
  const several = strata.length > 1;
  const means = strata.map(
    (one) =>
      `mean of ${one.stratum} = ${meanInWords(one)} = ${exact(one.meanPerHa ?? 0)} per ha${spreadInWords(one)}`,
  );
  const perHa = strata.reduce((total, one) => total + one.weight * (one.meanPerHa ?? 0), 0);
  const sum = several
    ? [
        `by area: ${strata.map((one) => `${exact(one.weight)} × ${exact(one.meanPerHa ?? 0)}`).join(' + ')} = ${exact(perHa)} per ha (weights are areas over ${areaInWords(areaHa)})`,
      ]
    : [];
  const stock =
    of === 'stock' && areaHa !== null
      ? [`stock = ${exact(perHa)} per ha × ${exact(areaHa)} ha = ${exact(perHa * areaHa)} animals`]
      : [];
  return [...means, ...sum, ...stock, ...errorSteps(explanation)];
}

function areaInWords(areaHa: number | null): string {
  return areaHa === null ? 'all strata' : `${exact(areaHa)} ha`;
}

function meanInWords({ estimator, stations, stationCount }: ExplainedStratum): string {
  const amount = stations.reduce((total, one) => total + one.amount, 0);
  const areaM2 = stations.reduce((total, one) => total + one.searchedAreaM2, 0);
  if (estimator === 'ratio of sums') return `${exact(amount)} / ${exact(areaM2)} m² × 10000`;
  const values = stations.reduce((total, one) => total + (one.valuePerHa ?? 0), 0);
  return `${exact(values)} / ${formatCount(stationCount)} stations`;
}

function spreadInWords({ standardDeviationPerHa }: ExplainedStratum): string {
  return standardDeviationPerHa === null
    ? '; one station, no standard deviation'
    : `; standard deviation between stations ${exact(standardDeviationPerHa)}`;
}

function errorSteps({ strata, standardError, degreesOfFreedom, of, areaHa }: Explanation): readonly string[] {
  if (standardError === null) return ['no standard error'];
  const terms = strata.map(
    (one) =>
      `${exact(one.weight)}² × ${exact(one.standardDeviationPerHa ?? 0)}² / ${formatCount(one.stationCount)}`,
  );
  const root = Math.sqrt(strata.reduce((total, one) => total + (one.variance ?? 0), 0));
  const stock =
    of === 'stock' && areaHa !== null ? `; × ${exact(areaHa)} ha = ${exact(standardError)} animals` : '';
  return [
    `standard error = √(${terms.join(' + ')}) = ${exact(root)} per ha${stock}${freedom(degreesOfFreedom)}`,
  ];
}

function freedom(degreesOfFreedom: number | null): string {
  return degreesOfFreedom === null ? '' : `; degrees of freedom (Satterthwaite) ${exact(degreesOfFreedom)}`;
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

function intervalSteps({ interval, intervalMethod, priors, of, strata }: Explanation): readonly string[] {
  if (interval === null) return [];
  const animals = strata.reduce(
    (total, one) =>
      total + one.stations.reduce((sum, { animals: n, isMember }) => sum + (isMember ? n : 0), 0),
    0,
  );
  if (animals === 0) return [explainWords.zero];
  const widened =
    of === 'biomass'
      ? ['widened by what is not known of the weight of one animal (docs/methods/biomass.md)']
      : [];
  if (intervalMethod === 'lognormal') return [explainWords.lognormal, ...widened];
  if (intervalMethod !== 'clumped') return [`interval: ${intervalMethod ?? 'none'}`];
  return [explainWords.clumped, ...(priors === null ? [] : [priorInWords(priors)]), ...widened];
}

function priorInWords({ source, earlierSurveys, negativeBinomialK, logRateSd }: ClumpedPriors): string {
  const from =
    source === 'archive'
      ? `from ${formatCount(earlierSurveys)} earlier strata of this species and protocol`
      : 'the prior of the house';
  return `believed of clumping before the counts: k about ${formatShort(negativeBinomialK.median)}, spread of the log rate about ${formatShort(logRateSd.median)} (${from})`;
}

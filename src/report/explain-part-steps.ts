/** The figure of a site or zone, with the numbers put in. */

import type { ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { explainPhrases } from './catalogue/explain-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { exact } from './exact-number.ts';
import { formatCount } from './numbers.ts';

/** A site or zone: its stations by what they stand for, over all that stand for it. */
export function partSteps(explanation: Explanation, language: Language): readonly string[] {
  const { strata, of, areaHa, value } = explanation;
  const words = explainPhrases(language);
  const said = (number: number) => exact(number, language);
  const inside = strata.filter((one) => one.memberCount > 0);
  const weightOf = (one: ExplainedStratum) => (one.weight * one.memberCount) / one.stationCount;
  const total = inside.reduce((sum, one) => sum + weightOf(one), 0);
  const perHa = inside.reduce((sum, one) => sum + weightOf(one) * (one.meanPerHa ?? 0), 0) / total;
  const means = inside.map((one) =>
    words.inside({
      stratum: one.stratum,
      members: formatCount(one.memberCount),
      stations: formatCount(one.stationCount),
      weight: said(one.weight),
      share: said(weightOf(one)),
      mean: said(one.meanPerHa ?? 0),
    }),
  );
  const terms = inside.map((one) => `${said(weightOf(one))} × ${said(one.meanPerHa ?? 0)}`).join(' + ');
  const stock =
    of === 'stock' && areaHa !== null && value !== null
      ? [words.stockInside(said(perHa), said(areaHa), said(value))]
      : [];
  return [
    ...means,
    words.byThoseAreas(terms, said(total), said(perHa)),
    ...stock,
    partErrorStep(explanation, language),
  ];
}

function partErrorStep({ strata, of, standardError }: Explanation, language: Language): string {
  const words = explainPhrases(language);
  if (standardError === null) return words.noError;
  if (of === 'stock') return words.errorOfStockInside(exact(standardError, language));
  return words.errorInside(variancesOf(strata, language), exact(standardError, language));
}

/** What each stratum adds to the variance. */
export function variancesOf(strata: readonly ExplainedStratum[], language: Language): string {
  return strata.map((one) => exact(one.variance ?? 0, language)).join(' + ');
}

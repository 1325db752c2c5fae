/** A mean length, and the grams of a biomass, with the numbers put in. */

import type { Explanation } from '../estimates/explain/explanation.ts';
import { explainPhrases } from './catalogue/explain-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { weightPhrases } from './catalogue/weight-phrases.ts';
import { exact } from './exact-number.ts';
import { variancesOf } from './explain-part-steps.ts';
import { meanWeightInWords, pairInWords } from './value-words.ts';

export function sizeSteps(
  { strata, value, standardError }: Explanation,
  language: Language,
): readonly string[] {
  const words = explainPhrases(language);
  const said = (number: number) => exact(number, language);
  const all = strata.flatMap(({ stations }) => stations);
  const lengths = all.reduce((total, one) => total + one.amount, 0);
  const animals = all.reduce((total, one) => total + (one.weightedAnimals ?? 0), 0);
  return [
    words.standsFor,
    words.meanLength(said(lengths), said(animals), said(value ?? 0)),
    standardError === null
      ? words.noError
      : words.errorOfLength(variancesOf(strata, language), said(standardError)),
  ];
}

export function weightSteps({ weights, of }: Explanation, language: Language): readonly string[] {
  if (of !== 'biomass' || weights === null) return [];
  const words = explainPhrases(language);
  const { source: named, states } = weightPhrases(language);
  const { basis, conversion } = weights;
  const own = named(basis.origin.source);
  const source = basis.origin.status === 'memory' ? words.sourceFromMemory(own) : own;
  const ratio = conversion?.content.ratio ?? null;
  return [
    basis.by === 'pair'
      ? words.gramsByPair(correctedPair(basis.pair, basis.correction, language), source)
      : words.gramsByMean(basis.means.map((one) => meanWeightInWords(one, language)).join(words.or), source),
    ...(ratio === null
      ? []
      : [
          words.converted(
            exact(ratio, language),
            states[conversion!.content.from],
            states[conversion!.content.to],
            conversion!.source,
          ),
        ]),
  ];
}

function correctedPair(
  pair: Parameters<typeof pairInWords>[0],
  correction: number,
  language: Language,
): string {
  const said = pairInWords(pair, language);
  return correction === 1 ? said : explainPhrases(language).forMeanWeights(said, exact(correction, language));
}

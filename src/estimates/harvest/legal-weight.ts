/** What one legal animal weighs on average: the weights of the animals of legal size over their number. */

import { sum } from '../../maths/variance.ts';
import type { Reason } from '../../survey/message.ts';
import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { lengthsByStation } from '../biomass/animals-with-weights.ts';
import type { WeightsChosen } from '../biomass/choose-weights.ts';
import { conversionCaution, plausibilityOf } from '../biomass/length-cautions.ts';
import { lengthWeightLine, weightOfLengthG } from '../biomass/length-weight-line.ts';
import { amountOverScope } from '../biomass/scope-amounts.ts';
import { scopesBy } from '../density/scopes.ts';
import { stratumSamples } from '../density/stratum-sample.ts';
import type { LegalWeight } from './harvest-answer.ts';

export interface LegalWeightInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly scope: { readonly by: 'survey' | 'zone'; readonly name: string };
  /** 0 where every size may be taken. */
  readonly limitMm: number;
  readonly chosen: WeightsChosen | Reason;
  /** Somebody answered by name for what is held. */
  readonly accepted: boolean;
}

/**
 * Mean weight in grams of the animals at or above the limit, raised to the counts and weighted as the stock is.
 *
 * Never the weight of the mean length. With a mean weight instead of a pair the mean of all sizes stands in, which is
 * too light for legal animals: the caution says so. Returns the reason where no weight is known. Source: METHODS e, k.
 */
export function legalWeight(input: LegalWeightInput): LegalWeight | Reason {
  const { chosen, species } = input;
  if (!('basis' in chosen)) return chosen.code === 'no-weights' ? noWeight(species) : chosen;
  const { basis, conversion, state } = chosen;
  const plausible = plausibilityOf(basis, species);
  if (plausible?.code === 'pair-implausible' && !input.accepted) return plausible;
  const cautions = [
    ...chosen.cautions,
    ...(plausible?.code === 'weight-of-one' ? [plausible] : []),
    ...conversionCaution(chosen),
  ];
  const ratio = conversion === null ? 1 : conversion.content.ratio;
  if (ratio === null) return noWeight(species);
  const { source } = basis.origin;
  if (basis.by === 'mean weight') {
    const [only] = basis.means;
    if (basis.means.length !== 1 || only === undefined) return noWeight(species);
    const ofAllSizes: readonly Reason[] =
      input.limitMm === 0
        ? []
        : [{ code: 'mean-weight-of-all-sizes', parameters: { limitMm: input.limitMm } }];
    return {
      grams: only.weightG * ratio,
      state,
      source,
      typed: false,
      cautions: [...cautions, ...ofAllSizes],
    };
  }
  const grams = meanGrams(input, { ...lengthWeightLine(basis.pair), correction: basis.correction });
  if (grams === null)
    return { code: 'no-legal-animals', parameters: { species: species.name, limitMm: input.limitMm } };
  return { grams: grams * ratio, state, source, typed: false, cautions };
}

function noWeight(species: Species): Reason {
  return { code: 'no-mean-weight', parameters: { species: species.name } };
}

function meanGrams(input: LegalWeightInput, line: Parameters<typeof weightOfLengthG>[0]): number | null {
  const { survey, species, scope, limitMm } = input;
  const samples = stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, {
    estimator: 'auto',
    selection: 'all',
  });
  const lengths = lengthsByStation(samples, species);
  const inHand = scopesBy(scope.by, survey.survey.name, samples).find((one) => one.scope.name === scope.name);
  if (lengths === null || inHand === undefined) return null;
  const legalAt = (weightOf: (lengthMm: number) => number) =>
    amountOverScope(inHand, (observation) =>
      sum(
        (lengths.get(observation)?.lengths ?? [])
          .filter(({ lengthMm }) => lengthMm >= limitMm)
          .map(({ lengthMm, animals }) => animals * weightOf(lengthMm)),
      ),
    ).density.value ?? 0;
  const animals = legalAt(() => 1);
  return animals === 0 ? null : legalAt((lengthMm) => weightOfLengthG(line, lengthMm)) / animals;
}

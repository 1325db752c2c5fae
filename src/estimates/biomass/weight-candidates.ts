/** The weights there are for a species, in the order in which they are preferred, and what has to be said beside each. */

import type { Reason } from '../../survey/message.ts';
import type { LengthWeight, MeanWeight } from '../../survey/value-words.ts';
import { type ChosenValue, valuesFor } from '../../survey/values-lookup.ts';
import type { OwnValue, Species, Weight } from '../../survey/words.ts';
import type { Acceptance } from '../density/density-settings.ts';
import type { WeightBasis, WeightState } from './biomass-answer.ts';
import { type FittedPair, fitLengthWeight } from './fit-length-weight.ts';
import { lengthWeightLine } from './length-weight-line.ts';
import { isPossibleWeight } from './plausible-weight.ts';

export const weightChoices = ['auto', 'own', 'fit', 'mean-weight'] as const;

export interface WeightRequest {
  readonly species: Species;
  readonly ownValues: readonly OwnValue[];
  /** Animals of this species that were measured and weighed, of every state. */
  readonly weighings: readonly Weight[];
  readonly choice: (typeof weightChoices)[number];
  /** Null: whatever state the weights have. */
  readonly state: WeightState | null;
  readonly correction: 'normal' | 'smearing';
  readonly hasLengths: boolean;
  readonly acceptance: Acceptance | null;
}

export interface Candidate {
  readonly basis: WeightBasis;
  readonly state: WeightState;
  readonly fit: FittedPair | null;
}

export function candidatesFor(request: WeightRequest): readonly Candidate[] {
  const { species, ownValues, choice } = request;
  const pairs = valuesFor(species, 'length-weight', ownValues);
  const means = valuesFor(species, 'mean-weight', ownValues);
  const ownPairs = pairs.filter(({ own }) => own).map(pairCandidate);
  const fits = fitCandidates(request);
  const ownMeans = meanCandidates(means.filter(({ own }) => own));
  const publishedMeans = meanCandidates(means.filter(({ own, status }) => !own && status !== 'memory'));
  const remembered = meanCandidates(means.filter(({ status }) => status === 'memory'));
  if (choice === 'own') return [...ownPairs, ...ownMeans];
  if (choice === 'fit') return fits;
  if (choice === 'mean-weight') return [...ownMeans, ...publishedMeans, ...remembered];
  const publishedPairs = pairs.filter(({ own }) => !own).map(pairCandidate);
  return [...ownPairs, ...fits, ...publishedPairs, ...ownMeans, ...publishedMeans, ...remembered];
}

function pairCandidate({ content, source, status }: ChosenValue<'length-weight'>): Candidate {
  const { correction } = lengthWeightLine(content);
  const origin = { source, status };
  return { basis: { by: 'pair', pair: content, correction, origin }, state: content.weightState, fit: null };
}

function fitCandidates({ weighings, correction }: WeightRequest): readonly Candidate[] {
  const states = ['live', 'gutted', 'salted', 'dried'] as const;
  return states.flatMap((state) => {
    const fit = fitLengthWeight(
      weighings.filter((one) => one.state === state && isPossible(one)),
      state,
    );
    if (fit === null) return [];
    const origin = { source: `${fit.pair.animals} animals weighed in this book`, status: 'fit' } as const;
    const used = correction === 'normal' ? fit.correction : fit.smearing;
    return [{ basis: { by: 'pair', pair: fit.pair, correction: used, origin }, state, fit }];
  });
}

/** A length in centimetres or a weight in kilograms among the others would bend the whole line. */
function isPossible({ state, lengthMm, weightG }: Weight): boolean {
  return state === 'dried' || state === 'salted' || isPossibleWeight(lengthMm, weightG);
}

/** Mean weights of one state stand together: none of them is better than another. */
function meanCandidates(values: readonly ChosenValue<'mean-weight'>[]): readonly Candidate[] {
  const states = [...new Set(values.map(({ content }) => content.weightState))];
  return states.map((state) => {
    const alike = values.filter(({ content }) => content.weightState === state);
    const means: readonly MeanWeight[] = alike.map(({ content }) => content);
    const source = [...new Set(alike.map((one) => one.source))].join('; ');
    const origin = { source, status: alike[0]!.status };
    return { basis: { by: 'mean weight', means, origin }, state, fit: null };
  });
}

/** Fewer weighed animals than this are told (our own choice). */
const fewWeighed = 20;

export function cautionsOf({ basis, fit }: Candidate, { weighings }: WeightRequest): readonly Reason[] {
  const cautions: Reason[] = [];
  if (basis.by === 'mean weight') {
    if (basis.origin.status !== 'own') cautions.push({ code: 'mean-weight-used', parameters: {} });
    if (basis.means.length > 1)
      cautions.push({ code: 'mean-weights-differ', parameters: rangeOf(basis.means) });
    else if (basis.means[0]!.standardErrorG === null)
      cautions.push({ code: 'mean-weight-no-error', parameters: {} });
    return cautions;
  }
  cautions.push(...pairCautions(basis.pair));
  const stateless = weighings.filter((one) => one.state === null).length;
  if (fit !== null && stateless > 0) {
    cautions.push({ code: 'weights-without-state', parameters: { animals: stateless } });
  }
  const impossible = weighings.filter((one) => one.state === basis.pair.weightState && !isPossible(one));
  if (fit !== null && impossible[0] !== undefined) {
    const { lengthMm, weightG } = impossible[0];
    const parameters = { animals: impossible.length, lengthMm, weightG };
    cautions.push({ code: 'weighings-impossible', parameters });
  }
  return cautions;
}

function pairCautions(pair: LengthWeight): readonly Reason[] {
  const { animals, residualSdLn, covariance, lengthMinMm, lengthMaxMm } = pair;
  const none = { parameters: {} };
  return [
    ...(animals !== null && animals < fewWeighed
      ? [{ code: 'few-weighed', parameters: { animals } } as const]
      : []),
    ...(residualSdLn === null ? [{ code: 'no-correction', ...none } as const] : []),
    ...(covariance === null ? [{ code: 'parameters-unknown', ...none } as const] : []),
    ...(lengthMinMm === null || lengthMaxMm === null
      ? [{ code: 'fitted-range-unknown', ...none } as const]
      : []),
  ];
}

function rangeOf(means: readonly MeanWeight[]): { lowG: number; highG: number } {
  const weights = means.map(({ weightG }) => weightG);
  return { lowG: Math.min(...weights), highG: Math.max(...weights) };
}

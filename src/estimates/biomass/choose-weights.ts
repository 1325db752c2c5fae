/** Which weights an answer rests on: a pair, a fit or a mean weight, and the way to the state that was asked for. */

import type { Reason } from '../../survey/message.ts';
import type { Conversion } from '../../survey/value-words.ts';
import { valuesFor } from '../../survey/values-lookup.ts';
import type { Species } from '../../survey/words.ts';
import type { Acceptance } from '../density/density-settings.ts';
import type { ConversionUsed, WeightBasis, WeightState } from './biomass-answer.ts';
import { type FittedPair, fewestWeighed } from './fit-length-weight.ts';
import { type Candidate, candidatesFor, cautionsOf, type WeightRequest } from './weight-candidates.ts';

export interface WeightsChosen {
  readonly basis: WeightBasis;
  readonly state: WeightState;
  readonly conversion: ConversionUsed | null;
  readonly fit: FittedPair | null;
  readonly cautions: readonly Reason[];
}

/**
 * The first that can be used of: own pair, fit from own weighings, own mean weight, published mean weight; with weights
 * of the state asked for before ones that must be converted. Only a sourced conversion leads from one state to another.
 *
 * Returns the reason where there is none, where only a value from memory is left, or where the pair was made from
 * processed animals; the last two give way to an acceptance by name.
 */
export function chooseWeights(request: WeightRequest): WeightsChosen | Reason {
  const candidates = candidatesFor(request);
  const usable = request.hasLengths ? candidates : candidates.filter(({ basis }) => basis.by !== 'pair');
  const ways = usable.flatMap((candidate) => {
    const conversion = wayTo(candidate, request);
    return conversion === undefined ? [] : [{ candidate, conversion }];
  });
  const chosen =
    ways.find((way) => way.conversion === null && !isDoubtful(way.candidate)) ??
    ways.find((way) => !isDoubtful(way.candidate)) ??
    ways[0];
  if (chosen === undefined) return whyNone(request, candidates, usable);
  const hold = holdOf(chosen.candidate, request.species);
  if (hold !== null && request.acceptance === null) return hold;
  const { candidate, conversion } = chosen;
  return {
    basis: candidate.basis,
    state: request.state ?? candidate.state,
    conversion,
    fit: candidate.fit,
    cautions: [
      ...(hold === null ? [] : [acceptedCaution(hold, request.acceptance!)]),
      ...cautionsOf(candidate, request),
    ],
  };
}

const fromMemory = (candidate: Candidate) => candidate.basis.origin.status === 'memory';

/** Weights of dried or salted bodies belong to lengths that no diver measured. */
const isProcessedPair = ({ basis, state }: Candidate) =>
  basis.by === 'pair' && (state === 'dried' || state === 'salted');

const isDoubtful = (candidate: Candidate) => fromMemory(candidate) || isProcessedPair(candidate);

function holdOf(candidate: Candidate, species: Species): Reason | null {
  if (isProcessedPair(candidate)) return { code: 'processed-pair', parameters: { state: candidate.state } };
  return fromMemory(candidate) ? { code: 'only-from-memory', parameters: { species: species.name } } : null;
}

/** The hold that was let through, with the name of who answers for it. */
export function acceptedCaution({ code }: Reason, { who, why }: Acceptance): Reason {
  return { code: 'accepted', parameters: { who, why, held: code } };
}

/** Null where the state is the one asked for, undefined where no sourced ratio leads to it. */
function wayTo({ state }: Candidate, request: WeightRequest): ConversionUsed | null | undefined {
  const asked = request.state ?? state;
  if (asked === state) return null;
  return valuesFor(request.species, 'conversion', request.ownValues)
    .filter(({ content, status }) => isWeight(content) && status !== 'memory')
    .find(({ content }) => content.from === state && content.to === asked);
}

function isWeight({ basis }: Conversion): boolean {
  return basis === 'weight';
}

function whyNone(
  { species, state, choice, weighings }: WeightRequest,
  candidates: readonly Candidate[],
  usable: readonly Candidate[],
): Reason {
  const [first] = usable;
  if (first !== undefined) {
    return { code: 'no-conversion', parameters: { species: species.name, from: first.state, to: state! } };
  }
  if (candidates.length > 0) return { code: 'no-lengths-for-pair', parameters: { species: species.name } };
  if (choice === 'own') return { code: 'no-own-weights', parameters: { species: species.name } };
  const asked = weighings.filter((one) => one.state === (state ?? 'live'));
  if (choice === 'fit' || asked.length > 0) {
    const parameters = {
      species: species.name,
      animals: asked.length,
      state: state ?? 'live',
      least: fewestWeighed,
    };
    return { code: 'too-few-weighed', parameters };
  }
  return { code: 'no-weights', parameters: { species: species.name, state: state ?? 'live' } };
}

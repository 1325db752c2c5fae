/**
 * Reasons as a printed report says them: what is missing and what would bring it, without the commands that the
 * officer at the keyboard is told. A code that is not here reads the same in both places.
 */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const reasonsOnPaper = {
  'no-weights':
    'No weight is known for {species}: weigh some of them on board ({state}), or find a published length-weight relation or mean weight',
  'no-own-weights':
    'No weight from this fishery is known for {species}: weigh some of them on board, or find a published length-weight relation or mean weight',
  'no-lengths-for-pair':
    'A length-weight relation is known for {species}, but no animal was measured, and the weight of a mean length would be wrong: measure some',
  'no-conversion':
    'Held: the weights are {from} and {to} was asked; no sourced ratio from {from} to {to} is known for {species}',
  'processed-pair':
    'Held: the length-weight relation was made from {state} animals, and the divers measured live ones',
  'only-from-memory':
    'Held: the only weight known for {species} is from memory and was never checked against its source: weigh some of them, or look the value up',
  'no-size-limit':
    'No size limit is known for {species}, and none is assumed: it takes the national schedule, or a word that every size may be taken',
  'no-mean-weight':
    'No weight is known for {species}, so the catch is given in animals only: weigh some of them, or find a mean weight with its source',
  'lone-station':
    'One station in {strata}: a mean, but no spread; visit another, or take the stratum together with one of like habitat',
  'finite-population':
    'The stations cover {percent} % of {strata}: the spread shown is wider than it need be',
  'change-other-observers':
    'No recorder worked in both surveys ({from}; later {to}): a change may be one of the people',
  'trend-too-few':
    'A trend of {species} takes three surveys at different times in which it was recorded and has a spread; so far there {surveys:is|are} {surveys}',
} as const satisfies Partial<Record<ReasonCode, string>>;

/** How sure a value is that does not come from the survey, and what weights made from it can say. */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const reasonsValues = {
  'value-own': 'your own: {source}',
  'value-read': '{source}',
  'value-memory': 'from memory, not checked against the source ({source})',
  'value-derived': 'worked out from published numbers: {source}',
  'no-weights':
    'No weights for {species}: weigh animals on board (table weights, state {state}), or bring a length-weight pair or a mean weight with “slateline values --add FILE.csv”',
  'no-lengths-for-pair':
    'A length-weight pair of {species} is known, but none was measured, and a weight of the mean length would be wrong; measure some, or bring a mean weight with “slateline values --add FILE.csv”',
  'no-conversion':
    'Held: the weights are {from} and {to} was asked; no sourced ratio from {from} to {to} is known for {species}. Bring one with “slateline values --add FILE.csv”, or ask for --state {from}',
  'processed-pair':
    'Held: this length-weight pair was made from {state} animals, and the divers measured live ones; use a live pair and a conversion, or let it stand by name with --accept',
  'only-from-memory':
    'Held: the only weight known for {species} is from memory and was never checked against its source; weigh animals, bring a value with “slateline values --add FILE.csv”, or let it stand by name with --accept',
  'pair-implausible':
    'Held: by this pair one animal of {lengthMm} mm weighs {weightG} g, and a body of that length weighs between {lightestG} and {heaviestG} g; was the pair meant for cm, or the weight for kg?',
  'weight-of-one': 'One animal of {lengthMm} mm weighs {weightG} g by this pair: plausible?',
  'outside-fitted-range':
    '{percent} % of the animals are outside the lengths from which the pair was made ({fromMm} to {toMm} mm): their weights are guesses',
  'fitted-range-unknown':
    'The lengths from which the pair was made are not told: nobody can see where it stops holding',
  'lengths-borrowed':
    'The lengths of {animals} {animals:animal|animals} ({percent} % of those counted) are borrowed from their station or stratum, or else from the survey',
  'no-correction':
    'The spread about the pair is not told, so the curve is used as it stands: it gives middle weights, a few per cent below mean ones',
  'parameters-unknown':
    'How sure the pair itself is, is not told: the interval holds what comes from the stations, and nothing for the pair',
  'mean-weight-used':
    'Count times a mean weight from elsewhere: mean weights of one species differ by a factor of two to five between places, so this is an order of magnitude only',
  'mean-weight-of-all-sizes':
    'The mean weight is that of animals of all sizes, and those of {limitMm} mm and more weigh more: the tonnes are too few, and a quota in tonnes is fewer animals than it says',
  'mean-weights-differ':
    'The published mean weights go from {lowG} to {highG} g; the range is made from the lowest and the highest, and no number in it is better than another',
  'mean-weight-no-error': 'The mean weight has no standard error: the interval holds that of the count alone',
  'few-weighed': 'The pair rests on {animals} weighed {animals:animal|animals}: weigh more, over all lengths',
  'no-own-weights':
    'No weights of your own for {species}: bring a length-weight pair or a mean weight with “slateline values --add FILE.csv”, or let the program choose (--pair auto)',
  'too-few-weighed':
    'Only {animals} {state} {animals:animal|animals} of {species} {animals:was|were} weighed; a length-weight line needs {least} of different lengths',
  'weights-without-state':
    '{animals} weighed {animals:animal is|animals are} left out, because nobody wrote whether {animals:it was|they were} live, gutted, salted or dried',
  'weighings-impossible':
    '{animals} weighed {animals:animal is|animals are} left out of the line, because no body has such a weight at its length (the first: {lengthMm} mm, {weightG} g); look at the sheet',
  'conversion-used': 'From {from} to {to} with {percent} % ({source})',
  'conversion-bounds':
    'From {from} to {to} only bounds are known, {lowPercent} to {highPercent} % ({source}): a range, and no number in it is better than another',
  'other-measure':
    '{animals} {animals:animal was|animals were} measured in another way than those of the pair ({measure}): {animals:its weight|their weights} may be off',
} as const satisfies Partial<Record<ReasonCode, string>>;

/** What a biomass can be held for, as it stands in the sentence `accepted`. */
export const holdsOfWeights = {
  'only-from-memory': 'a weight from memory that nobody checked',
  'processed-pair': 'a pair made from processed animals',
  'pair-implausible': 'a pair by which an animal weighs what it hardly can',
} as const satisfies Partial<Record<ReasonCode, string>>;

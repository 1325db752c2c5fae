/** Why a density is not set against another one, and why no catch can be worked out. */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const reasonsAdvice = {
  'survey-methods-mixed':
    'Held: this survey mixes ways of counting ({methods}); a published density speaks of one of them only',
  'reference-method-unknown':
    'Held: how the animals behind this density were counted is not told, so nothing can be set against it',
  'reference-other-method':
    'Held: this density was counted by {reference}, the survey by {survey}; what one finds says nothing about what the other would have found',
  'reference-other-width':
    'The belts behind this density were {referenceM} m wide, those of the survey {surveyM} m: small animals are missed more easily on wide belts',
  'no-spread': 'No spread can be given for {where}, so nothing can be said about the chance of being below',
  'no-size-limit':
    'No size limit of {species} is in the book, and none is assumed: bring the national schedule (table limits), or give --limit with millimetres, or --limit none where every size may be taken',
  'no-mean-weight':
    'No weight of a {species} is known, so the catch is given in animals only: weigh animals, or give --mean-weight "0.52 kg: source"',
  'no-legal-animals': 'No measured {species} was as long as {limitMm} mm: nothing of legal size was seen',
  'area-unknown': 'The area of {where} is not known, so there is no stock to take a share of',
} as const satisfies Partial<Record<ReasonCode, string>>;

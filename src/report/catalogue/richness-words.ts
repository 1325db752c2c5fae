/** Why numbers of species cannot be compared, or only in part. */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const richnessWords = {
  'richness-unequal-stations':
    'A station of {small} searched {smallM2} m², one of {large} {largeM2} m²: larger stations show more species, so stations are no equal effort',
  'richness-small-stations':
    'Searched less than two thirds of the area usual in their part: {stations} of the stations; each counts as a whole one, so its part may look a little poorer',
  'richness-species-dropped': 'Not looked for on every belt, and left out of the comparison: {species}',
  'richness-little-effort':
    'The common effort is small: {animals} {animals:animal|animals} (fewest stations: {stations}), as many as {small} has, and {percent} % of the animals of {large}; so few hardly show rare species, and a difference may be missed',
  'richness-hand-picked':
    'Picked by hand: {stations} of the stations; their species are those of the places visited and speak for no other place',
} as const satisfies Partial<Record<ReasonCode, string>>;

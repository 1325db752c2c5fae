/** What cannot be said about the divers, and what should be known beside what is. */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const observersWords = {
  'observers-too-few-pairs':
    'Counted by two divers on {pairs} {pairs:belt|belts} where at least one saw some: under 3 there are no limits; have a second diver swim more belts (swim 2)',
  'observers-neither-saw':
    'On {belts} {belts:belt|belts} neither saw any: {belts:it says nothing of how they agree and is|they agree about nothing and are} not in the comparison',
  'observers-no-person':
    'A belt does not hold who swam it: swim 1 and swim 2 are compared, whoever swam them, and the two may have changed places from belt to belt',
  'observers-few-animals':
    'Under 5 animals on the middle belt: ratios of so small counts jump by themselves, and the half animal added to each draws them to 1',
  'observers-few-belts': 'Under 10 belts the limits themselves may be off by half their width or more',
  'observers-one-in-stratum':
    '{observer} recorded all {stations} stations of {stratum} and no other recorder was there: whether {stratum} differs or {observer} counts differently cannot be told apart',
  'observers-holes':
    '{empty} of the {cells} pairs of recorder and stratum are empty: differences between strata are partly differences between people; exchange them from day to day',
  'observers-unnamed': 'At {stations} {stations:station|stations} no recorder is on record',
  'observers-swim-other-area':
    'Second swims not compared, because another area was searched than in the first ({count}): station/belt {belts}',
  'observers-swim-not-searched':
    'Second swims not compared, because one of the two was lost or still waits for an answer ({count}): station/belt {belts}',
  'observers-swim-alone':
    'Swims not compared, because swim 1 and swim 2 of a belt are, and these have no swim 1 or are later ones ({count}): station/belt (swim) {belts}',
} as const satisfies Partial<Record<ReasonCode, string>>;

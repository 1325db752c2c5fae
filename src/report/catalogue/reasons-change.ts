/** Why two surveys cannot be compared, or only in part, and what stands beside a change. */

import type { ReasonCode } from '../../survey/reason-codes.ts';

export const reasonsChange = {
  'change-not-on-record':
    '{aspect}: not on record in both surveys, so nobody can tell whether it was the same',
  'change-other-method':
    'Held: animals were counted by {from} in the earlier survey and by {to} in the later; what one finds says nothing about what the other would have found',
  'change-other-width':
    'The belts were {fromM} m wide and later {toM} m: narrow belts find more small animals per hectare, so part of the change may be the belt',
  'change-other-area':
    'A station was {fromM2} m² and later {toM2} m²: densities compare, but how often a species is met does not',
  'change-other-depth': 'The middle depth was {fromM} m and later {toM} m',
  'change-other-season':
    'The seasons differ ({from}; later {to}): animals that bury or gather by season change their density without any change of the stock',
  'change-other-mode': 'The work was done by {from} and later by {to}',
  'change-other-observers':
    'No recorder worked in both surveys ({from}; later {to}): a change may be one of the people (observers tells how alike two divers count)',
  'change-strata-dropped':
    'Left out, because only one of the surveys worked there: {dropped}; compared: {common}',
  'change-species-dropped': 'Looked for in one of the surveys only, and not compared: {species}',
  'change-hand-picked':
    '{stations} {stations:station was|stations were} picked by hand: {stations:it tells a change at this station and speaks|they tell a change at these stations and speak} for no other place',
  'change-hand-picked-left-out':
    '{stations} hand-picked {stations:station is|stations are} not in the comparison: {stations:it speaks|they speak} for no other place',
  'change-place-moved':
    'Stations {stations} bear one code in both surveys but lie more than {distanceM} m apart: they are taken as different places',
  'change-no-common-stratum':
    'Held: no stratum was worked in both surveys[ ({from}; later {to})], so there is no common part to compare',
  'change-no-common-station':
    'The stations were picked by hand, and none of them was worked in both surveys: there is no change to tell',
  'change-none-seen': 'No {species} was recorded in either survey: nothing can be said about a change',
  'change-lone-station':
    'One station only in {strata}, in one of the surveys: two densities, but no spread, so nothing can be said about a change here; the strata together may tell, or more stations',
  'change-too-few-for-clumped':
    'Fewer than 3 stations lie in some stratum here, too few for the clumped-count interval: that of the log ratio stands in its place; it reports a change too often where animals are clumped, so no change is called proven',
  'change-blank-left-out':
    'Left out by name, because nobody told whether they were searched: {stations}; where they were and had none, the densities here are too high',
  'change-not-a-target': '{species} was not looked for in {survey}, so it cannot be compared',
  'trend-hand-picked':
    'The stations of a survey were picked by hand, and a trend of them would speak for no other place: compare two surveys at the stations worked in both with change',
  'trend-too-few':
    'A trend of {species} needs surveys at three different times with animals, a spread and a common part, and there {surveys:is|are} {surveys}: compare two of them with change',
  'trend-none-seen-in':
    'None was recorded in {surveys}: a zero has no logarithm, so the line is that of the other surveys alone, and a stock that vanished or came back is not in it',
  'trend-no-spread-in': 'No spread can be given for {surveys}, so it is not on the line',
  'trend-uneven':
    'The surveys scatter more around the line than their own errors allow (p = {percent} %): the change was not even',
} as const satisfies Partial<Record<ReasonCode, string>>;

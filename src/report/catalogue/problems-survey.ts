/** What the estimates need to ask before they can be believed. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsSurvey = {
  'stratum-area-missing':
    'the area of stratum {stratum} is not known; give its hectares, and the whole surveyed area can be estimated',
  'station-unresolved': 'nothing is written for this station; was it worked and empty, lost, or never done?',
  'transect-unresolved': 'this transect is blank; was it searched and empty, lost, or never done?',
  'partial-without-reason':
    'this transect was cut short[ at {value} m], and no reason is given; was it because of what was found?',
  'lone-station-in-stratum':
    'stratum {stratum} has one station, which gives a mean and no spread; can it be joined to a like stratum?',
  'counted-but-no-target':
    '{species} was counted but is not on the list of what was looked for; was it looked for at every station?',
  'targets-assumed': 'no list of target species was given; taken as looked for: {species}',
  'selection-unknown':
    'nobody wrote down how the stations were chosen[ ({stations} of {of} {of:station|stations})]; they are treated as random',
  'selection-mixed':
    'random and hand-picked stations stand together[ ({random} and {handPicked})]; only the random ones speak for the area',
  'station-small-area':
    'this station searched {areaM2} m² of {plannedM2} m² planned; is it still fit to stand for its place?',
} as const satisfies Partial<Record<ProblemCode, string>>;

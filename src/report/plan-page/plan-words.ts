/** The fixed words of a plan page. Cautions of safety are common practice; no source is claimed for them. */

export const planPageWords = {
  invented: 'All of it is invented: places, animals, counts and people.',
  decide: 'What is to be decided',
  noDecision: 'Nobody wrote down what this survey is to decide.',
  where: 'Where the stations are',
  strata: 'Stations over the strata',
  precision: 'What precision to expect, and what it costs',
  belts: 'Where each belt lies',
  noBelts: 'No belts are laid yet.',
  replacements: 'Stations replaced',
  against: 'What became of the plan',
  safety: 'Before the boat leaves',
  made: 'How it was drawn',
  replaceRule:
    'A station that cannot be worked is replaced by the next spare of its stratum, in the order of the list, with the reason written down. A place that looks alike nearby is no replacement: it would favour ground that is easy to reach.',
  handPicked:
    'Hand-picked stations are shown for themselves. They take no part in the estimate of a stratum, in this survey or any later one.',
  safetyRules: [
    'Local rules and the dive supervisor prevail over this page. It computes no decompression, and no depth or hazard is on its maps: it is no chart.',
    'Everybody in the water is trained for the dives planned and fit on the day; nobody dives alone.',
    'Somebody on land has this list, knows when the boat is due, and knows whom to call when it is not.',
    'On board: drinking water, a means of calling that works out there, flares or another signal, first aid and oxygen.',
    'Sea, tide and daylight are judged on the day. A station that is not safe is replaced by the list, never forced.',
    'A bearing is for the diver who lays the tape, not for the boat. Iron near the compass (tanks, anchor, engine) turns it.',
  ],
  exact: 'Positions are exact, for the crew: hand this page to nobody who need not find the animals.',
  made1:
    'Stations are random positions inside the strata on the map, after masked ground was taken off, so that every place left had a known chance. Random positions were spread over the ground; that makes the answer of the same number of stations more exact, and changes nothing about who may be chosen.',
  made2:
    'Bearings were chosen so that every belt stays on its ground. Ground at a border is therefore searched a little less than the rest of its stratum.',
} as const;

/** Why an answer, or a part of it, cannot be given, and what was left out of it. */

import type { ReasonCode } from '../../survey/reason-codes.ts';
import { observersWords } from './observers-words.ts';
import { reasonsAdvice } from './reasons-advice.ts';
import { reasonsChange } from './reasons-change.ts';
import { holdsOfWeights, reasonsValues } from './reasons-values.ts';
import { richnessWords } from './richness-words.ts';

export const reasons: Readonly<Record<ReasonCode, string>> = {
  ...reasonsValues,
  ...reasonsAdvice,
  ...reasonsChange,
  ...richnessWords,
  ...observersWords,
  'unresolved-stations':
    'Held until it is known what was searched at station {stations} (waiting in {where}: {count}); a blank is not a zero',
  'mixed-selection':
    'Held: in {where} random and hand-picked stations stand together. Random ones ({randomStations}) give {randomPerHa} per ha, hand-picked ones ({handPickedStations}) {handPickedPerHa}; together they would give {togetherPerHa}',
  'transects-as-unit':
    'Held: taking {transects} transects for independent stations (there are {stations}) would give a standard error of {wrongStandardErrorPerHa} per ha, where {standardErrorPerHa} is right: {factor} times too sure',
  'stratum-without-area': 'The area of {strata} is not known, so the strata cannot be weighted',
  'lone-station':
    'One station in {strata}: a mean, but no spread; visit another, or take the stratum together with one of like habitat (density --merge)',
  'one-station': 'One station ({station}): a density there, but no spread',
  'too-few-in-subpopulation': 'Too few of the stations ({stations}) lie in {name} for a spread',
  'hand-picked-only':
    'The stations in {where} were picked by hand: the mean is that of the stations visited, and speaks for no other place',
  'no-station': 'No station was worked in {where}',
  'no-searched-area': 'No searched area is on record in {where}',
  'timed-search': '{survey} is a timed search: animals per hour, which are never mixed with densities',
  'not-a-target': '{species} was not looked for in {survey}',
  'none-measured': 'No {species} was measured',
  'lengths-from-one-station':
    'All lengths come from one station: sizes there, but no spread between stations',
  'none-seen': 'No {species} was recorded',
  'left-out-lost':
    'Station {station}, transect {transect}: lost or not done[ ({why})]; in neither the count nor the area',
  'left-out-station-lost': 'Station {station}: every transect lost or not done',
  'left-out-not-looked-for':
    'Station {station}[, transect {transect}]: this species was not looked for there',
  'left-out-accepted': 'Station {station}: left out knowingly by {who}: {why}',
  'left-out-later-swim':
    'Station {station}, transect {transect}: swim {swim} repeats the same belt, for comparing divers, and is not counted twice',
  'local-mean-used':
    'The standard error ({localPerHa} per ha; by the usual formula {usualPerHa}) compares each station with its neighbours: right only for stations that were drawn spread over their ground[; usual formula in {strata}]',
  'local-mean-not-possible': 'The usual standard error stands, not the local-mean one: {why}',
  'few-positive-stations':
    'Found at fewer than 10 stations: the real uncertainty may be larger than this interval',
  'too-few-for-clumped':
    'Fewer than 3 of its stations lie in some stratum, too few for the clumped-count interval: the log-normal interval stands in its place, and the real uncertainty may be larger',
  'finite-population':
    'The stations cover {percent} % of {strata}: the spread shown is wider than it need be (--fpc corrects for that)',
  accepted: 'Let through by {who}[ in spite of {held}], who gave as reason: {why}',
  'ratio-of-sums-used':
    'In {strata} some stations searched much less than planned, so animals and area were added up over stations (ratio of sums)',
  'zero-stratum-prior':
    'None was recorded in {strata}; that adds a little to the upper end of the interval, and not nothing',
  'zero-bound':
    'Not recorded; {percent} % sure below {scatteredPerHa} per ha if scattered, below {clumpedPerHa} if clumped (k\u00a0{k}, {source})',
  'selection-not-recorded':
    'How the stations were chosen is not on record for {stations} of them; they are treated as random',
};

/** What an answer was held for, as it stands in the sentence `accepted`. */
export const holdsInWords: Readonly<Partial<Record<string, string>>> = {
  ...holdsOfWeights,
  'unresolved-stations': 'stations that wait for an answer',
  'mixed-selection': 'random and hand-picked stations standing together',
  'transects-as-unit': 'transects taken for independent stations',
} satisfies Partial<Record<ReasonCode, string>>;

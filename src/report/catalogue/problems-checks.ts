/** What the checks of the whole evening ask: each one question in one sentence. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

const misplaced = '{value}[ ({chart})] lies {distance} from {reference}[, {outside}]';

export const problemsChecks = {
  'lost-but-empty':
    'this transect is marked {value} and also empty; was it searched and empty, or is it outside the count?',
  'empty-with-reason':
    'this transect is marked done and empty, with the reason “{value}”; was it searched, or is it {suggestion}?',
  'transect-entered-twice':
    'the same animals with the same lengths[, {animals} of them,] stand at {value}; was one sheet entered twice?',
  'stations-alike':
    'station {value}[ of {when}] has the same position to the last digit[, {position}]; are they one station under two codes?',
  'two-places-at-once':
    '{person} was at station {value} at the same time[, {from} to {to}]; which times or names are right?',
  'ends-before-it-starts': 'the times {value} end before they start; which is right[, perhaps {suggestion}]?',
  'day-month-exchanged':
    'the date {value} does not fit this survey; is it {suggestion}, day and month exchanged?',
  'date-in-future': 'the date {value} has not come yet[ (today is {today})]; which day was it?',
  'date-outside-survey':
    'the date {value} lies outside this survey[, {first} to {last}]; is it right[, or was it {suggestion}]?',
  'hemisphere-missing': `${misplaced}; was the hemisphere left out: {suggestion}[, or {others}]?`,
  'latitude-longitude-exchanged': `${misplaced}; latitude and longitude exchanged: {suggestion}[, or {others}]?`,
  'digits-exchanged': `${misplaced}; swapped digits: {suggestion}[, or {others}]?`,
  'minutes-for-seconds': `${misplaced}; minutes and seconds taken for decimals: {suggestion}[, or {others}]?`,
  'far-from-plan': `${misplaced}; was the station moved, and why?`,
  'far-from-others': `${misplaced}; is this position right?`,
  'position-same-as-plan':
    'the position {value} is the planned one to the last digit; was it read off the receiver, or copied?',
  'end-far-from-start':
    'the end {value}[ ({chart})] lies {distance} from the start; which of the two is right[: is the end {suggestion}]?',
  'boat-too-fast':
    'station {value} lies {distance} away and was left {minutes} {minutes:minute|minutes} before; which times or positions are right?',
  'random-without-plan':
    'this station is marked random and has no planned position[, as {planned} of {of} random ones {planned:has|have}]; was it drawn, or {suggestion}?',
  'belt-length-unusual':
    'belts of {value} m[ (transect {where})] where {plannedM} m were planned; what was searched[: {suggestion} m]?',
  'belt-width-unusual':
    'belts {value} m wide[ (transect {where})] where {plannedM} m were planned; how wide were they[: {suggestion} m]?',
  'done-but-short':
    'belts of {value} m[ (transect {where})] are marked done where {plannedM} m were planned; were they cut short, and why[, or is it {suggestion} m]?',
  'more-transects-than-planned':
    '{value} {value:transect|transects} where {planned} {planned:was|were} planned; does {last} belong to this station?',
  'fewer-transects-than-planned':
    '{value} {value:transect|transects} where {planned} {planned:was|were} planned; are the others lost, not done, or not yet entered?',
  'depth-outside-stratum':
    'a depth of {value} m in stratum {stratum}[, which goes {range}]; is the depth right, or the stratum?',
  'cover-not-whole': 'the bottom cover adds up to {value} %; what is missing, or counted twice?',
  'species-outside-depth':
    '{species} at {value} m[ (transect {transect}, {count} counted)], but it is known {range}; is it this species?',
  'species-outside-habitat':
    '{species} in {value}[ (stratum {stratum}: {where})], but it is known from {habitats}; is it this species, or is the list short?',
  'length-unit-slip':
    '{value} mm[ and {more} more], but {species} goes from {least} to {most} mm; {unit} typed? {suggestion}?',
  'length-outside-range':
    '{value} mm[ and {more} more], but {species} goes[ from {least}][ to {most}] mm; was it measured so?',
  'count-stopped-at-cap':
    '{value} of {dense} counts of {cap} animals or more stop at exactly {cap}, all measured[ ({where})]; was the count after the last length forgotten?',
  'count-outlier':
    '{value} {species} here, where the {others} other stations of {stratum} let one expect {upper} at the most; is the count right?',
  'digit-preference':
    '{value} of {lengths} lengths[ of {recorder}] end in 0 or 5, where 20 % are expected; were they measured or rounded?',
  'planned-not-visited':
    'of {of} planned {of:station|stations} of plan {plan}, {missed} {missed:was|were} neither visited nor replaced: {value}; say why in the plan, or take spares for them, as the strata have fewer than was reckoned with',
} as const satisfies Partial<Record<ProblemCode, string>>;

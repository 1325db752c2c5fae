/** Sentences about plans: one for every code, so that a new code without a sentence does not compile. */

import type { PlanProblem, PlanProblemCode } from '../../planning/size/plan-problem.ts';
import { formatShort, formatSignificant } from '../numbers.ts';
import { fillSentence } from './fill.ts';
import { drawWords } from './plan-draw-words.ts';

const sentences: Readonly<Record<PlanProblemCode, string>> = {
  'plan-number-impossible': '{what} is {value}; it has to be {range}',
  'plan-not-whole': '{what} is {value}; it has to be a whole number',
  'plan-no-strata': 'no stratum is given; a plan needs at least one, with its area',
  'plan-no-species':
    'no species is left to plan for: name one that the earlier survey counted, or type its numbers',
  'plan-name-repeated': '"{name}" is given twice; say once what is meant',
  'plan-area-missing':
    'the area is not known of {strata}; give it in hectares (table strata), or leave the stratum out',
  'plan-spread-missing':
    'the spread between stations is not known of {strata}; give it, or split by area alone (--rule proportional)',
  'plan-cost-missing': 'the cost of a station is not known of {strata}; give it as in --cost "terrace: 90"',
  'plan-no-spread-anywhere':
    'all stations of the earlier survey showed the same density, so nothing says how uneven the animals are; use typed values',
  'plan-stratum-without-spread':
    '{stratum}: all stations showed the same, spread 0, so the rule alone gives none there, and {stations} {stations:station is|stations are} the minimum. Nothing seen at a few stations is no proof of nothing there',
  'plan-minimum-needs-more':
    '{stations} {stations:station is|stations are} too few: {strata} {strata:stratum|strata} with at least {minimum} each need {needed}; plan more, merge strata, or lower --minimum',
  'plan-budget-too-small':
    'the budget of {budget} is too small: {minimum} {minimum:station|stations} in each stratum cost {needed}; merge strata or lower --minimum',
  'plan-ground-too-small':
    '{stations} {stations:station does|stations do} not fit: the strata hold {room} at most',
  'plan-stratum-full':
    '{stratum} holds {stations} {stations:station|stations} and no more; the others went elsewhere',
  'plan-pilot-too-small':
    'the spread rests on {stations} {stations:station|stations}; at least {atLeast} are needed to see one',
  'plan-pilot-lone-station':
    '{survey}: only one station was searched in {strata}, and one station shows no spread; merge strata in the book, plan from another survey, or use typed values',
  'plan-pilot-no-counts':
    '{survey} holds no searched station, so there is nothing to plan from; use typed values',
  'plan-pilot-stratum-empty':
    '{survey}: no station was searched in {strata}; the plan leaves that ground out',
  'plan-pilot-none-seen':
    '{species}: none at {stations} {stations:station|stations} of {survey} ({areaM2} m² searched), 95 % sure below {belowPerHa} per ha; how uneven they are cannot be known, so no CV is planned[; {moreStations} {moreStations:station|stations} without one would put it below {moreBelowPerHa} per ha]',
  'plan-pilot-stratum-none-seen':
    '{species}: none seen in {strata} in {survey}, so the plan counts on none there; a few would make the survey less exact than said',
  'plan-pilot-stations-unused':
    '{species}: {stations} {stations:station|stations} of {survey} {stations:was|were} hand-picked, lost or not resolved and {stations:has|have} no say here',
  'plan-pilot-fewer-strata':
    '{species}: looked for in {strata} only in {survey}, so it has no part in a plan of all strata; name it alone (--species)',
  'plan-goal-unclear': 'say one goal: --cv 0.2, --margin 0.3 or --change 0.5; {given} were given',
  'plan-source-unclear':
    'name one source of numbers: --survey with an earlier survey of the book, or typed values; both or neither leave it open',
  'plan-split-unclear': 'say what is to be split: --stations 40 or --budget 6000, one of the two',
  'plan-first-species-decides':
    'a budget is split for one species at a time: {species} decides here; name the one that matters with --species',
  'plan-shared-ignores-costs':
    'several species share the stations by precision alone; the costs are added up, not weighed (--rule cost is for one species)',
  'plan-two-costs':
    '--station-cost and --transect-cost go together: what reaching a station costs, and what one transect there',
  'plan-days-need-rate': '{what} needs --stations-a-day: how many stations the boat works in one day',
  'plan-change-is-none': 'a change by the factor 1 is no change; 0.5 is a halving, 2 a doubling',
  'plan-few-in-stratum':
    '{stratum} would have {stations} {stations:station|stations}; below 3 the spread there is hardly known[. Merge it with {other}, the most alike, before the draw, or plan 3]',
  'plan-stratum-unknown':
    'there is no stratum "{name}" here[; did you mean "{nearest}"?][; known are {known}]',
  'plan-leaves-strata':
    'the plan has no stations in {strata}, which {survey} had; the two surveys would not speak of the same ground',
  'plan-no-variance-between':
    'stations were alike; nothing limits the number of transects at one station but the dive',
  'plan-change-not-tellable':
    '{stations} {stations:station|stations} in all {stations:leaves|leave} nothing to tell a change from chance',
  'plan-ground-not-found':
    '{stratum}: {tries} tries found {found} {found:position|positions} of {wanted}; is its area a thin line, or masked away?',
  'plan-spacing-leaves-too-few':
    '{stratum}: {wanted} stations at least {spacingM} m apart do not fit; {found} {found:was|were} found in {tried} tries. Ask for fewer, or less spacing',
  'plan-spares-short': '{stratum}: {found} spare {found:station|stations} of {wanted} {found:was|were} found',
  'plan-too-many-candidates':
    '{stratum}: a grid of {spacingM} m has {candidates} places, more than {most}; choose a wider one',
  'plan-too-few-candidates':
    '{stratum}: {candidates} {candidates:place|places} for {wanted} {wanted:station|stations}; choose a finer grid',
  'plan-fixed-exceed-stations':
    '{stratum}: {fixed} fixed {fixed:station is|stations are} more than the {stations} planned',
  'plan-fixed-outside': 'fixed station {code} lies outside {stratum}; it cannot speak for it',
  'plan-hand-picked-outside':
    'hand-picked station {code} lies outside {stratum}; it is planned all the same and speaks only for itself',
  'plan-hand-picked':
    '{stratum}: hand-picked stations ({count}) take no part in its estimate, and stay marked for life',
  'plan-spacing-ignored-by-fixed':
    'fixed stations {code} and {other} lie {distanceM} m apart, nearer than the {spacingM} m asked for; both stay',
  'plan-unknown-station': 'there is no station {code} in the plan[; did you mean {nearest}?]',
  'plan-station-already-dropped': 'station {code} is dropped already',
  'plan-not-replaceable':
    'station {code} is {selection}; only a drawn one can be replaced by the next of its list',
  'plan-no-replacement-left':
    'no spare station is left in {stratum} to replace {code}; draw more spares before the trip',
  'plan-reason-missing': 'say why station {code} is dropped; the reason stays with the plan',
  ...drawWords,
  'plan-lone-station':
    '{stratum} has one planned station: the report will have no standard error for it, nor for the whole',
  'plan-rehearsal-too-few':
    '{stations} {stations:station|stations} cannot be rehearsed over {strata} {strata:stratum|strata}: without two in each there is no spread, and that takes {needed}',
  'plan-density-missing': '{species}: no density is expected in {strata}; give one, or leave the species out',
};

/** What a number that was typed is called by the person who typed it. */
const numbers: Readonly<Record<string, string>> = {
  minimumSpacingM: 'the minimum spacing (m)',
  candidates: 'the number of possible places',
  spares: 'the number of spares',
  beltLengthM: 'the length of a belt (m)',
  beltWidthM: 'the width of a belt (m)',
  gapM: 'the gap between belts (m)',
  belts: 'the number of belts',
  turnDeg: 'the turn between belts (degrees)',
  bendDeg: 'the turn of a --bend (degrees; beyond a right angle a belt comes back over the last one)',
  share: 'the share of stations to visit again',
  redraws: 'the number of redraws',
  stationCv: 'the CV between stations',
  targetCv: 'the wanted CV',
  margin: 'the wanted margin',
  confidence: 'the confidence',
  assurance: 'the confidence in the pilot',
  power: 'the power',
  significance: 'the risk of a false alarm (1 - confidence)',
  populationStations: 'the number of stations the ground could hold',
  meanPerStation: 'the mean count at a station',
  meanPerHa: 'the mean density',
  clumpingK: 'the clumping k',
  stations: 'the number of stations',
  stationsBefore: 'the number of stations before',
  stationsAfter: 'the number of stations after',
  stationsPerBoatDay: 'the stations a boat works in a day',
  boatDays: 'the number of boat days',
  days: 'the number of boat days',
  dayCost: 'the cost of a boat day',
  extraStations: 'the number of further stations',
  minimum: 'the minimum of stations in a stratum',
  budget: 'the budget',
  varianceOfMean: 'the wanted variance',
  areaHa: 'the area of a stratum',
  standardDeviation: 'the spread in a stratum',
  costPerStation: 'the cost of a station',
  costPerTransect: 'the cost of a transect',
  mostStations: 'the stations a stratum can hold',
  searchedAreaM2: 'the area searched at a station (m²)',
  surveys: 'the number of rehearsed surveys',
  simulations: 'the number of simulations',
  seed: 'the seed',
  change: 'the change',
  densityPerHa: 'the expected density',
  animalsPerStation: 'the expected number of animals at a station',
  earlierDensityPerHa: 'the earlier density',
  earlierCv: 'the CV of the earlier estimate',
  earlierDegreesOfFreedom: 'the degrees of freedom of the earlier estimate',
};

/** A finding about a plan, as a person reads it. */
export function planSentence(problem: PlanProblem): string {
  const words: Record<string, string> = {};
  for (const [name, value] of Object.entries(problem.parameters)) {
    if (value === '') continue;
    if (name === 'what') words[name] = numbers[String(value)] ?? String(value);
    else if (name.toLowerCase().endsWith('belowperha')) words[name] = formatSignificant(Number(value), 2);
    else words[name] = typeof value === 'string' ? value : formatShort(value);
  }
  return fillSentence(sentences[problem.code], { ...words, ...rangeOf(words) });
}

/** "above 0 and at most 2". */
function rangeOf({ above, atLeast, below, atMost }: Readonly<Record<string, string>>) {
  const ends = [
    above === undefined ? null : `above ${above}`,
    atLeast === undefined ? null : `at least ${atLeast}`,
    below === undefined ? null : `below ${below}`,
    atMost === undefined ? null : `at most ${atMost}`,
  ].filter((end) => end !== null);
  return ends.length === 0 ? {} : { range: ends.join(' and ') };
}

/** The sentence of a code with its slots, for tests and lists. */
export function planTemplate(code: PlanProblemCode): string {
  return sentences[code];
}

/** Findings as lines: what stops first, then cautions and notes; what is said of several names is said once. */
export function planProblemLines(problems: readonly PlanProblem[]): readonly string[] {
  const once = joined(joined(problems, 'species'), 'stratum');
  return (['stop', 'explain', 'note'] as const).flatMap((severity) =>
    once
      .filter((problem) => problem.severity === severity)
      .map((problem) => `${severityWords[severity]}: ${planSentence(problem)}`),
  );
}

const severityWords = { stop: 'stop', explain: 'caution', note: 'note' } as const;

/** Problems that differ in this one name become one with all the names. */
function joined(problems: readonly PlanProblem[], by: 'species' | 'stratum'): readonly PlanProblem[] {
  const groups = new Map<string, PlanProblem>();
  problems.forEach((problem, i) => {
    const { [by]: name, ...others } = problem.parameters;
    const key = name === undefined ? String(i) : JSON.stringify([problem.code, others]);
    const known = groups.get(key);
    const names = known === undefined || name === undefined ? name : `${known.parameters[by]}, ${name}`;
    const parameters = names === undefined ? problem.parameters : { ...problem.parameters, [by]: names };
    groups.set(key, { ...problem, parameters });
  });
  return [...groups.values()];
}

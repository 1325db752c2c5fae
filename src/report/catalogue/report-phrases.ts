/** Sentences of the report that hold numbers or names, and the heads of its tables. Numbers come formatted. */

import { counted } from '../../survey/counted.ts';
import { reportPhrasesFr } from './french/report-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  page: {
    title: (book: string, survey: string) => `${book}: ${survey}`,
    madeOn: (on: string, version: string, data: string) =>
      `Made on ${on} with Slateline ${version} from data version ${data}.`,
    madeAsOf: (made: string, moment: string) =>
      `${made} It shows the book as it stood at ${moment}; what was written since is not in it.`,
    asOf: (moment: string) => `The book as it stood at ${moment}`,
    foot: (title: string, made: string) => `${title}, ${made}`,
    decision: (decision: string) => `The decision: ${decision}`,
    targets: (made: string, species: string) => `${made}: ${species}.`,
  },
  answer: {
    strata: (n: string, one: boolean) => `${n} ${one ? 'stratum' : 'strata'}`,
    inStrata: (strata: string) => `In ${strata}`,
    inArea: (areaHa: string, strata: string) => `In ${areaHa} ha of ${strata}`,
    stations: (n: string, one: boolean) => `${n} ${one ? 'station was' : 'stations were'}`,
    days: (n: string, one: boolean) => `${n} ${one ? 'day' : 'days'}`,
    workDone: (where: string, stations: string, days: string, areaM2: string) =>
      `${where}, ${stations} worked on ${days} and ${areaM2} m² were searched.`,
    asked: (n: string, parts: string) => `Of ${n} species asked about, ${parts}.`,
    estimated: (n: string, one: boolean) => `${n} ${one ? 'has' : 'have'} an estimate`,
    zero: (n: string, one: boolean) => `${n} ${one ? 'was' : 'were'} looked for and not recorded`,
    open: (n: string, one: boolean) =>
      `${n} ${one ? 'has' : 'have'} no answer yet, for the reason that stands with it`,
    fewStations: (species: string) =>
      `Found at fewer than 10 stations, so that the real uncertainty may be larger than the interval: ${species}.`,
  },
  density: {
    wholeInWords: (n: number) => `Densities over the whole surveyed area, ${n} species`,
    whole: (survey: string) => `Whole surveyed area, ${survey}`,
    areaUnknown: 'area not known',
    speciesInWords: (species: string, n: number) =>
      `${species}: densities in ${counted(n, 'stratum', 'strata')}`,
    byStratum: (survey: string) => `By stratum, ${survey}`,
    stratumByStratum: 'Stratum by stratum',
    bySurvey: 'Densities survey by survey',
  },
  heads: {
    species: 'Species',
    stratum: 'Stratum',
    survey: 'Survey',
    animals: 'Animals',
    measured: 'Measured',
    meanMm: 'Mean, mm',
    errorMm: 'Standard error, mm',
    halfBelowMm: 'Half are below, mm',
    limitMm: 'Limit, mm',
    atLeastLimit: 'At or above the limit',
    day: 'Day',
    stations: 'Stations',
    which: 'Which',
    areaHa: 'Area, ha',
    days: 'Days',
    beltsSearched: 'Belts searched',
    lost: 'Lost or not done',
    blank: 'Blank',
    searchedM2: 'Searched, m²',
  },
  unknown: 'unknown',
  sizes: {
    inWords: (species: string, sizes: string) => `Lengths of ${species}: ${sizes}`,
    caption: (survey: string) => `Lengths, ${survey}`,
    length: 'length',
    measures: {
      'body relaxed': 'body length, relaxed',
      'body contracted': 'body length, contracted',
      'basal diameter': 'basal diameter',
      'shell length': 'shell length',
    },
    noLimit: 'none given',
    notListed: 'a species that is not listed',
    limits: (source: string, told: string) => `Limits, ${source}: ${told}.`,
    borrowed: (species: string, some: string, all: string) =>
      `${species}: ${some} of ${counted(all, 'animal')} ${some === '1' ? 'was' : 'were'} on belts where none was measured; ${some === '1' ? 'it takes the lengths of its station, or else of its stratum' : 'they take the lengths of their station, or else of their stratum'}.`,
    noteOf: (species: string, note: string) => `${species}: ${note}.`,
    counted: (n: string, one: boolean) => `${n} ${one ? 'animal' : 'animals'} counted`,
    noneMeasured: (counted: string) => `${counted}, none measured`,
    measured: (counted: string, n: string) => `${counted}, ${n} measured`,
    limitAt: (mm: string) => `limit ${mm} mm`,
  },
  strips: {
    stations: (stratum: string, n: string, one: boolean) =>
      `${stratum}, ${n} ${one ? 'station' : 'stations'}`,
    full: (n: string) => `Where there are too many animals for strokes, a belt filled to the top holds ${n}.`,
    animals: (n: string, one: boolean) => `${n} ${one ? 'animal' : 'animals'}`,
    searched: (some: number, all: number) => `${some} of ${counted(all, 'belt')} searched`,
    nothing: (station: string) => `station ${station}: nothing written`,
    inWords: (station: string, belts: string) => `station ${station}, belt by belt: ${belts}`,
    states: { zero: 'zero', lost: 'lost', 'not looked for': 'not looked for', unresolved: 'unresolved' },
  },
  effort: {
    allStrata: 'All strata',
    notKnown: 'not known',
    byStratum: 'Stations and searched area by stratum',
    byDay: (survey: string) => `${survey}: stations of each day`,
    planned: (planned: string, visited: string, replaced: string) =>
      `${counted(planned, 'station was', 'stations were')} planned, ${visited} of them visited; ${replaced} had been replaced by the next of the list.`,
    handPicked: (planned: string, visited: string) =>
      ` Hand-picked stations beside them: ${planned} planned, ${visited} visited.`,
    ofPlan: (survey: string, plan: string, told: string) => `${survey}, plan ${plan}: ${told}`,
    notVisited: (codes: string) => ` Not visited: ${codes}.`,
    notInPlan: (codes: string) => ` Worked and not in the plan: ${codes}.`,
    andMore: (codes: string, n: string) => `${codes} and ${n} more`,
  },
  where: {
    inWords: (n: string, strata: string) => `Map of ${counted(n, 'station')} in the strata ${strata}`,
    without: (codes: string) => ` Stations without a position on record: ${codes}.`,
    shown: (some: string, all: string) => `${some} of ${counted(all, 'station')}.`,
    drawnTogether:
      ' Longitudes are drawn together by the cosine of the latitude: right for a few kilometres.',
    noMap: 'No map is drawn.',
    borders: ' Thin lines are the borders of the strata.',
    bordersRounded: ' Thin lines are the borders of the strata; a rounded point may stand outside its own.',
    sideBySide: ' Stations that fall on one rounded point stand side by side.',
    positions: {
      exact: 'Positions are exact: keep this sheet in the office.',
      rounded:
        'Positions are rounded to a hundredth of a degree (about 1 km), so that this page leads nobody to the animals.',
      none: 'Positions are kept back in this document.',
    },
    ring: (zone: string) => `ring: ${zone}`,
  },
  signs: {
    title: (signs: string) => `Signs: ${signs}`,
    stroke: 'a stroke for each animal',
    filled: 'many animals: filled height',
    empty: 'searched and empty',
    lost: 'lost or not done',
    blank: 'blank: waits for an answer',
    notLookedFor: 'not looked for',
    short: 'cut short',
  },
} as const;

export type ReportPhrases = SameShape<typeof english>;

export function reportPhrases(language: Language): ReportPhrases {
  return language === 'fr' ? reportPhrasesFr : english;
}

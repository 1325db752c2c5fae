/** All the words of a plan page. Numbers come formatted. Cautions of safety are common practice; no source is claimed for them. */

import { planPagePhrasesFr } from './french/plan-page-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  title: (book: string, plan: string) => `${book}: plan ${plan}`,
  forSurvey: (survey: string) => `For ${survey}. `,
  drawn: (on: string, by: string) => `Drawn on ${on} by ${by}.`,
  exact: 'Positions are exact, for the crew: hand this page to nobody who need not find the animals.',
  decide: {
    head: 'What is to be decided',
    none: 'Nobody wrote down what this survey is to decide.',
    stations: (n: string, strata: string, picked: string, spares: string) =>
      `${counted(n, 'station', 'stations')} in ${counted(strata, 'stratum', 'strata')}${picked}; ${counted(spares, 'spare', 'spares')}.`,
    picked: (n: string) => `, and ${n} hand-picked beside them`,
    noBelts: 'No belts are laid yet.',
    belts: (n: string, size: string, gapM: string) =>
      `At each station ${counted(n, 'belt', 'belts')} of ${size} in series, ${gapM} m apart.`,
    long: (lengthM: string) => `${lengthM} m`,
    longAndWide: (lengthM: string, widthM: string) => `${lengthM} m by ${widthM} m`,
  },
  safety: {
    head: 'Before the boat leaves',
    rules: [
      'Local rules and the dive supervisor prevail over this page. It computes no decompression, and no depth or hazard is on its maps: it is no chart.',
      'Everybody in the water is trained for the dives planned and fit on the day; nobody dives alone.',
      'Somebody on land has this list, knows when the boat is due, and knows whom to call when it is not.',
      'On board: drinking water, a means of calling that works out there, flares or another signal, first aid and oxygen.',
      'Sea, tide and daylight are judged on the day. A station that is not safe is replaced by the list, never forced.',
      'A bearing is for the diver who lays the tape, not for the boat. Iron near the compass (tanks, anchor, engine) turns it.',
    ],
  },
  strata: {
    head: 'Stations over the strata',
    all: 'All strata',
    caption:
      'Stations of each stratum. W: its share of the area; fixed ones are among the stations, hand-picked ones beside them',
    areaHa: 'Area, ha',
    share: 'W',
    maskedHa: 'Masked, ha',
    stations: 'Stations',
    fixed: 'Fixed',
    handPicked: 'Hand-picked',
    replaced: 'Replaced',
    sparesLeft: 'Spares left',
    handPickedRule:
      'Hand-picked stations are shown for themselves. They take no part in the estimate of a stratum, in this survey or any later one.',
    replaceRule:
      'A station that cannot be worked is replaced by the next spare of its stratum, in the order of the list, with the reason written down. A place that looks alike nearby is no replacement: it would favour ground that is easy to reach.',
  },
  where: {
    head: 'Where the stations are',
    inWords: (n: string, strata: string) => `Map of ${n} planned stations and spares in ${strata}`,
    noMap: (detail: string) => `No map is drawn. ${detail}`,
    caption: (stacked: string, links: string) =>
      `Borders as on the map of the book. Codes of spares are in the table.${stacked}${links} Longitudes are drawn together by the cosine of the latitude: right for a few kilometres. No depths: this is no chart.`,
    stacked: ' Stations of one rounded point lie on one another.',
    links: ' A dashed line leads from a dropped station to the one in its place.',
    masked: 'masked off before the draw',
    kinds: {
      random: 'new, drawn at random',
      fixed: 'fixed, visited again',
      'hand-picked': 'hand-picked',
      spare: 'spare',
      dropped: 'dropped',
    },
  },
  precision: {
    head: 'What precision to expect, and what it costs',
    species: 'Species',
    densityPerHa: 'Then, per ha',
    cv: 'CV expected',
    cvAssured: 'CV to count on',
    fall: 'Fall told, to',
    rise: 'Rise told, to',
    caption: (pilot: string) =>
      `From the spread of ${pilot}. To count on: in 8 of 10 such surveys no worse. Fall and rise: the smallest change against it, as a factor, told 8 times in 10 at 95 % with the CV to count on (formula, log ratio)`,
    unseen: (pilot: string, species: string) =>
      `Never met in ${pilot}, so nothing can be promised: ${species}.`,
    notKnown: (reason: string) => `Not known without a pilot: ${reason}.`,
    notKnownFrom: (reason: string, pilot: string) => `Not known without a pilot: ${reason} (${pilot}).`,
    noEarlier: 'the book holds no earlier survey',
    unreadable: 'it cannot be read',
    noSpreadIn: (strata: string) => `it shows no spread in ${strata}`,
    noSpread: 'it shows no spread of any species',
    noRate: (stations: string) =>
      `What it costs is not known: nobody said how many of the ${stations} stations a boat works in a day.`,
    cost: (stations: string, perDay: string, days: string, money: string) =>
      `${counted(stations, 'station', 'stations')} at ${perDay} a day ${stations === '1' ? 'is' : 'are'} ${counted(days, 'boat day', 'boat days')}${money}; days lost to weather come on top.`,
    money: (whole: string, perDay: string) => `, ${whole} at ${perDay} a day`,
  },
  belts: {
    head: 'Where each belt lies',
    bearings: (day: string, model: string, inside: string) =>
      `Bearings for ${day}: true from the map, and by compass; ${model}. Inside: the share of belt on its ground${inside}.`,
    alongLine: ', along its line',
    wholeWidth: ', over its whole width',
    misfits: (codes: string) => `Not wholly on their ground: ${codes}.`,
    details:
      'Each station from above, to scale, north up. The ring is the start; a broken line is the border of its stratum, a dotted one of a mask.',
    detailInWords: (station: string, belts: string, bearing: string) =>
      `station ${station}: ${belts} belts on ${bearing} true`,
    north: 'N',
    station: 'Station',
    belt: 'Belt',
    chosen: 'Chosen',
    position: 'Position (WGS84)',
    start: 'Start (WGS84)',
    end: 'End',
    true: 'True',
    compass: 'Compass',
    declination: 'Declination',
    inside: 'Inside',
    caption: 'Stations in the order of the list',
    laidCaption: 'Stations in the order of the list; start of the first belt, end of the last',
    turningCaption: 'Series that turn, belt by belt',
  },
  replacements: {
    head: 'Stations replaced',
    dropped: 'Dropped',
    replacement: 'In its place',
    none: 'none was left',
    stratum: 'Stratum',
    why: 'Why',
    who: 'Who, when',
    caption: 'Replaced by the next of the list',
  },
  against: {
    head: 'What became of the plan',
    planned: 'Planned',
    visited: 'Visited',
    replaced: 'Replaced',
    notVisited: 'Not visited',
    caption: 'Planned stations, visited ones, and those replaced',
  },
  made: {
    head: 'How it was drawn',
    apart: (metres: string) => `, at least ${metres} m apart`,
    method: (method: string, apart: string, seed: string) => `${method}${apart}; seed ${seed}.`,
    revisits: (survey: string) => ` Fixed stations are those of ${survey}.`,
    chance:
      'Stations are random positions inside the strata on the map, after masked ground was taken off, so that every place left had a known chance. Random positions were spread over the ground; that makes the answer of the same number of stations more exact, and changes nothing about who may be chosen.',
    bearings:
      'Bearings were chosen so that every belt stays on its ground. Ground at a border is therefore searched a little less than the rest of its stratum.',
  },
} as const;

function counted(n: string, one: string, many: string): string {
  return `${n} ${n === '1' ? one : many}`;
}

export type PlanPagePhrases = SameShape<typeof english>;

export function planPagePhrases(language: Language): PlanPagePhrases {
  return language === 'fr' ? planPagePhrasesFr : english;
}

import { counted } from '../../survey/counted.ts';

export const answersEn = {
  title: 'Answers',
  report: 'Open the report',
  what: 'What',
  whats: { densities: 'Densities', sizes: 'Sizes' },
  by: 'One answer for each',
  bys: { survey: 'survey', stratum: 'stratum', site: 'site', zone: 'zone', station: 'station' },
  surveys: 'Surveys',
  thisSurvey: 'this survey',
  allSurveys: 'all surveys of the book',
  species: 'Species',
  allSpecies: 'all species',
  place: 'Place',
  allPlaces: 'all places',
  order: 'Order',
  orders: {
    name: 'by species',
    most: 'most first',
    surest: 'best known first',
    place: 'by place',
  },
  limit: 'Share at least as long as, mm',
  offline:
    'The program that holds the book does not answer. These answers are as they were when it last did.',
  basis: {
    /** `since` and `waits` are empty where there is nothing of the kind. */
    here: (at: string, since: string, waits: string) =>
      `Computed on this laptop from the book as of ${at}${since}${waits}.`,
    since: (n: number) => (n === 1 ? ', 1 sheet sent since' : `, ${n} sheets sent since`),
    waits: (sheets: number, answers: number) => {
      const all = [
        ...(sheets === 0 ? [] : [sheets === 1 ? '1 sheet' : `${sheets} sheets`]),
        ...(answers === 0 ? [] : [answers === 1 ? '1 answer' : `${answers} answers`]),
      ];
      return ` and ${all.join(' and ')} that ${sheets + answers === 1 ? 'waits' : 'wait'}`;
    },
    leftOut: (n: number) =>
      n === 1
        ? 'One that needs you before the book can take it is not in it.'
        : `${n} that need you before the book can take them are not in it.`,
  },
  surveysNotSeen: (n: number) =>
    n === 1
      ? 'This browser has not seen the answers of 1 survey yet; it is not shown.'
      : `This browser has not seen the answers of ${n} surveys yet; they are not shown.`,
  interval: 'Interval',
  intervals: {
    clumped: 'animals in clumps (usual)',
    lognormal: 'log-normal',
    t: 'symmetric (Student’s t)',
    percentile: 'stations drawn again, percentiles',
    bca: 'stations drawn again, BCa',
  },
  confidence: 'Holds in',
  confidencePercent: (percent: string) => `${percent} % of surveys`,
  notSeen:
    'The program that holds the book does not answer, and this browser has not seen these answers yet. Once it runs again, they come by themselves.',
  empty:
    'There is no answer yet: no species is looked for in this survey, or no sheet was typed. Type the first sheet under Sheets.',
  noneChosen: 'Nothing fits this choice. Choose all species and all places to see every answer.',
  held: (n: number) => (n === 1 ? '1 answer is held' : `${n} answers are held`),
  heldText: 'No number is given before its reason is cleared up.',
  accept: {
    open: 'Go ahead in spite of it',
    text: 'The numbers are then given with your name and reason beside them. This holds on this screen until you leave it; the report and the questions stay as they are.',
    who: 'Who stands for it',
    why: 'Why',
    give: 'Give the numbers',
    needed: 'Who stands for it, and why? Both are printed with the result.',
    given: (who: string, why: string) => `Held answers are let through by ${who}, who gave as reason: ${why}`,
    back: 'Hold them again',
  },
  toQuestions: 'To the questions',
  bandsTitle: 'Animals per hectare',
  bandsText:
    'The darker the band, the more the counts speak for that density. The tall tick is the estimate, the hair lines are the ends of the interval. Where none was recorded the band fades from zero; the dotted line is the bound if animals lie scattered, the full one if they lie in clumps.',
  axis: (even: string) => `animals per hectare: even up to ${even}, then multiplying`,
  perHa: (value: string) => `${value} per ha`,
  between: (percent: string, low: string, high: string) => `${percent} %: ${low} to ${high}`,
  noSpread: 'how far off this may be is not known',
  notRecorded: 'not recorded',
  below: (percent: string, bound: string) => `${percent} %: below ${bound} per ha`,
  stations: (withSpecies: string, all: string, animals: string) =>
    `at ${withSpecies} of ${counted(all, 'station')}, ${counted(animals, 'animal')}`,
  atNone: (all: string, area: string) =>
    `${all === '1' ? 'not at the 1 station' : `at none of ${all} stations`}, ${area} m² searched`,
  withCv: (seen: string, percent: string) => `${seen}; CV\u00a0${percent}\u00a0%`,
  stock: (animals: string, low: string, high: string, area: string) =>
    `stock ${animals} (${low} to ${high}) in ${area}\u00a0ha`,
  stockBelow: (bound: string, area: string) => `stock below ${bound} in ${area}\u00a0ha`,
  origin: 'Where does this come from?',
  originOf: (what: string) => `Where does this come from: ${what}`,
  remarks: (n: number) => (n === 1 ? '1 remark' : `${n} remarks`),
  /** The reason names the station and the belt. */
  leftOut: (reason: string) => `Left out: ${reason}`,
  ofAll: 'Of every answer shown',
  leftOutOfAll: (n: number) =>
    n === 1 ? '1 belt or station is left out of them' : `${n} belts or stations are left out of them`,
  ofPlaces: (n: number) =>
    n === 1 ? 'Remarks on every answer of one place' : `Remarks on every answer of a place (${n} places)`,
  sizesTitle: 'Lengths',
  sizesText:
    'Lengths raised to the counts: each bar is the share of one class of 20 mm. Heights and millimetres are the same for all rows.',
  mean: (mm: string, se: string) => `mean ${mm} mm (standard error ${se} mm)`,
  meanOnly: (mm: string) => `mean ${mm} mm`,
  middle: (p10: string, p50: string, p90: string) =>
    `half of them up to ${p50} mm; 8 in 10 from ${p10} to ${p90} mm`,
  measured: (measured: string, animals: string) => `${measured} of ${counted(animals, 'animal')} measured`,
  atLeast: (limit: string, share: string) => `${share} % at least ${limit} mm`,
  atLeastBetween: (percent: string, low: string, high: string) => ` (${percent} %: ${low} to ${high} %)`,
  borrowed: (animals: string) => `lengths of ${counted(animals, 'animal')} were borrowed from other stations`,
  barsInWords: (what: string) => `shares of length classes, ${what}`,
  table: 'Table',
  tableText: 'All digits, as other programs read them. An empty cell is unknown, never zero.',
  copy: 'Copy the table',
  copied: (rows: number) => (rows === 1 ? '1 row copied.' : `${rows} rows copied.`),
  notCopied: 'The browser did not let the table be copied; it is marked below: copy it by hand.',
  version: (version: string) => `data version ${version}`,
  from: {
    back: 'Back to the answers',
    title: (species: string) => `Where the number of ${species} comes from`,
    sum: (animals: string, area: string, stations: string, withSpecies: string) =>
      `${counted(animals, 'animal')} on ${area} m² at ${counted(stations, 'station')} that looked for it; seen at ${withSpecies}.`,
    rule: 'The station is the unit: its animals over its searched area. Strata weigh by their mapped area, never by how often the boat went there. Lost belts and belts where it was not looked for are in neither.',
    outside: (n: number) =>
      n === 1 ? '1 station is not in the number:' : `${n} stations are not in the number:`,
    station: 'Station',
    stratum: 'Stratum',
    date: 'Day',
    strip: 'Belts',
    animals: 'Animals',
    area: 'Searched, m²',
    density: 'Per ha',
    open: (code: string) => `Belts and animals of ${code}`,
    sheet: 'Open the sheet',
    beltColumn: 'Belt',
    state: 'State',
    count: 'Counted',
    lengths: 'Each animal measured, mm',
    more: (n: string) => `and ${n} counted without a length`,
    swim: (swim: number) => `, swim ${swim}`,
    none: 'No station of this survey fits.',
  },
  stationStates: {
    observed: 'looked for',
    'not looked for': 'not looked for',
    lost: 'lost',
    unresolved: 'blank: waits for an answer',
  } as Readonly<Record<string, string>>,
  beltStates: {
    counted: 'counted',
    zero: 'searched, none seen',
    'not looked for': 'not looked for',
    lost: 'lost or not done',
    unresolved: 'blank: waits for an answer',
    'later swim': 'later swim, not in the number',
  } as Readonly<Record<string, string>>,
};

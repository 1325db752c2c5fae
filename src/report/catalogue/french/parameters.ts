/**
 * The few words that the checks and estimates themselves put into a slot, in French. What a person
 * wrote is never translated: a word of a record (lost, random) only in the sentences where the program says it.
 */

import type { FailureCode } from '../../../survey/failure.ts';
import type { ProblemCode } from '../../../survey/problem-codes.ts';
import type { ReasonCode } from '../../../survey/reason-codes.ts';

type Code = ProblemCode | ReasonCode | FailureCode;

export function frenchParameter(code: Code, slot: string, text: string): string {
  const known = wordIn(wordsOfSlots[slot], text);
  if (known !== undefined) return known;
  const ofRecord = recordWordsIn.has(code) ? wordIn(recordWords, text) : undefined;
  if (ofRecord !== undefined) return ofRecord;
  if (code === 'transect-entered-twice' && slot === 'value') return beltInWords(text);
  const pattern = patterns[slot];
  return pattern === undefined ? text : pattern(text);
}

/** Only words of the list itself: a place called "constructor" is a place. */
function wordIn(
  words: Readonly<Partial<Record<string, string>>> | undefined,
  text: string,
): string | undefined {
  return words !== undefined && Object.hasOwn(words, text) ? words[text] : undefined;
}

/** Words of records, as the screens say them. */
const recordWords: Readonly<Partial<Record<string, string>>> = {
  done: 'parcourue',
  partial: 'en partie',
  lost: 'perdue',
  'not done': 'pas faite',
  'none seen': 'rien vu',
  random: 'au hasard',
  fixed: 'fixe',
  'hand-picked': 'choisie à la main',
  'a spare that nobody called up': 'une remplaçante que personne n’a appelée',
  dropped: 'abandonnée',
};

const recordWordsIn: ReadonlySet<Code> = new Set<Code>([
  'lost-but-empty',
  'empty-with-reason',
  'count-on-lost-transect',
  'transect-unresolved',
  'random-without-plan',
  'station-not-in-plan',
  'hand-picked-marked-random',
  'left-out-lost',
]);

const states = { live: 'vivant', gutted: 'éviscéré', salted: 'salé', dried: 'séché' } as const;

const methods = {
  belts: 'bandes',
  quadrats: 'quadrats',
  'timed search': 'recherche chronométrée',
  'towed observer': 'observateur remorqué',
  'night search': 'recherche de nuit',
  'deep dive': 'plongée profonde',
  'reef-front search': 'recherche sur le front du récif',
  'not stated': 'non dit',
} as const;

const modes = {
  snorkel: 'palmes et tuba',
  scuba: 'scaphandre',
  towed: 'observateur remorqué',
  walking: 'marche',
} as const;

const kinds = {
  point: 'point',
  points: 'points',
  line: 'ligne',
  lines: 'lignes',
  'mixed collection': 'collection mêlée',
  'mixed collections': 'collections mêlées',
  curve: 'courbe',
  curves: 'courbes',
  'feature without a place': 'objet sans lieu',
  'features without a place': 'objets sans lieu',
  survey: 'campagne',
  station: 'station',
  stratum: 'strate',
  transect: 'bande',
  tally: 'comptage',
  species: 'espèce',
  protocol: 'protocole',
  target: 'espèce cherchée',
  sizeLimit: 'taille limite',
  weight: 'poids',
  plan: 'plan',
  mapArea: 'aire de la carte',
  ownValue: 'valeur propre',
  answer: 'réponse',
  day: 'journée',
} as const;

const aspects = {
  method: 'façon de compter',
  'belt width': 'largeur de bande',
  'searched area': 'surface prospectée',
  depth: 'profondeur',
  season: 'saison',
  mode: 'façon de se déplacer',
  observers: 'personnes',
  strata: 'strates',
  species: 'espèces',
  selection: 'choix des stations',
} as const;

const wordsOfSlots: Readonly<Partial<Record<string, Readonly<Partial<Record<string, string>>>>>> = {
  state: states,
  from: { ...states, ...methods, ...modes },
  to: { ...states, ...methods, ...modes },
  reference: { plan: 'de la position prévue', 'the other stations': 'des autres stations', ...methods },
  survey: methods,
  where: {
    'most belts of the survey': 'la plupart des bandes de la campagne',
    'the surveys': 'les campagnes',
    'both surveys': 'les deux campagnes',
  },
  source: { archive: 'tiré de l’archive', default: 'par défaut', chosen: 'choisi' },
  reason: { land: 'terre', closed: 'fermé', 'too deep': 'trop profond', 'no ground': 'hors fond' },
  kind: kinds,
  scope: kinds,
  aspect: aspects,
  none: { none: 'aucune' },
  what: { 'this map': 'cette carte' },
  times: { once: 'une fois' },
  unit: {
    'tenths of mm': 'dixièmes de mm',
    acres: 'acres',
    'square nautical miles': 'milles marins carrés',
  },
  range: { 'above 0': '> 0' },
  habit: { decimal: 'décimales', thousands: 'séparateurs de milliers', day: 'le jour', month: 'le mois' },
  measure: {
    'body relaxed': 'corps détendu',
    'body contracted': 'corps contracté',
    'basal diameter': 'diamètre de la base',
    'shell length': 'longueur de la coquille',
  },
  why: {
    'only a survey or a stratum has one': 'seule une campagne ou une strate en a une',
    'no spread is known': 'aucun écart n’est connu',
  },
  expected: {
    'a JSON text': 'un texte JSON',
    'a word of the handbook': 'un mot du manuel',
    'one of the forms in the handbook': 'une des formes du manuel',
    filled: 'une valeur',
  },
};

const patterns: Readonly<Partial<Record<string, (text: string) => string>>> = {
  distance: withComma,
  others: (text) => text.replaceAll(' or ', ' ou '),
  outside: (text) =>
    text
      .replace(/^outside /, 'hors ')
      .replaceAll(
        /(^hors | and )(stratum|zone) /g,
        (_, lead: string, role: string) =>
          `${lead === ' and ' ? ' et ' : lead}de la ${role === 'stratum' ? 'strate' : 'zone'} `,
      ),
  where: (text) =>
    withComma(text)
      .replaceAll(' outside stratum ', ' hors de la strate ')
      .replaceAll(' outside zone ', ' hors de la zone ')
      .replaceAll(' inside mask ', ' à l’intérieur du masque '),
  mask: (text) => text.replace(/^mask /, 'du masque '),
  range: (text) =>
    text
      .replace(/^down to ([\d.]+) m$/, 'jusqu’à $1 m')
      .replace(/^from ([\d.]+) m$/, 'à partir de $1 m')
      .replace(/^([\d.]+) to ([\d.]+) m$/, 'de $1 à $2 m'),
  piece: (text) => text.replace(/^piece /, 'morceau ').replace(/, hole /, ', trou '),
  size: (text) => text.replace(/ letters$/, ' lettres').replace(/ areas and more$/, ' aires et plus'),
  times: (text) => text.replace(/ times$/, ' fois'),
  fromM: (text) => text.replaceAll(' and ', ' et '),
  toM: (text) => text.replaceAll(' and ', ' et '),
  from: byWords({ ...methods, ...modes }),
  to: byWords({ ...methods, ...modes }),
  methods: byWords(methods),
  why: (text) =>
    text
      .replace(/^no position is on record for /, 'aucune position n’est écrite pour ')
      .replace(/^not known to be drawn at random: /, 'tirage au hasard non établi : ')
      .replace(/^plan (.*) has it as picked by hand$/, 'le plan $1 l’a comme choisie à la main')
      .replace(/^it was picked by hand in (.*)$/, 'elle a été choisie à la main dans $1')
      .replace(/^plan (.*) did not draw it$/, 'le plan $1 ne l’a pas tirée'),
};

/** "station S1, transect 2" as "la station S1, bande 2". */
function beltInWords(text: string): string {
  return text.replace(/^station (.*), transect (.*)$/, 'la station $1, bande $2');
}

/** "19.9 km" as "19,9 km". */
function withComma(text: string): string {
  return text.replaceAll(/(\d)\.(\d+ (?:k?m)\b)/g, '$1,$2');
}

/** A list of the program's own words, "belts, quadrats"; left alone when one of them is somebody else's. */
function byWords(words: Readonly<Partial<Record<string, string>>>): (text: string) => string {
  return (text) => {
    const each = text.split(', ').map((one) => words[one]);
    return each.every((one) => one !== undefined) ? each.join(', ') : text;
  };
}

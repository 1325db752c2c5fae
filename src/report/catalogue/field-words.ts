/** What is wrong with one field of a request: what was given, and what would be right. Where it is stands before it. */

import { fillSentence } from './fill.ts';
import type { ScreenLanguage } from './server-words.ts';

const rightEnglish = {
  text: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  list: 'a list',
  object: 'a group of fields',
  nothing: 'nothing',
  choice: '{choices}',
  form: 'something of the form {example}',
  'at-least': '{limit} or more',
  above: 'more than {limit}',
  'at-most': '{limit} or less',
  below: 'less than {limit}',
  'characters-least': 'a text of {limit} characters or more',
  'characters-most': 'a text of at most {limit} characters',
  'entries-least': 'a list of {limit} or more',
  'entries-most': 'a list of at most {limit}',
  step: 'a multiple of {limit}',
  'own-station': 'the station of this sheet',
  'own-transect': 'a transect of this sheet',
  'address-station': 'the station and the survey of the address',
  other: 'what the list of addresses says (/api/openapi.json)',
} as const;

/** What would be right there. */
export type RightCode = keyof typeof rightEnglish;

const rightFrench: Readonly<Record<RightCode, string>> = {
  text: 'un texte',
  number: 'un nombre',
  int: 'un nombre entier',
  boolean: 'vrai ou faux (true, false)',
  list: 'une liste',
  object: 'un groupe de champs',
  nothing: 'rien',
  choice: '{choices}',
  form: 'quelque chose de la forme {example}',
  'at-least': '{limit} ou plus',
  above: 'plus de {limit}',
  'at-most': '{limit} ou moins',
  below: 'moins de {limit}',
  'characters-least': 'un texte d’au moins {limit} caractères',
  'characters-most': 'un texte d’au plus {limit} caractères',
  'entries-least': 'une liste d’au moins {limit}',
  'entries-most': 'une liste d’au plus {limit}',
  step: 'un multiple de {limit}',
  'own-station': 'la station de cette fiche',
  'own-transect': 'une bande de cette fiche',
  'address-station': 'la station et la campagne de l’adresse',
  other: 'ce que dit la liste des adresses (/api/openapi.json)',
};

const saidEnglish = {
  missing: 'nothing was given; right would be {right}',
  wrong: '{given} cannot stand here; right would be {right}',
  unknown: 'not known here: {keys}; leave it out',
  twice: 'this species is counted already on this transect; count it once',
  'not-json': 'what was sent is not JSON',
} as const;

const saidFrench: Readonly<Record<keyof typeof saidEnglish, string>> = {
  missing: 'rien n’a été donné ; il faudrait {right}',
  wrong: '{given} ne convient pas ici ; il faudrait {right}',
  unknown: 'inconnu ici : {keys} ; à laisser de côté',
  twice: 'cette espèce est déjà comptée sur cette bande ; comptez-la une seule fois',
  'not-json': 'ce qui a été envoyé n’est pas du JSON',
};

const given = {
  en: {
    list: 'a list',
    object: 'a group of fields',
    nothing: 'nothing',
    quoted: (text: string) => `“${text}”`,
  },
  fr: {
    list: 'une liste',
    object: 'un groupe de champs',
    nothing: 'rien',
    quoted: (text: string) => `« ${text} »`,
  },
};

/** Fields that people fill in on the screens; the others have the names of the documents for programs. */
const names: Readonly<Record<ScreenLanguage, Readonly<Record<string, string>>>> = {
  en: { who: 'who', why: 'why', note: 'note', answer: 'answer', takenAt: 'taken', by: 'one answer for each' },
  fr: {
    who: 'qui',
    why: 'pourquoi',
    note: 'note',
    answer: 'réponse',
    takenAt: 'prise le',
    by: 'une réponse par',
  },
};

export interface FieldFault {
  readonly path: readonly (string | number)[];
  readonly said: keyof typeof saidEnglish;
  readonly right: RightCode | null;
  /** As it was sent; undefined where nothing was. */
  readonly given: unknown;
  readonly parameters: Readonly<Record<string, string>>;
}

/** Of one field, without its name. */
export function fieldSentence(language: ScreenLanguage, fault: FieldFault): string {
  const { said, right, parameters } = fault;
  const rights = language === 'fr' ? rightFrench : rightEnglish;
  const values = {
    ...parameters,
    given: givenInWords(language, fault.given),
    ...(right === null ? {} : { right: fillSentence(rights[right], parameters) }),
  };
  return fillSentence((language === 'fr' ? saidFrench : saidEnglish)[said], values);
}

/** As people call it where they fill it in, else as programs do: `sheet.tallies.3.count`. */
export function fieldName(language: ScreenLanguage, path: FieldFault['path']): string {
  const whole = path.map(String).join('.');
  return (path.length === 1 ? names[language][whole] : undefined) ?? whole;
}

const mostCharacters = 60;

function givenInWords(language: ScreenLanguage, value: unknown): string {
  const w = given[language];
  if (value === undefined || value === null) return w.nothing;
  if (Array.isArray(value)) return w.list;
  if (typeof value === 'object') return w.object;
  const text = String(value);
  return w.quoted(text.length > mostCharacters ? `${text.slice(0, mostCharacters)}…` : text);
}

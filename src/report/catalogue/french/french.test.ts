import { expect, test } from 'vitest';
import { type FailureCode, failureParameters } from '../../../survey/failure.ts';
import { problemSeverities } from '../../../survey/problem-codes.ts';
import { problemOf } from '../../../survey/problem-of.ts';
import { failures } from '../failures.ts';
import { slotsOf, templateOfMany } from '../fill.ts';
import { reasons } from '../reasons.ts';
import { reportWords } from '../report-words.ts';
import { failureSentence, problemTemplate, sentence } from '../sentence.ts';
import { french } from './index.ts';
import { spacedText } from './typography.ts';

const codes = Object.keys(problemSeverities) as (keyof typeof problemSeverities)[];
const pairs: readonly (readonly [code: string, english: string, french: string])[] = [
  ...codes.map((code) => [code, problemTemplate('en', code), problemTemplate('fr', code)] as const),
  ...pairsOf(reasons, french.reasons),
  ...pairsOf(failures, french.failures),
];

function pairsOf<K extends string>(english: Readonly<Record<K, string>>, its: Readonly<Record<K, string>>) {
  const keys = Object.keys(english) as K[];
  return keys.map((key) => [key, english[key], its[key]] as const);
}

function slotSet(text: string): string[] {
  return [...new Set(slotsOf(text))].toSorted();
}

/** The slots of every optional part, as a list that does not mind the order of the parts. */
function optionalParts(text: string): string[] {
  return [...text.matchAll(/\[([^[\]]*)\]/g)].map((part) => slotSet(part[1]!).join(' ')).toSorted();
}

test('every French sentence has the slots and the optional parts of the English one', () => {
  expect(pairs.length).toBeGreaterThan(250);
  for (const [code, english, its] of pairs) {
    expect(slotSet(its), code).toEqual(slotSet(english));
    expect(optionalParts(its), code).toEqual(optionalParts(english));
  }
});

/** Words that look like a sentence left half in English. Words of tables and options stand in their own signs. */
const englishWords =
  /(?<![\p{L}])(the|and|of|was|were|which|survey|surveys|belt|belts|book|count|counts|wrong|right|held|not|species|strata|stratum|lost|between|from|with|sheet|row)(?![\p{L}])/iu;

test('no English word is left in a French sentence', () => {
  for (const [code, , its] of pairs) {
    const said = withoutSigns(its);
    expect(said.match(englishWords)?.[0], `${code}: ${said}`).toBeUndefined();
  }
  for (const [name, said] of Object.entries(reportWords('fr')))
    expect(JSON.stringify(said).match(englishWords)?.[0], name).toBeUndefined();
});

/** Slots, options of the command line, commands and what is to be typed into a table are no words of the sentence. */
function withoutSigns(text: string): string {
  return templateOfMany(text)
    .replaceAll(/\{\w+\}/g, '')
    .replaceAll(/«\u00a0[^»{]*»/g, '')
    .replaceAll(/--[a-z-]+(?: [a-z]+| "[^"]*")?/g, '')
    .replaceAll(/\w+: "[^"]*"/g, '');
}

test('before a colon, a semicolon, a question mark and per cent stands a no-break space', () => {
  for (const [code, , its] of pairs) {
    expect(its.match(/ [;:?!%»]|« /)?.[0], code).toBeUndefined();
    expect(withoutSigns(its).match(/[^\s\u00a0[}.]\]?[;?!»]/)?.[0], code).toBeUndefined();
    expect(withoutSigns(its), code).not.toMatch(/[“”']/);
  }
  expect(spacedText('« {value} » [ ; est-ce {suggestion} ?]')).toBe(
    '«\u00a0{value}\u00a0» [\u00a0; est-ce {suggestion}\u00a0?]',
  );
});

test('a problem says in French where it stands', () => {
  const place = { file: 'counts.csv', row: 12, column: 'count', station: 'S7', transect: '3', swim: 2 };
  const problem = problemOf('not-a-whole-number', place, { value: '4.5', suggestion: '4' });
  // The sentence names the column itself, so the place leaves it out, as in English.
  expect(sentence('fr', problem)).toBe(
    'counts.csv, ligne 12, station S7, bande 3, passage 2\u00a0: count vaut 4.5\u00a0; il faudrait un nombre entier[\u00a0; est-ce 4\u00a0?]'.replace(
      /[[\]]/g,
      '',
    ),
  );
});

test('every problem reads as a French sentence even when little is known', () => {
  for (const code of codes) {
    const text = sentence('fr', problemOf(code, { survey: '2026', station: 'S7' }));
    expect(text, code).toMatch(/^2026, station S7\u00a0: ./);
    expect(text, code).not.toMatch(/[{}[\]]|undefined|null|NaN|not given/);
  }
});

test('numbers of a reason carry the decimal comma, and the program’s own words are French', () => {
  const parameters = { percent: 95, scatteredPerHa: 5.9439, clumpedPerHa: 8.6712, k: 0.2, source: 'chosen' };
  // METHODS c5: 21 stations of 240 m2, nothing seen: 5.94 (Poisson), 8.67 with k = 0.2
  expect(sentence('fr', { code: 'zero-bound', parameters })).toBe(
    'Non observée\u00a0; avec 95\u00a0% de certitude, moins de 5,9 par ha si les animaux sont dispersés, moins de 8,7 s’ils sont agrégés (k\u00a00,2, choisi)',
  );
});

test('what the checks say of distances, depths and states is French; what a person wrote stays', () => {
  const place = { station: 'S7' };
  const far = problemOf('far-from-plan', place, {
    value: '-17.75, 177.4',
    parameters: { distance: '19.9 km', reference: 'plan', outside: 'outside stratum flat and zone north' },
  });
  expect(sentence('fr', far)).toBe(
    'station S7\u00a0: -17.75, 177.4 est à 19,9 km de la position prévue, hors de la strate flat et de la zone north\u00a0; la station a-t-elle été déplacée, et pourquoi\u00a0?',
  );
  const deep = problemOf('depth-outside-stratum', place, {
    value: 31,
    parameters: { stratum: 'lost', range: 'down to 18 m' },
  });
  expect(sentence('fr', deep)).toContain('dans la strate lost, qui va jusqu’à 18 m');
  const odd = { code: 'no-station', parameters: { where: 'constructor' } } as const;
  expect(sentence('fr', odd)).toBe('Aucune station n’a été visitée dans constructor');
  const twice = problemOf('transect-entered-twice', place, { value: 'station S1, transect 2' });
  expect(sentence('fr', twice)).toContain('sont aussi à la station S1, bande 2');
  const both = problemOf('lost-but-empty', place, { value: 'not done' });
  expect(sentence('fr', both)).toContain('marquée pas faite et aussi vide');
  // A word that has to be typed into the table as it is stays as it is.
  const typed = problemOf('not-one-of', place, { value: 'losst', suggestion: 'lost' });
  expect(sentence('fr', typed)).toContain('est-ce lost');
});

test('a refusal is one French sentence, also where a parameter is unknown', () => {
  for (const code of Object.keys(failureParameters) as FailureCode[]) {
    const text = failureSentence('fr', { code, parameters: {} });
    expect(text, code).not.toMatch(/[{}[\]]|undefined|not given/);
  }
  const parameters = { name: '2o26', nearest: '2026', known: '' };
  expect(failureSentence('fr', { code: 'unknown-survey-name', parameters })).toBe(
    'il n’y a pas de campagne «\u00a02o26\u00a0» dans ce carnet\u00a0; est-ce 2026\u00a0?',
  );
});

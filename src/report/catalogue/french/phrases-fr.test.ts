import { expect, test } from 'vitest';
import type { ChangeAnswer } from '../../../estimates/change/change-answer.ts';
import { formatChance } from '../../status-words.ts';
import { briefPhrases } from '../brief-phrases.ts';
import { changePhrases } from '../change-phrases.ts';
import { changeInNumbers, toldInWords } from '../change-sentences.ts';
import { densityPhrases } from '../density-phrases.ts';
import { explainPhrases } from '../explain-phrases.ts';
import { harvestPhrases } from '../harvest-phrases.ts';
import type { Language } from '../language.ts';
import { planPagePhrases } from '../plan-page-phrases.ts';
import { planPhrases } from '../plan-phrases.ts';
import { reportPhrases } from '../report-phrases.ts';
import { sensitivityPhrases } from '../sensitivity-phrases.ts';
import { statusPhrases } from '../status-phrases.ts';
import { weightPhrases } from '../weight-phrases.ts';

const themes = {
  brief: briefPhrases,
  change: changePhrases,
  density: densityPhrases,
  explain: explainPhrases,
  harvest: harvestPhrases,
  plan: planPhrases,
  planPage: planPagePhrases,
  report: reportPhrases,
  sensitivity: sensitivityPhrases,
  status: statusPhrases,
  weight: weightPhrases,
};

/** Every phrase of every theme, filled with marks in place of numbers and names. */
function said(language: Language): ReadonlyMap<string, string> {
  const all = new Map<string, string>();
  for (const [theme, phrases] of Object.entries(themes)) walk(phrases(language), theme, all);
  return all;
}

function walk(phrase: unknown, name: string, all: Map<string, string>): void {
  if (typeof phrase === 'string') all.set(name, phrase);
  else if (typeof phrase === 'function') {
    const given = Array.from({ length: phrase.length }, (_, i) => mark(`§${i}`));
    all.set(name, name === 'change.sides' ? phrase('§0', [['§1', '§2']]) : String(phrase(...given)));
  } else for (const [part, own] of Object.entries(phrase as object)) walk(own, `${name}.${part}`, all);
}

/** Stands for a text, or for something whose parts are texts. */
function mark(text: string): unknown {
  const get = (target: string, part: string | symbol) => {
    if (part === Symbol.toPrimitive || part === 'toString') return () => text;
    if (part === 'replace') return target.replace.bind(target);
    if (part === 'charAt' || part === 'slice') return target[part].bind(target);
    return mark(`${text}.${String(part)}`);
  };
  return new Proxy(new String(text), { get: (_, part) => get(text, part) });
}

function marksIn(text: string): string[] {
  return [...new Set(text.match(/§\d(?:\.\w+)*/g) ?? [])].toSorted();
}

const english = said('en');
const french = said('fr');

test('every French phrase says all that the English one says', () => {
  expect(french.size).toBe(english.size);
  expect(english.size).toBeGreaterThan(150);
  for (const [name, text] of english) expect(marksIn(french.get(name)!), name).toEqual(marksIn(text));
});

test('no English word is left in a French phrase', () => {
  const words =
    /(?<![\p{L}-])(the|and|was|were|which|surveys?|belts?|strata|stratum|sure|between|below|above|recorded|seen|found|unknown|searched|lengths?|measured|limit|held|without|with|of|at|not|from|checked|animals|weight)(?![\p{L}-])/iu;
  for (const [name, text] of french)
    expect(text.replace(/§\d(?:\.\w+)*|docs\/\S+|--[a-z]+/g, '').match(words)?.[0], name).toBeUndefined();
});

test('French phrases are spaced as French is', () => {
  for (const [name, text] of french) {
    expect(text.match(/ [;:?!%»]|« /)?.[0], name).toBeUndefined();
    expect(text.replace(/docs\/\S+/g, '').match(/[^\s\u00a0.][;?!»]/)?.[0], name).toBeUndefined();
  }
});

test('a change is said in French with its comma, and never as proven when it is not', () => {
  const answer = { ratio: 2.8, ratioInterval: [0.73, 13] } as unknown as ChangeAnswer;
  // By hand: beyond four times as many the interval is told in times, to two digits.
  expect(changeInNumbers(answer, 'fr')).toBe('2,8 fois (0,73 à 13 fois)');
  expect(toldInWords('probably higher', 0.95, 'fr')).toBe('probablement en hausse, non établi à 95\u00a0%');
  // By hand: 0.4 of what it was is a fall by 60 %; 0.15 by 85 %; 1.06 a rise by 6 %.
  const fall = { ratio: 0.4, ratioInterval: [0.15, 1.06] } as unknown as ChangeAnswer;
  expect(changeInNumbers(fall, 'fr')).toBe('−60\u00a0% (−85 à +6,0\u00a0%)');
  expect(changeInNumbers(fall, 'en')).toBe('−60\u00a0% (−85 to +6.0\u00a0%)');
});

test('a chance is never 0 or 1 in French either', () => {
  expect(formatChance(0.999, () => null, 'fr')).toBe('plus de 0,99');
  expect(formatChance(0.001, () => null, 'fr')).toBe('moins de 0,01');
  expect(formatChance(0.5, () => null, 'fr')).toBe('0,50');
});

import { expect, test } from 'vitest';
import type { Reason } from '../survey/message.ts';
import { sentenceOnPaper } from './catalogue/sentence.ts';
import { groupedNotes, joined } from './grouped-notes.ts';

const nameOf = (name: string) => ({ label: name.slice(0, 1).toUpperCase() + name.slice(1), scientific: 'X' });
const words = { language: 'en' as const, nameOf, say: (reason: Reason) => sentenceOnPaper('en', reason) };
const few: Reason = { code: 'few-positive-stations', parameters: { stations: 3 } };
const memory = (species: string): Reason => ({ code: 'only-from-memory', parameters: { species } });

test('a sentence is said once, with the species it speaks of', () => {
  const rows = ['sandfish', 'trochus', 'lollyfish'].map((species, i) => ({
    species,
    scope: '',
    // What the sentence does not say does not part it.
    reasons: i < 2 ? [{ ...few, parameters: { stations: i } }] : [],
  }));
  expect(groupedNotes(rows, words)).toEqual([
    'Found at fewer than 10 stations: the real uncertainty may be larger than this interval (sandfish, trochus).',
  ]);
});

test('what holds for every row needs no names', () => {
  const rows = ['sandfish', 'trochus'].map((species) => ({ species, scope: '', reasons: [few] }));
  expect(groupedNotes(rows, words)[0]).not.toContain('sandfish');
});

test('a sentence that names its species names all of them at once, by the names that people use', () => {
  const rows = ['sandfish', 'trochus'].map((species) => ({ species, scope: '', reasons: [memory(species)] }));
  expect(groupedNotes(rows, words)).toEqual([
    'Held: the only weight known for sandfish and trochus is from memory and was never checked against its source: weigh some of them, or look the value up.',
  ]);
});

test('a row of several is named with its place', () => {
  const rows = [
    { species: 'sandfish', scope: 'north flat', reasons: [few] },
    { species: 'sandfish', scope: 'lagoon', reasons: [] },
    { species: 'trochus', scope: 'north flat', reasons: [few] },
  ];
  expect(groupedNotes(rows, words)[0]).toContain('(sandfish in north flat, trochus).');
});

test('names are joined as the language joins them', () => {
  expect(joined(['a', 'b', 'c'], 'en')).toBe('a, b and c');
  expect(joined(['a', 'b'], 'fr')).toBe('a et b');
});

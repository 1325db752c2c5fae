import { expect, test } from 'vitest';
import { type FailureCode, failureParameters } from '../../survey/failure.ts';
import { type ProblemCode, problemSeverities } from '../../survey/problem-codes.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { failures } from './failures.ts';
import { fillSentence, slotsOf } from './fill.ts';
import { failureSentence, sentence } from './sentence.ts';

test('a problem says the value, where it stands and what would be right', () => {
  const place = { file: 'counts.csv', row: 12, column: 'species' };
  const problem = problemOf('unknown-species', place, {
    value: 'Holothuria atar',
    suggestion: 'Holothuria atra',
  });
  expect(sentence('en', problem)).toBe(
    'counts.csv, row 12, column species: species “Holothuria atar” is not in the species list; did you mean Holothuria atra?',
  );
});

test('a part of a sentence with nothing to put in its slot is not said', () => {
  expect(fillSentence('not known[; is it {suggestion}?]', {})).toBe('not known');
  expect(fillSentence('not known[; is it {suggestion}?]', { suggestion: 'S7' })).toBe('not known; is it S7?');
});

test('braces and brackets in what a person typed are shown, not followed', () => {
  expect(fillSentence('[“{value}” ]is new', { value: '{file} [x]' })).toBe('“{file} [x]” is new');
});

test('every problem has a sentence that reads as one even when little is known', () => {
  for (const code of Object.keys(problemSeverities) as ProblemCode[]) {
    const text = sentence('en', problemOf(code, { survey: '2026', station: 'S7' }));
    expect(text).toMatch(/^2026, station S7: ./);
    expect(text).not.toMatch(/[{}[\]]|undefined|null|NaN/);
  }
});

test('every slot of a failure is one of the parameters it comes with', () => {
  for (const code of Object.keys(failureParameters) as FailureCode[]) {
    for (const slot of slotsOf(failures[code])) expect(failureParameters[code]).toContain(slot);
  }
  expect(
    failureSentence('en', {
      code: 'unknown-survey-name',
      parameters: { name: '2o26', nearest: '2026', known: '' },
    }),
  ).toBe('there is no survey “2o26” in this book; did you mean 2026?');
});

test('a reason gives its numbers as people read them', () => {
  const parameters = { percent: 95, scatteredPerHa: 5.9439, clumpedPerHa: 8.6712, k: 0.2, source: 'chosen' };
  // METHODS c5: 21 stations of 240 m2, nothing seen: 5.94 (Poisson), 8.67 with k = 0.2
  expect(sentence('en', { code: 'zero-bound', parameters })).toBe(
    'Not recorded; 95 % sure below 5.9 per ha if scattered, below 8.7 if clumped (k\u00a00.2, chosen)',
  );
});

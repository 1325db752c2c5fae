import { describe, expect, it } from 'vitest';
import { stationsCounting, surveyOf } from '../../../test/survey-builder.ts';
import type { CountMethod, ValueOf } from '../../survey/value-words.ts';
import { compareMethods } from './compare-methods.ts';
import { methodUsed } from './count-method.ts';
import { statusClassOf } from './status-class.ts';

function reference(method: CountMethod, beltWidthM: number | null = null): ValueOf<'reference-density'> {
  return {
    what: 'reference-density',
    densityPerHa: 50,
    cv: null,
    method,
    beltWidthM,
    place: null,
    meaning: 'typed',
  };
}

const belts = { methods: ['belts'], beltWidthsM: [2] } as const;

// Authority: METHODS k and issue 6: another method is held, another width alone is a stated limitation.
describe('a density is set against another', () => {
  it('of the same method', () => {
    expect(compareMethods(belts, reference('belts'))).toEqual({ held: null, limitations: [] });
  });

  it.each([
    'towed observer',
    'timed search',
    'night search',
    'deep dive',
    'reef-front search',
    'quadrats',
  ] as const)('and held when the other was counted by %s', (method) => {
    expect(compareMethods(belts, reference(method)).held?.code).toBe('reference-other-method');
  });

  it('with a word about belts of another width', () => {
    const { held, limitations } = compareMethods(belts, reference('belts', 1));
    expect(held).toBeNull();
    expect(limitations.map(({ code }) => code)).toEqual(['reference-other-width']);
  });

  it('never where nobody says how the other was counted, nor where the survey mixes ways', () => {
    expect(compareMethods(belts, reference('not stated')).held?.code).toBe('reference-method-unknown');
    const mixed = { methods: ['belts', 'night search'], beltWidthsM: [2] } as const;
    expect(compareMethods(mixed, reference('belts')).held?.code).toBe('survey-methods-mixed');
  });
});

describe('how a survey counted', () => {
  it('is by belts where nothing says otherwise, and by timed search where the protocol says so', () => {
    const stations = stationsCounting('flat', [1, 2]);
    expect(methodUsed(surveyOf({ areasHa: { flat: 10 }, stations }))).toEqual(belts);
    const timed = surveyOf({ areasHa: { flat: 10 }, stations, layout: 'timed' });
    expect(methodUsed(timed).methods).toEqual(['timed search']);
  });
});

// Authority: METHODS k, the classes of the chance.
describe('the word for a chance', () => {
  it.each([
    [0.9, 'below'],
    [0.899, 'likely below'],
    [0.66, 'likely below'],
    [0.65, 'cannot tell'],
    [0.35, 'cannot tell'],
    [0.34, 'likely above'],
    [0.11, 'likely above'],
    [0.1, 'above'],
  ] as const)('of %f is %s', (chance, word) => {
    expect(statusClassOf(chance)).toBe(word);
  });
});

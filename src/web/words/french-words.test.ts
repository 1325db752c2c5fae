import { describe, expect, it } from 'vitest';
import { fr } from './fr.ts';
import { spacedWords } from './french-words.ts';

describe('French words', () => {
  it('keep a mark with the word before it, in texts, sentences made of parts, lists and records', () => {
    const words = spacedWords({
      a: 'La dernière :',
      b: (n: number) => `${n} % ; « oui »`,
      c: ['Quoi ?'],
      d: { e: 7 },
    });
    expect([words.a, words.b(5), words.c[0], words.d.e]).toEqual([
      'La dernière\u00a0:',
      '5\u00a0%\u00a0; «\u00a0oui\u00a0»',
      'Quoi\u00a0?',
      7,
    ]);
  });

  it('leave no plain space before a mark anywhere', () => {
    const texts: string[] = [];
    const walk = (word: unknown): void => {
      if (typeof word === 'string') texts.push(word);
      else if (typeof word === 'object' && word !== null) Object.values(word).forEach(walk);
    };
    walk(fr);
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => / [;:?!%»]|« /.test(text))).toEqual([]);
  });
});

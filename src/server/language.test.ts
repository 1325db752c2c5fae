import { describe, expect, it } from 'vitest';
import { languageOf } from './language.ts';

const of = (header: string, query = '') =>
  languageOf(new Request(`http://localhost/${query}`, { headers: { 'accept-language': header } }));

describe('the language of an answer', () => {
  it('is the first the browser wants that there is, by its weights, and English when there is none', () => {
    const cases = [
      ['fr-FR,fr;q=0.9,en;q=0.8', 'fr'],
      ['en;q=0.2, fr;q=0.7', 'fr'],
      ['de, fr;q=0, en;q=0.5', 'en'],
      ['de', 'en'],
      ['', 'en'],
      [';;,q=,*', 'en'],
    ] as const;
    for (const [header, language] of cases) expect([header, of(header)]).toEqual([header, language]);
  });

  it('asked for in the address goes before the browser', () => {
    expect(of('en', '?lang=fr')).toBe('fr');
    expect(of('fr', '?lang=xx')).toBe('fr');
  });
});

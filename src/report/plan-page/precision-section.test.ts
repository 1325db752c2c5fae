import { expect, test } from 'vitest';
import type { Language } from '../catalogue/language.ts';
import type { NoPrecision, PlanPageInput } from './plan-page-input.ts';
import { precisionSection } from './precision-section.ts';

function said(
  reason: NoPrecision,
  language: Language,
  given: { readonly pilot?: string | null; readonly stationsPerDay?: number; readonly dayCost?: number } = {},
): string {
  const station = { role: 'planned' };
  const input = {
    content: { stations: [station, station, station] },
    precision: { pilot: given.pilot ?? null, reason, species: [], unseen: [] },
    ...{ stationsPerDay: given.stationsPerDay ?? null, dayCost: given.dayCost ?? null },
  } as unknown as PlanPageInput;
  return precisionSection(input, language);
}

test('why no precision is known is said in the language of the page, with the earlier survey it would come from', () => {
  const none = { code: 'noEarlier' } as const;
  expect(said(none, 'en')).toContain('Not known without a pilot: the book holds no earlier survey.');
  expect(said(none, 'fr')).toContain(
    'Inconnue sans campagne pilote\u00a0: le carnet n’a pas de campagne antérieure.',
  );
  const gaps = { code: 'noSpreadIn', strata: ['flat', 'slope'] } as const;
  expect(said(gaps, 'en', { pilot: 'North' })).toContain('it shows no spread in flat, slope (North).');
  expect(said(gaps, 'fr', { pilot: 'North' })).toContain('de dispersion dans flat, slope (North).');
  for (const code of ['unreadable', 'noSpread'] as const)
    expect(said({ code }, 'fr', { pilot: 'North' })).toMatch(/pilote\u00a0: elle ne .* \(North\)\./);
});

test('what the boat costs is told in days and money, one day as one day', () => {
  const none = { code: 'noEarlier' } as const;
  // By hand: 3 stations at 0.7 a day are 4.3 days, so 5 boat days; five times 350.50 are 1752.50, 1753 in whole units.
  const slow = { stationsPerDay: 0.7, dayCost: 350.5 };
  expect(said(none, 'en', slow)).toContain(
    '3 stations at 0.7 a day are 5 boat days, 1\u202f753 at 350.50 a day',
  );
  expect(said(none, 'fr', slow)).toContain(
    '3 stations à raison de 0,7 par jour, soit 5 jours de bateau, 1\u202f753 à 350,50 par jour',
  );
  const quick = { stationsPerDay: 4 };
  expect(said(none, 'en', quick)).toContain('at 4 a day are 1 boat day;');
  expect(said(none, 'fr', quick)).toContain('soit 1 jour de bateau\u00a0;');
});

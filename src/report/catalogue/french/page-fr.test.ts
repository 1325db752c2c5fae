import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { renderReport } from '../../page.ts';
import { fixtureReport } from '../../report-fixture.ts';

const document = parseHTML('<!doctype html><html></html>').document;
/** The purpose and the decision are a person's own words, and this is how the fixture names its place. */
const fixture = fixtureReport();
const own = [
  fixture.decision ?? '',
  fixture.surveys.at(-1)!.inHand.survey.purpose ?? '',
  'the whole surveyed area',
];
const page = renderReport(fixture, { language: 'fr', fonts: [], document });
const english = renderReport(fixture, { language: 'en', fonts: [], document });

/** What a person reads and what a voice reads out, without styles. */
function said(html: string): string {
  const root = parseHTML(html).document.querySelector('body')!;
  const labels = [...root.querySelectorAll('[aria-label]')].map(
    (one) => one.getAttribute('aria-label') ?? '',
  );
  const all = [root.textContent ?? '', ...labels].join(' ').replace(/Slateline \d\.\d\.\d/g, 'Slateline');
  // Lines of a figure stand together without a space.
  const parted = (words: string) =>
    new RegExp(words.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s*'), 'g');
  return own.reduce((text, words) => (words === '' ? text : text.replaceAll(parted(words), '')), all);
}

test('the French page has the parts of the English one, in the same order', () => {
  const partsOf = (html: string) =>
    [...parseHTML(html).document.querySelectorAll('section')].map((one) => one.id);
  expect(partsOf(page)).toEqual(partsOf(english));
  expect(page).toContain('<html lang="fr">');
});

test('no English word of the program is left on the French page', () => {
  const words =
    /(?<!\p{L})(the|and|was|were|which|surveys?|belts?|strata|stratum|sure|between|below|recorded|seen|found|interval by|unknown|searched|lengths?|measured|limit|held|stations? without|made on|with)(?!\p{L})/giu;
  const found = [...said(page).matchAll(words)].map((match) =>
    said(page).slice(Math.max(0, match.index - 40), match.index + 40),
  );
  expect(found).toEqual([]);
});

test('numbers on the French page carry the decimal comma, dates and positions stay', () => {
  const dots = [...said(page).matchAll(/\d\.\d/g)].map((match) =>
    said(page).slice(Math.max(0, match.index - 20), match.index + 20),
  );
  expect(dots).toEqual([]);
});

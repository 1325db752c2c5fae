import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { escapeText } from './escape.ts';
import { formatCount } from './numbers.ts';
import { renderReport } from './page.ts';
import { fixtureReport } from './report-fixture.ts';
import type { ReportInput } from './report-input.ts';
import { speciesNames } from './species-names.ts';

const tools = {
  language: 'en' as const,
  fonts: [],
  document: parseHTML('<!doctype html><html></html>').document,
};
const page = renderReport(fixtureReport(), tools);
const textOf = (html: string) => parseHTML(html).document.querySelector('body')!.textContent ?? '';

test('the page is as it was looked at', async () => {
  await expect(page).toMatchFileSnapshot('../../test/golden/report.html');
});

test('the same survey gives the same page, to the byte', () => {
  expect(renderReport(fixtureReport(), tools)).toBe(page);
});

test('every answer stands on the page with its stations', () => {
  const rows = [...parseHTML(page).document.querySelectorAll('#density tr')].map(
    (row) => row.textContent ?? '',
  );
  const { species, surveys } = fixtureReport();
  const survey = surveys[1]!;
  const nameOf = speciesNames(species);
  const labels = new Map(species.map(({ name }) => [name, nameOf(name).label]));
  for (const answer of [...survey.densityBySurvey, ...survey.densityByStratum]) {
    const n = `${answer.stationsWithSpecies} of ${answer.stations}`;
    const label = answer.scope.by === 'survey' ? labels.get(answer.species)! : answer.scope.name;
    const found = rows.filter(
      (row) => row.startsWith(label) && row.includes(n) && row.includes(formatCount(answer.searchedAreaM2)),
    );
    expect(found.length, `${answer.species} in ${answer.scope.name}`).toBeGreaterThan(0);
  }
});

test('the page opens without a network: nothing on it points anywhere else', () => {
  const links = [...page.matchAll(/https?:\/\/[^"'\s)]*/g)].map((match) => match[0]);
  expect(new Set(links)).toEqual(new Set(['http://www.w3.org/2000/svg']));
  expect(page).not.toMatch(/<script|<link|<img|<iframe|@import|\ssrc=/i);
});

test('no hole shows: no undefined, null or NaN is read anywhere', () => {
  expect(textOf(page)).not.toMatch(/undefined|\bnull\b|NaN|Infinity|\[object|not given/);
  expect(page).not.toMatch(/="(undefined|null|NaN)/);
});

test('names that look like markup are shown as text', () => {
  const evil = `<script>alert(1)</script>"'&`;
  const input = fixtureReport();
  const survey = input.surveys[1]!;
  const renamed: ReportInput = {
    ...input,
    book: { ...input.book, name: evil },
    decision: evil,
    species: input.species.map((species) => ({ ...species, commonName: evil })),
    surveys: [
      {
        ...survey,
        strata: survey.strata.map((stratum) => ({ ...stratum, name: evil })),
        inHand: {
          ...survey.inHand,
          survey: { ...survey.inHand.survey, name: evil, purpose: evil },
          stations: survey.inHand.stations.map((station) => ({
            ...station,
            stratum: { ...station.stratum, name: evil },
            record: { ...station.record, code: evil, zone: evil, site: evil },
          })),
        },
        densityByStratum: survey.densityByStratum.map((answer) => ({
          ...answer,
          scope: { by: 'stratum' as const, name: evil },
        })),
        problems: survey.problems.map((problem) => ({ ...problem, place: { station: evil }, value: evil })),
      },
    ],
  };
  const html = renderReport(renamed, tools);
  expect(html).not.toMatch(/<script/i);
  expect(html).toContain(escapeText(evil));
  expect(parseHTML(html).document.querySelectorAll('script')).toHaveLength(0);
});

test('names within a page are used once, so that no figure borrows the ink of another', () => {
  const names = [...page.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]);
  expect(new Set(names).size).toBe(names.length);
});

test('figures have words, tables have captions and heads know their direction', () => {
  const { document } = parseHTML(page);
  for (const svg of document.querySelectorAll('svg'))
    expect(svg.getAttribute('aria-label')?.length).toBeGreaterThan(5);
  for (const table of document.querySelectorAll('table')) {
    expect(table.querySelector('caption')?.textContent).toBeTruthy();
    for (const head of table.querySelectorAll('th'))
      expect(['col', 'row', 'rowgroup']).toContain(head.getAttribute('scope'));
  }
  expect(document.querySelector('html')?.getAttribute('lang')).toBe('en');
});

test('an invented book says so on its face, and a real one does not', () => {
  expect(textOf(page)).toContain('All of it is invented');
  const real = { ...fixtureReport(), book: { name: 'A book', invented: false } };
  expect(textOf(renderReport(real, tools))).not.toContain('invented: places');
});

test('a page that leaves the office does not hold the exact positions', () => {
  const { latitudeDeg } = fixtureReport().surveys[1]!.inHand.stations[0]!.record;
  expect(page).not.toContain(String(latitudeDeg));
  expect(page).toContain('rounded to a hundredth of a degree');
});

test('a font that is not base64 is refused, because it would be written into the style', () => {
  const font = { weight: 400 as const, format: 'woff2' as const, base64: '"} body {' };
  expect(() => renderReport(fixtureReport(), { ...tools, fonts: [font] })).toThrow('base64');
});

test('a survey with no station and no answer still makes a page', () => {
  const input = fixtureReport();
  const survey = input.surveys[1]!;
  const empty = {
    ...survey,
    inHand: { ...survey.inHand, stations: [] },
    densityBySurvey: [],
    densityByStratum: [],
    sizes: [],
    problems: [],
  };
  const html = renderReport({ ...input, surveys: [empty] }, tools);
  expect(textOf(html)).toContain('No map is drawn');
});

test('belts of one station that are left out for one reason are said together', () => {
  const items = [...parseHTML(page).document.querySelectorAll('#left-out li')].map(
    (item) => item.textContent,
  );
  // the fixture: S5 lost belts 4, 5 and 6; S15 lost belt 2
  expect(items).toEqual([
    'Station S5, transect 4, 5, 6: lost or not done (sheet washed away); in neither the count nor the area.',
    'Station S15, transect 2: lost or not done (sheet washed away); in neither the count nor the area.',
  ]);
});

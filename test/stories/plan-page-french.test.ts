/** Plans of the demo as French pages: nothing the program says is left in English, and no number is another one. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { demoBook, slateline, temporaryFolder } from './cli-helper.ts';

let demo = '';

const asked = ['--for', 'Lorrin 2026', '--total', '24', '--spacing', '300'];
const panel = ['--revisit', 'Lorrin 2024', '--hand-picked', 'H1: 36 30.1 S 128 00.0 W'];
const decision = ['--decision', 'close the lagoon if sandfish fell by half'];
const series = ['--belts', '6', '--length', '40', '--gap', '10', '--width', '2'];

beforeAll(async () => {
  demo = await demoBook();
  await planned('draw', 'spring', ...asked, ...panel, ...decision, '--redraws', '20');
  await planned('lay', 'spring', '--date', '2026-12-21', ...series);
  await planned('replace', 'spring', '--station', 'OT-10', '--why', 'surf on the edge', '--by', 'Officer A');
});

async function planned(verb: string, ...args: readonly string[]): Promise<void> {
  const { exitCode, stderr } = await slateline('plan', verb, ...args, '--book', demo);
  expect(exitCode, stderr).toBe(0);
}

async function pageOf(plan: string, ...args: readonly string[]): Promise<string> {
  const to = join(temporaryFolder(), 'plan.html');
  const { exitCode, stderr } = await slateline('plan', 'page', plan, '--to', to, '--book', demo, ...args);
  expect(exitCode, stderr).toBe(0);
  return readFileSync(to, 'utf8');
}

/** What a person reads and what a voice reads out. */
function said(page: string): string {
  const body = page.slice(page.indexOf('<body>'));
  const labels = [...body.matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1]!);
  return [body.replaceAll(/<[^>]+>/g, ' '), ...labels].join(' ').replaceAll(/\s+/g, ' ');
}

/** What the makers of the demo wrote themselves: names, the decision, the reason of a replacement. */
const peoplesOwn =
  /(?:north|south) flat|lagoon seagrass|outer terrace|Lorrin Islands \(invented\)|plan spring|close the lagoon if sandfish fell by half|surf on the edge|Officer A|(?:Surf red|Leopard|Lolly|Sand|Curry|Prickly red|Amber|White teat|Black teat)fish/g;

const englishWords =
  /(?<![\p{L}-])(the|and|of|at|was|were|is|are|for|by|to|in|which|surveys?|belts?|strata|stratum|between|below|above|per|spares?|drawn|dropped|random|fixed|hand-picked|true|compass|inside|planned|visited|replaced|unknown|known|without|with|not|from|no|none|days?|animals)(?![\p{L}-])/giu;

function englishIn(page: string): string[] {
  const text = said(page).replaceAll(peoplesOwn, '');
  return [...text.matchAll(englishWords)].map((match) => text.slice(match.index - 40, match.index + 40));
}

it('has no English word of the program, whatever the page shows', async () => {
  const cost = ['--stations-a-day', '0.7', '--day-cost', '350.5'];
  const whole = await pageOf('spring', '--language', 'fr', ...cost);
  expect(englishIn(whole)).toEqual([]);
  // All parts that a page can have are on this one.
  expect([...whole.matchAll(/<section id="(\w+)"/g)].map((match) => match[1])).toEqual(
    'decide safety strata where precision belts replacements against made'.split(' '),
  );
  for (const detail of ['rounded', 'none'])
    expect(englishIn(await pageOf('spring', '--language', 'fr', '--positions', detail))).toEqual([]);
});

it('speaks French of a plan without belts, and of one whose series turn', async () => {
  const spread = ['--rule', 'neyman', '--pilot', 'Lorrin 2026', '--redraws', '0', '--method', 'pivotal'];
  await planned('draw', 'printemps', '--for', 'Lorrin 2027', '--total', '40', ...spread);
  const drawn = await pageOf('printemps', '--language', 'fr');
  expect(englishIn(drawn)).toEqual([]);
  expect(said(drawn)).toContain(
    '40 stations réparties selon la surface et la dispersion de toutes ses espèces dans Lorrin 2026, au moins 3 par strate.',
  );
  const long = ['--belts', '9', '--length', '100', '--gap', '100', '--width', '2', '--turn', '60'];
  await planned('lay', 'printemps', '--date', '2026-12-21', ...long);
  const laid = await pageOf('printemps', '--language', 'fr');
  expect(englishIn(laid)).toEqual([]);
  expect(said(laid)).toContain('Séries qui tournent, bande par bande');
});

/** Every number, in the order of the page, with its decimal comma read as a point; days in words have no part in it. */
function numbersOf(page: string): string[] {
  const text = said(page).replaceAll(/\d{4}-\d{2}-\d{2}|\d{1,2}(?:er)? \p{L}+ \d{4}/gu, ' ');
  return [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([number]) => number.replace(',', '.')).toSorted();
}

it('has the numbers of the English page, with their decimal comma', async () => {
  const english = await pageOf('spring', '--stations-a-day', '4');
  const french = await pageOf('spring', '--stations-a-day', '4', '--language', 'fr');
  expect(numbersOf(french)).toEqual(numbersOf(english));
  expect(french).toContain('<html lang="fr">');
  // Positions are typed into a receiver and keep its point; nothing else does.
  const others = said(french).replaceAll(/\d+°\s\d+\.\d+′|Slateline [\d.]+/g, ' ');
  expect(others.match(/.{20}\d\.\d.{20}/g)).toBeNull();
});

it('keeps the cautions of safety, as many as in English', async () => {
  const rules = (page: string) => /id="safety".*?<ul>(.*?)<\/ul>/s.exec(page)![1]!.split('<li>').length;
  const french = await pageOf('spring', '--language', 'fr');
  expect(rules(french)).toBe(rules(await pageOf('spring')));
  expect(said(french)).toContain('personne ne plonge seul');
});

/** The demo's report in French, with every section of advice: nothing the program says is left in English. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { demoBook, slateline, temporaryFolder } from './cli-helper.ts';

let page = '';

beforeAll(async () => {
  const demo = await demoBook();
  const to = join(temporaryFolder(), 'rapport.html');
  const rates = ['0.05: a', '0.1: b', '0.2: c'].flatMap((rate) => ['--rate', rate]);
  const chosen = [...rates, '--limit-reference', '50 per ha: a', '--language', 'fr'];
  expect((await slateline('report', '--book', demo, '--to', to, ...chosen)).exitCode).toBe(0);
  page = readFileSync(to, 'utf8');
});

/** What a person reads and what a voice reads out. */
function said(): string {
  const body = page.slice(page.indexOf('<body>'));
  const labels = [...body.matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1]!);
  return [body.replaceAll(/<[^>]+>/g, ' '), ...labels].join(' ').replaceAll(/\s+/g, ' ');
}

/** Words that the makers of the demo and the authors of published values wrote themselves. */
const peoplesOwn =
  /invented for the demo(?:: may sandfish [a-z ,]*closed)?|sheet (?:lost|soaked)[a-z ]*|dive ended early: [a-z ]*|country reports on trochus|(?:north|south) flat|\([^()]*FAO species catalogue[^()]*\)|\(invented\)/g;

it('has no English word of the program, also in the sections of advice', () => {
  const text = said().replaceAll(peoplesOwn, '');
  const words =
    /(?<![\p{L}-])(the|and|of|at|was|were|is|which|surveys?|belts?|strata|stratum|sure|between|below|above|per|recorded|seen|found|unknown|lengths?|measured|held|without|with|not|from|checked|animals|weighs|closed where)(?![\p{L}-])/giu;
  const found = [...text.matchAll(words)].map((match) => text.slice(match.index - 40, match.index + 40));
  expect(found).toEqual([]);
});

it('answers the four questions with the numbers of the English page, written as French writes them', () => {
  // Authority: the English page of the same book (report-advice.test.ts): 16.1 to 46.2 per ha in the closed zone.
  expect(said()).toContain('zone closed : 16,1 à 46,2 par ha (9 animaux à 12 stations, puis 10 à 6)');
  expect(said()).toMatch(/Probablement au-dessous de la densité publiée 50 par ha/);
});

/** The demo's report answers the four questions people ask, in words that the counts allow. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, demoBook, slateline, temporaryFolder } from './cli-helper.ts';

let page = '';
let demo = '';

beforeAll(async () => {
  demo = await demoBook();
  page = await reportOf();
});

async function reportOf(...more: readonly string[]): Promise<string> {
  const to = join(temporaryFolder(), 'report.html');
  expect((await slateline('report', '--book', demo, '--to', to, ...more)).exitCode).toBe(0);
  return readFileSync(to, 'utf8');
}

/** The words of one section, without its markup. */
function wordsOf(html: string, section: string): string {
  const [found] = new RegExp(`<section id="${section}".*?</section>`, 's').exec(html) ?? [''];
  return found
    .replaceAll(/<svg.*?<\/svg>/gs, '')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll(/\s+/g, ' ');
}

function answersFor(species: string, section = 'in-full', html = page): string {
  const [, rest = ''] = wordsOf(html, section).split(species);
  return rest.slice(0, 2000);
}

// Authority: the demo's story (docs/handbook/demo.md): sandfish falls, black teatfish recovers where it is closed.
describe('the first page of the demo report', () => {
  it('answers the four questions for the falling sandfish in four short lines', () => {
    const told = answersFor('Holothuria scabra', 'four-questions');
    expect(told).toMatch(/How much\? About [\d\u202f ]+ in 1.290 ha \(95 % sure: /);
    expect(told).toMatch(/Up or down\? Cannot tell since Lorrin 2024: anything from 0\.\d+ to [\d.]+ times/);
    expect(told).toMatch(/nor can a trend be told over all 3 surveys/);
    expect(told).toMatch(/Healthy\? Below the published 700 per ha/);
    expect(told).toContain('What may be taken? No rate was given, and none is assumed');
  });

  it('says nothing may be taken where the rule that was chosen is closed', async () => {
    const ruled = await reportOf('--limit-reference', '50 per ha: plan 2026');
    const told = answersFor('Holothuria scabra', 'four-questions', ruled);
    expect(told).toMatch(
      /What may be taken\? Nothing, by the rule that was chosen: the chance of being below/,
    );
  });

  // A line is for carrying away: the longest of the demo is that of trochus, with a zone and three surveys.
  it('has no line of more than 45 words', () => {
    const lines = wordsOf(page, 'four-questions').split(
      /How much\?|Up or down\?|Healthy\?|What may be taken\?/,
    );
    for (const line of lines.slice(1)) expect(line.trim().split(' ').length, line).toBeLessThanOrEqual(45);
  });

  // The open zone is told by the log ratio: 3.7 times (1.004 to 13), while whole stations dealt out by chance give p 0.17.
  it('calls no change of a zone with few stations proven', () => {
    const told = answersFor('Rochia nilotica', 'four-questions');
    expect(told).toContain('in zone open probably higher, not proven at 95 %');
    expect(wordsOf(page, 'change')).toContain('Zone open: Fewer than 3 stations lie in some stratum here');
    expect(wordsOf(page, 'change')).toContain('by luck alone');
  });
});

describe('behind the first page', () => {
  it('the falling sandfish is not called proven', () => {
    const told = answersFor('Holothuria scabra');
    expect(told).toMatch(/How much is there\? [\d.]+ per ha \(95 % sure between/);
    expect(told).toMatch(
      /Is it going up or down\? From Lorrin 2024 to Lorrin 2026: cannot tell: 0\.\d+ times/,
    );
    expect(told).toMatch(/Over all surveys: cannot tell whether it falls or rises: −\d+ % a year/);
    expect(told).toMatch(/Is that healthy\? Below the published density/);
    expect(told).toContain('What may be taken? No rate was given, and none is assumed');
  });
  it('shows the rise of black teatfish in the closed zone with its animals and stations', () => {
    const told = answersFor('Holothuria whitmaei');
    expect(told).toMatch(/zone closed: 16\.1 to 46\.2 per ha \(9 animals at 12 stations, then 10 at 6\)/);
    expect(told).toMatch(/Is that healthy\? Likely below the published density 50 per ha/);
  });
});

// By hand: 3 + 5 + 2 + 4 animals on 4 x 480 m2 are 72.9 per ha, at these stations and nowhere else.
it('the first page says of hand-picked stations that they speak for no other place', async () => {
  const codes = ['A', 'B', 'C', 'D'];
  const book = await bookWith({
    strata: [
      ['stratum', 'area_ha'],
      ['flat', 100],
    ],
    species: [
      ['species', 'common_name'],
      ['Holothuria scabra', 'sandfish'],
    ],
    stations: [
      ['survey', 'station', 'stratum', 'date', 'selection'],
      ...codes.map((code) => ['S', code, 'flat', '2026-05-04', 'hand-picked']),
    ],
    transects: [
      ['survey', 'station', 'transect', 'length_m', 'width_m', 'status'],
      ...codes.map((code) => ['S', code, 1, 240, 2, 'done']),
    ],
    counts: [
      ['survey', 'station', 'transect', 'species', 'count'],
      ...codes.map((code, i) => ['S', code, 1, 'Holothuria scabra', [3, 5, 2, 4][i]!]),
    ],
  });
  const to = join(temporaryFolder(), 'hand.html');
  await slateline('report', '--book', book, '--to', to);
  const told = wordsOf(readFileSync(to, 'utf8'), 'four-questions');
  expect(told).toContain('72.9 per ha; how far off this may be cannot be known');
  expect(told).toContain('speaks for no other place');
  expect(told).toContain('Not set beside a published density');
  expect(told).not.toContain('From memory');
});

// A reader sees 250 000 sandfish at most in the seagrass and 140 000 at most in all four strata.
it('the report says why one stratum can reach higher than all of them', () => {
  expect(wordsOf(page, 'density')).toContain('can stand above that of all strata together');
});

describe('the sections of advice', () => {
  it('assume no rate, and say how to give one', () => {
    expect(wordsOf(page, 'taken')).toContain('No rate is assumed');
    expect(wordsOf(page, 'taken')).toContain('is the manager’s decision');
  });
  it('work out options where three rates were chosen, each with its source', async () => {
    const rates = ['0.05', '0.1', '0.2'].flatMap((rate) => ['--rate', `${rate}: plan 2026`]);
    const told = wordsOf(await reportOf(...rates, '--limit-reference', '50 per ha: plan 2026'), 'taken');
    expect(told).toMatch(/a catch can be worked out for \d+ of \d+ species/);
    expect(told).toContain('plan 2026');
    expect(told).toContain('Sandfish: closed by the rule, so 0; were it open');
    expect(told).toContain('greater than the chosen risk of 0.10');
    expect(told).toContain('all zones together (closed, open), closed ones included');
    // Nobody found curryfish: the rule closes it, and it is no species for which a catch fails.
    expect(told).toMatch(/Curryfish 0 at 0 of 28 0 none recorded – closed/);
    expect(told).toContain('of 11 species that were recorded');
  });
  it('need no script and no network, and stay under 2 MB', () => {
    expect(page).not.toMatch(/<script|src="http|href="http/);
    expect(page.length).toBeLessThan(2_000_000);
  });
  it('say in one sentence what is missing where there is one survey only', async () => {
    const told = await reportOf('--survey', 'Lorrin 2022');
    expect(wordsOf(told, 'change')).toContain('This book has one survey, so no change can be told');
  });
});

/** Harvest options through the command line: the arithmetic with its steps, and what it refuses to say. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

let demo = '';

beforeAll(async () => {
  demo = await demoBook();
});

const rates = ['--rate', '0.05: plan 2026', '--rate', '0.1: plan 2026', '--rate', '0.2: plan 2026'];
const typed = ['--typed', 'density 46.2, cv 0.24, area 875, share 0.38, weight 0.52'];

/** Thousands are parted by narrow spaces on the page. */
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

describe('scenario 10, with typed numbers', () => {
  // Authority: JOB.md scenario 10; vector k2 (R, arithmetic).
  it('gives 29 850 as the lower limit, 11 343 legal, and 567, 1 134 and 2 269 animals', async () => {
    const ran = await slateline('harvest', ...typed, ...rates);
    const text = plain(ran.stdout);
    expect(ran.exitCode).toBe(0);
    expect(text).toContain('46.2 per ha × 875 ha = 40 425 animals (typed)');
    expect(text).toContain('in all 29 850 animals');
    expect(text).toContain('29 850 × 0.38 (typed) = 11 343 animals');
    for (const line of [/5 % +567 +0\.29/, /10 % +1 134 +0\.59/, /20 % +2 269 +1\.18/])
      expect(text).toMatch(line);
    expect(text).toContain('the manager’s decision');
  });

  // Authority: JOB.md scenario 10, the limit reference changed to 50; by hand ln(50/46.2)/0.23665 = 0.334, Phi 0.631.
  it('is closed at a limit of 50 and a risk of 0.10, and open at 25', async () => {
    const closed = plain(
      (
        await slateline(
          'harvest',
          ...typed,
          ...rates,
          '--limit-reference',
          '50 per ha: plan 2026',
          '--risk',
          '0.1',
        )
      ).stdout,
    );
    expect(closed).toContain('closed. The chance that the density is below the limit of 50 per ha is 0.63');
    expect(closed).toContain('By the rule the catch is 0 at every rate');
    const { rows } = await slatelineJson('harvest', ...typed, ...rates, '--limit-reference', '25: plan 2026');
    expect(rows[0].closure.closed).toBe(false);
    expect(rows[0].closure.probabilityBelow).toBeCloseTo(0.00472937827863134, 9);
  });

  // Authority: by hand, 1 t / 0.52 kg = 1 923 animals = 1923/11343 = 17 % of the legal, 1923/40425 = 4.8 % of the stock.
  it('says what a quota and a rotation would be in animals, tonnes and share', async () => {
    const { rows } = await slatelineJson('harvest', ...typed, ...rates, '--quota', '1 t', '--rotation', '4');
    const [rotation, quota] = rows[0].options;
    expect(rotation.catches[0].animals).toBeCloseTo(567.142730903864 / 4, 6);
    expect(quota.animals).toBeCloseTo(1923.0769, 3);
    expect(quota.shareOfStock).toBeCloseTo(0.04757, 4);
    expect(quota.shareOfLegal).toBeCloseTo(0.16954, 4);
  });
});

// Authority: issue 6, the misuse that must meet a sentence.
describe('misuse', () => {
  it('without a rate works out the stock and says that there is no default', async () => {
    const ran = await slateline('harvest', ...typed);
    expect(ran.stdout).toContain('there is none by default');
    expect(plain(ran.stdout)).toContain('11 343');
    expect(ran.exitCode).toBe(1);
  });

  it('with one rate alone works out no catch', async () => {
    const ran = await slateline('harvest', ...typed, '--rate', '0.05: plan 2026');
    expect(ran.stdout).toContain('one alone would read like advice');
    expect(plain(ran.stdout)).not.toContain('567');
    const thrice = await slateline(
      'harvest',
      ...typed,
      ...Array(3).fill(['--rate', '0.05: plan 2026']).flat(),
    );
    expect(thrice.stdout).toContain('At least three different rates are needed');
    expect(plain(thrice.stdout)).not.toContain('567');
  });

  it('refuses a rate without its source', async () => {
    const ran = await slateline('harvest', ...typed, '--rate', '0.05');
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('a rate is nothing without its source');
  });

  it('refuses a typed stock that lacks a number, naming it', async () => {
    const ran = await slateline('harvest', '--typed', 'density 46.2, cv 0.24, share 0.38');
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('area is missing');
  });

  it('assumes no size limit', async () => {
    const ran = await slateline('harvest', '--book', demo, '--species', 'lollyfish', ...rates);
    expect(ran.exitCode).toBe(1);
    expect(ran.stdout).toContain('none is assumed');
  });

  it('takes no dried weight out of live ones without a sourced ratio', async () => {
    const args = ['--species', 'sandfish', '--state', 'salted', ...rates];
    const { rows } = await slatelineJson('harvest', '--book', demo, ...args);
    expect(rows[0].weightReason).toContain('no sourced ratio from live to salted');
    expect(rows[0].catches[0].tonnes).toBeNull();
    // Lavitra and others 2008 (read): 9 % of the live weight is left dried; the answer says so beside its tonnes.
    const [live, dried] = await Promise.all(
      ['live', 'dried'].map((state) =>
        slatelineJson('harvest', '--book', demo, '--species', 'sandfish', '--state', state, ...rates),
      ),
    );
    expect(dried!.rows[0].catches[0].tonnes).toBeCloseTo(0.09 * live!.rows[0].catches[0].tonnes, 12);
    expect(dried!.rows[0].cautions.join()).toContain('From live to dried with 9 %');
    expect(live!.rows[0].cautions.join()).not.toContain('From live');
  });

  it('with one station only gives no lower limit and no catch', async () => {
    const book = await bookWith(oneStation);
    const ran = await slateline(
      'harvest',
      '--book',
      book,
      '--species',
      'sandfish',
      '--limit',
      'none',
      ...rates,
    );
    expect(ran.exitCode).toBe(1);
    expect(ran.stdout).toContain('One station in flat');
    // And sizes nobody measured: no share of legal animals.
    const sized = await slateline(
      'harvest',
      '--book',
      book,
      '--species',
      'sandfish',
      '--limit',
      '160',
      ...rates,
    );
    expect(sized.stdout).not.toMatch(/catch at/);
  });
});

describe('from the counts of the demo', () => {
  // Authority: the arithmetic of METHODS k, repeated from the row's own numbers.
  it('every step follows from the numbers beside it, and the smaller lower limit is used', async () => {
    const args = ['--species', 'trochus', '--closed-zone', 'closed', '--other-limit', '100', ...rates];
    const { rows } = await slatelineJson('harvest', '--book', demo, ...args);
    const [row] = rows;
    const { stock, legal, legalStock, weight, catches, options } = row;
    expect(stock.lower.animals).toBeLessThanOrEqual(stock.otherLower.animals);
    expect(stock.lower.animals).toBeLessThan(stock.animals);
    expect(legalStock.lowerAnimals).toBeCloseTo(stock.lower.animals * legal.share, 6);
    expect(catches[1].animals).toBeCloseTo(0.1 * legalStock.lowerAnimals, 6);
    expect(catches[1].tonnes).toBeCloseTo((catches[1].animals * weight.grams) / 1e6, 9);
    for (const option of options) expect(option.legalLowerAnimals).toBeLessThan(legalStock.lowerAnimals);
  });

  // Authority: the density verb, asked for an 80 % interval.
  it('the lower limit is the lower end of the 80 % interval of the density', async () => {
    const args = ['--species', 'trochus', '--survey', 'Lorrin 2026'];
    const density = await slatelineJson('density', '--book', demo, ...args, '--confidence', '0.8');
    const harvest = await slatelineJson('harvest', '--book', demo, ...args, '--lower', 'clumped', ...rates);
    expect(harvest.rows[0].stock.lower.perHa).toBe(density.rows[0].intervalPerHa[0]);
    expect(harvest.rows[0].stock.lower.animals).toBe(density.rows[0].totalInterval[0]);
  });

  it('names the zones when none of them is said to be closed', async () => {
    const ran = await slateline('harvest', '--book', demo, '--species', 'trochus', ...rates);
    expect(ran.stdout).toContain('closed ones included');
    const wrong = await slateline(
      'harvest',
      '--book',
      demo,
      '--species',
      'trochus',
      '--closed-zone',
      'x',
      ...rates,
    );
    expect(wrong.exitCode).toBe(2);
    expect(wrong.stderr).toContain('there is no zone “x” in this survey; there are closed, open');
  });

  // A rule that falls silent over a species nobody found reads as if fishing it were open.
  // A published 300 g are of animals of all sizes; those above a limit weigh more.
  it('says that a mean weight of all sizes is too little for legal animals', async () => {
    const args = ['--species', 'leopardfish', '--limit', '300', '--mean-weight', '0.9: port sampling 2025'];
    const typedOne = await slatelineJson('harvest', '--book', demo, ...args, ...rates);
    expect(typedOne.rows[0].cautions.join()).not.toContain('of all sizes');
    const own = join(temporaryFolder(), 'own.csv');
    writeFileSync(
      own,
      'species,what,weight_g,state,source\nleopardfish,mean-weight,900,live,own trial 2025\n',
    );
    const book = join(temporaryFolder(), 'demo');
    await slateline('demo', '--book', book);
    expect((await slateline('values', '--add', own, '--who', 'Officer A', '--book', book)).exitCode).toBe(0);
    const limited = ['harvest', '--book', book, '--species', 'leopardfish', ...rates];
    const { rows } = await slatelineJson(...limited, '--limit', '300');
    expect(rows[0].weight.grams).toBe(900);
    expect(rows[0].cautions.join()).toContain('of all sizes, and those of 300 mm and more weigh more');
    const all = await slatelineJson(...limited, '--limit', 'none');
    expect(all.rows[0].cautions.join()).not.toContain('of all sizes');
  });

  it('the rule closes a species of which none was recorded, and says by which bound', async () => {
    const limit = ['--limit-reference', '50 per ha: plan 2026'];
    const ran = await slateline('harvest', '--book', demo, '--species', 'curryfish', ...rates, ...limit);
    const text = plain(ran.stdout);
    expect(text).toContain('By the rule that was chosen: closed. None was recorded (below 2.6 per ha)');
    expect(text).not.toContain('No limit reference was given');
    expect(text).not.toContain('the manager’s decision');
  });

  it('where a density has no spread the rule cannot be told, which is not open', async () => {
    const book = await bookWith(oneStation);
    const limit = ['--limit', 'none', '--limit-reference', '50 per ha: plan 2026'];
    const ran = await slateline('harvest', '--book', book, '--species', 'sandfish', ...limit, ...rates);
    expect(plain(ran.stdout)).toContain(
      'limit of 50 per ha (plan 2026) is not known here. Not known is not open',
    );
    expect(ran.stdout).not.toContain('No limit reference was given');
  });

  // Authority: 0.1035 is more than 0.10, though both round to 0.10.
  it('prints as many digits as it takes to see on which side of the risk a chance lies', async () => {
    const numbers = ['--typed', 'density 46.2, cv 0.24, area 875, share 0.38, weight 0.52'];
    const args = [...numbers, ...rates, '--limit-reference', '34.28: plan 2026'];
    const { rows } = await slatelineJson('harvest', ...args);
    const { probabilityBelow } = rows[0].closure;
    expect(probabilityBelow).toBeGreaterThan(0.1);
    expect(probabilityBelow).toBeLessThan(0.105);
    const ran = await slateline('harvest', ...args);
    expect(ran.stdout).toContain(`is ${probabilityBelow.toFixed(3)}, more than the chosen risk of 0.10`);
  });
});

/** A density there, and no spread. */
const oneStation = {
  strata: [
    ['stratum', 'area_ha'],
    ['flat', 100],
  ],
  stations: [
    ['survey', 'station', 'stratum', 'date', 'selection'],
    ['S', 'A1', 'flat', '2026-05-04', 'random'],
  ],
  transects: [
    ['survey', 'station', 'transect', 'length_m', 'width_m', 'status'],
    ['S', 'A1', 1, 40, 2, 'done'],
  ],
  counts: [
    ['survey', 'station', 'transect', 'species', 'count'],
    ['S', 'A1', 1, 'sandfish', 4],
  ],
};

/** From weighed animals and brought-in values to tonnes; what is refused on the way, and how. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, type Cell, demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';
import { miniatureTables } from './miniature-survey.ts';

function file(text: string): string {
  const path = join(temporaryFolder(), 'own-values.csv');
  writeFileSync(path, text);
  return path;
}

/** The pair of vector e1 for sandfish, in the unit asked for; a is 0.000524 in mm, 0.119 in cm. */
function pairIn(lengthUnit: 'mm' | 'cm', a: string): string {
  return [
    'species,what,source,a,b,length_unit,weight_unit,state,length_min_mm,length_max_mm,residual_sd_ln',
    `sandfish,length-weight,weighed in 2025,${a},2.35575,${lengthUnit},g,live,95,310,0.1768`,
    '',
  ].join('\n');
}

/** The miniature survey with one animal measured, whose length all others borrow. */
async function bookWithLength(lengthMm: number): Promise<string> {
  const tables = miniatureTables();
  const [survey, station, transect, name] = tables['counts']![1]!;
  const species: readonly (readonly Cell[])[] = [
    ['species', 'common_name', 'min_length_mm', 'max_length_mm'],
    ['Holothuria scabra', 'sandfish', 60, 400],
    ['Holothuria whitmaei', 'black teatfish', '', ''],
  ];
  const lengths: readonly (readonly Cell[])[] = [
    ['survey', 'station', 'transect', 'species', 'length_mm'],
    [survey!, station!, transect!, name!, lengthMm],
  ];
  return bookWith({ ...tables, species, lengths });
}

// Authority: JOB scenario 6; vector e1 (b 2.35575, 10^b = 227).
describe('a length typed in centimetres', () => {
  it('is asked about; taken as it stands it would change the weight by a factor of 227', async () => {
    const [slipped, right] = [await bookWithLength(18), await bookWithLength(180)];
    const asked = await slatelineJson('check', '--book', slipped);
    const question = asked.problems.find(({ code }) => code === 'length-unit-slip');
    expect(question.suggestion).toBe('180 mm');
    const weigh = async (book: string) => {
      await slateline('values', '--add', file(pairIn('mm', '0.000523929')), '--book', book);
      return (await slatelineJson('biomass', '--book', book, '--species', 'sandfish')).rows[0];
    };
    const [wrong, meant] = [await weigh(slipped), await weigh(right)];
    // All lengths of the book are this one, so the whole biomass changes by the factor.
    expect(Math.round(meant.kgPerHa / wrong.kgPerHa)).toBe(227);
    expect(meant.cautions.join(' ')).toContain('One animal of 200 mm weighs 140 g by this pair: plausible?');
    expect(wrong.cautions.join(' ')).toContain('are outside the lengths from which the pair was made');
  });
});

describe('the own values of an officer', () => {
  let book = '';
  beforeAll(async () => {
    book = await bookWithLength(180);
  });

  it('are refused as a whole, by row and column, when one of them cannot be', async () => {
    const rows = [
      'species,what,source,a,b,length_unit,weight_unit,state,density_per_ha,method,meaning,basis,from,to,ratio',
      'sandfish,length-weight,a paper,0.119,2.36,mm,g,live,,,,,,,',
      'sandfish,length-weight,a paper,0.0005,2.36,,g,live,,,,,,,',
      'sandfish,reference-density,a report,,,,,,50,,healthy,,,,',
      'sandfsh,conversion,,,,,,,,,,weight,live,dried,9',
      '',
    ];
    const ran = await slateline('values', '--add', file(rows.join('\n')), '--book', book);
    expect(ran.exitCode).toBe(1);
    expect(ran.stderr).toContain('row 2, column a: by this pair one animal of 200 mm weighs 32\u202f100 g');
    expect(ran.stderr).toContain('row 3: length_unit is empty, and this row needs it');
    expect(ran.stderr).toContain('row 4: method is empty, and this row needs it');
    expect(ran.stderr).toContain(
      'row 5, column species: species “sandfsh” is not in the species list; did you mean sandfish?',
    );
    expect(ran.stderr).toContain('row 5: source is empty');
    expect(ran.stderr).toContain('row 5: ratio is 9');
    const { rows: listed } = await slatelineJson('values', '--book', book, '--species', 'sandfish');
    expect(listed.every((row) => !row.own)).toBe(true);
  });

  it('stand before the built-in ones, and can be withdrawn by name', async () => {
    const dried =
      'species;what;source;basis;from;to;ratio\nsandfish;conversion;own trial;weight;live;dried;0,08\n';
    expect((await slateline('values', '--add', file(dried), '--book', book)).exitCode).toBe(0);
    const weights = async () =>
      (
        await slatelineJson('values', '--book', book, '--species', 'sandfish', '--what', 'conversion')
      ).rows.filter((row) => row.content.basis === 'weight' && !row.replaced);
    expect((await weights()).map((row) => [row.own, row.content.ratio])).toEqual([[true, 0.08]]);
    const gone = ['--withdraw', 'conversion, weight, live to dried', '--species', 'sandfish'];
    expect((await slateline('values', ...gone, '--book', book)).exitCode).toBe(2);
    const withdrawn = await slateline('values', ...gone, '--why', 'the scales were wrong', '--book', book);
    expect(withdrawn.stdout).toContain('Withdrawn: conversion, weight, live to dried');
    expect((await weights()).map((row) => [row.own, row.content.ratio])).toEqual([[false, 0.09]]);
    const history = await slateline('history', '--book', book, '--species', 'sandfish');
    expect(history.stdout).toContain('the scales were wrong');
  });

  it('from memory are never shown as published', async () => {
    const { stdout } = await slateline('values', '--book', book, '--what', 'reference-density');
    const lines = stdout.split('\n');
    const remembered = lines.filter((line) => line.includes('Pakoa'));
    expect(remembered.length).toBeGreaterThan(1);
    for (const line of remembered) expect(line).toContain('from memory, not checked against the source');
  });
});

describe('weights that cannot be had', () => {
  it('no lengths and no weights: a sentence that says what to bring', async () => {
    const book = await bookWith(miniatureTables());
    const [answer] = (await slatelineJson('biomass', '--book', book, '--species', 'sandfish')).rows;
    // Conand 1998 (read) gives 300 g: count times it, called an order of magnitude.
    expect(answer.cautions.join(' ')).toContain('order of magnitude only');
    const none = await slatelineJson('biomass', '--book', book, '--species', 'sandfish', '--pair', 'own');
    expect(none.rows[0].reason).toContain('No weights of your own');
    await slateline('values', '--add', file(pairIn('cm', '0.118857')), '--book', book);
    const own = await slatelineJson('biomass', '--book', book, '--species', 'sandfish', '--pair', 'own');
    expect(own.rows[0].kgPerHa).toBeNull();
    expect(own.rows[0].reason).toContain('none was measured, and a weight of the mean length would be wrong');
  });

  it('a dried weight where only live animals were weighed and no ratio is known: held', async () => {
    const book = await bookWithLength(180);
    await slateline('values', '--add', file(pairIn('cm', '0.118857')), '--book', book);
    const held = await slatelineJson('biomass', '--book', book, '--species', 'sandfish', '--state', 'salted');
    expect(held.exitCode).toBe(1);
    expect(held.rows[0].totalKg).toBeNull();
    expect(held.rows[0].reason).toContain(
      'no sourced ratio from live to salted is known for Holothuria scabra',
    );
  });
});

describe('the demo', () => {
  let rows: Awaited<ReturnType<typeof slatelineJson>>['rows'] = [];
  beforeAll(async () => {
    const demo = await demoBook();
    rows = (await slatelineJson('biomass', '--book', demo, '--survey', 'Lorrin 2026')).rows;
  });

  // Authority: the curves that the demo draws its weights from (src/tasks/demo/weighed-animals.ts): exponents 2.3, 2.2, 2.5, 2.9.
  it('gives back the curves that its weights were drawn from', () => {
    const exponents = {
      'Holothuria atra': 2.3,
      'Stichopus chloronotus': 2.2,
      'Holothuria scabra': 2.5,
      'Rochia nilotica': 2.9,
    };
    for (const [species, exponent] of Object.entries(exponents)) {
      const { basis } = rows.find((row) => row.species === species);
      expect(basis.origin.status).toBe('fit');
      const standardError = Math.sqrt(basis.pair.covariance.bVariance);
      expect(Math.abs(basis.pair.b - exponent)).toBeLessThan(3 * standardError);
    }
  });

  // By hand: the demo's lollyfish weigh 150 g at 170 mm, and its animals are about that long.
  it('weighs a lollyfish at about what it was made to weigh', () => {
    const lollyfish = rows.find((row) => row.species === 'Holothuria atra');
    expect(lollyfish.meanWeightG).toBeGreaterThan(110);
    expect(lollyfish.meanWeightG).toBeLessThan(210);
    expect(lollyfish.totalKg).toBeCloseTo(lollyfish.kgPerHa * lollyfish.areaHa, 6);
  });

  it('says of every number without one why', () => {
    for (const row of rows) {
      if (row.kgPerHa === null && row.intervalKgPerHa === null) expect(row.reason).toMatch(/\w/);
      expect(JSON.stringify(row)).not.toMatch(/NaN|Infinity/);
    }
  });
});

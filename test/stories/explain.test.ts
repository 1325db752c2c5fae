/** Does it stand, and where does it come from: through the command line, on the demo. */

import { beforeAll, describe, expect, it } from 'vitest';
import { bookWith, demoBook, slateline, slatelineJson } from './cli-helper.ts';

let demo = '';
const survey = 'Lorrin 2026';

beforeAll(async () => {
  demo = await demoBook();
});

const answerOf = async (verb: string, ...args: string[]) =>
  (await slatelineJson(verb, '--book', demo, '--survey', survey, ...args)).rows;

// biome-ignore lint/suspicious/noExplicitAny: rows are read as any program would
type Row = any;

/** METHODS b from the rows of the explanation alone. */
function reworked(row: Row): { value: number; standardError: number } {
  const areaHa = row.strata.reduce((sum: number, one: Row) => sum + one.areaHa, 0);
  let value = 0;
  let variance = 0;
  for (const stratum of row.strata) {
    const values: number[] = stratum.stations.map((one: Row) => one.valuePerHa);
    const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
    const squares = values.reduce((sum, one) => sum + (one - mean) ** 2, 0);
    value += (stratum.areaHa / areaHa) * mean;
    variance += ((stratum.areaHa / areaHa) ** 2 * squares) / (values.length - 1) / values.length;
  }
  return { value, standardError: Math.sqrt(variance) };
}

describe('where a number comes from', () => {
  // Authority: the density verb, whose figure must come out of explain's rows to 1e-12.
  it.each(['sandfish', 'black teatfish', 'lollyfish'])(
    'the density of %s is made again from its stations',
    async (species) => {
      const [row] = await answerOf('explain', '--species', species);
      const [density] = await answerOf('density', '--species', species);
      const again = reworked(row);
      expect(row.value).toBe(density.densityPerHa);
      expect(Math.abs(again.value / density.densityPerHa - 1)).toBeLessThan(1e-12);
      expect(Math.abs(again.standardError / density.standardErrorPerHa - 1)).toBeLessThan(1e-10);
      const animals = row.strata
        .flatMap((one: Row) => one.stations)
        .reduce((sum: number, one: Row) => sum + one.animals, 0);
      expect(animals).toBe(density.animals);
    },
  );

  // Authority: the biomass verb.
  it('the biomass is made again from the grams of its stations', async () => {
    const [row] = await answerOf('explain', '--species', 'sandfish', '--of', 'biomass');
    // The biomass verb prints that of the weights with it: 1.436 kg beside 1.434 between stations.
    const said = await slateline('explain', '--book', demo, '--species', 'sandfish', '--of', 'biomass');
    expect(said.stdout).toMatch(/g per ha, standard error between stations \d/);
    const [biomass] = await answerOf('biomass', '--species', 'sandfish');
    const again = reworked(row);
    expect(Math.abs(again.value / 1000 / biomass.kgPerHa - 1)).toBeLessThan(1e-10);
    expect(Math.abs(again.standardError / 1000 / biomass.samplingErrorKgPerHa - 1)).toBeLessThan(1e-9);
  });

  // Authority: the sizes verb.
  it('the mean length is made again from what each animal stands for', async () => {
    const [row] = await answerOf('explain', '--species', 'sandfish', '--of', 'size');
    const [sizes] = await answerOf('sizes', '--species', 'sandfish');
    const stations = row.strata.flatMap((one: Row) => one.stations);
    const lengths = stations.reduce((sum: number, one: Row) => sum + one.amount, 0);
    const animals = stations.reduce((sum: number, one: Row) => sum + one.weightedAnimals, 0);
    expect(Math.abs(lengths / animals / sizes.meanLengthMm - 1)).toBeLessThan(1e-12);
  });

  it('names what was left out, with the reason that was written on the slate', async () => {
    const { stdout } = await slateline(
      'explain',
      '--book',
      demo,
      '--species',
      'sandfish',
      '--scope',
      'stratum: outer terrace',
    );
    expect(stdout).toContain('Left out');
    expect(stdout).toContain('current too strong to hold the tape');
  });

  it('of a zone shows which stations lie inside', async () => {
    const { stdout } = await slateline(
      'explain',
      '--book',
      demo,
      '--species',
      'sandfish',
      '--scope',
      'zone: closed',
      '--of',
      'stock',
    );
    expect(stdout).toContain('estimated from the stations inside');
    expect(stdout).toMatch(/inside\s+belts/);
  });

  it('asks back when the scope is not there', async () => {
    const ran = await slateline(
      'explain',
      '--book',
      demo,
      '--species',
      'sandfish',
      '--scope',
      'zone: closde',
    );
    expect(ran.exitCode).toBe(2);
    expect(ran.stderr).toContain('did you mean closed?');
  });
});

describe('whether it stands', () => {
  // Authority: the survey itself with the station taken out, by another verb: the animals over the area that is left.
  it('sandfish rests on one station of the seagrass, and the line says which and how much', async () => {
    const [row] = await answerOf('sensitivity', '--species', 'sandfish');
    const [explained] = await answerOf('explain', '--species', 'sandfish');
    const [most] = row.stations;
    expect(row.verdict).toBe('rests');
    expect(most.stratum).toBe('lagoon seagrass');
    const kept = explained.strata.map((one: Row) => ({
      ...one,
      stations: one.stations.filter(({ station }: Row) => station !== most.station),
    }));
    expect(Math.abs(reworked({ strata: kept }).value / most.densityPerHa - 1)).toBeLessThan(1e-12);
    expect(row.sentences[0]).toContain(`${most.station} (lagoon seagrass) holds`);
  });

  it('tries every other interval and prior, and says when nothing turns', async () => {
    const [row] = await answerOf(
      'sensitivity',
      '--species',
      'sandfish',
      '--reference',
      '700: Author 2014: belts',
    );
    expect(row.variants.map(({ kind }: Row) => kind)).toEqual([
      'without-station',
      'house-prior',
      'wide-prior',
      'lognormal',
      't',
      'percentile',
    ]);
    expect(row.turned).toEqual([]);
    expect(row.said.statusClass).toBe('below');
  });

  // By hand: 8 stations of 2 animals on 80 m2 are 250 per ha each; one belt of 400 m typed for 40 m would make it 25.
  it('leaves out what the checks still ask about, and the mean is that of the others', async () => {
    const codes = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
    const book = await bookWith({
      strata: [
        ['stratum', 'area_ha'],
        ['flat', 100],
      ],
      stations: [
        ['survey', 'station', 'stratum', 'date', 'selection'],
        ...codes.map((code) => ['S', code, 'flat', '2026-05-04', 'random']),
      ],
      transects: [
        ['survey', 'station', 'transect', 'length_m', 'width_m', 'status'],
        ...codes.flatMap((code) =>
          [1, 2].map((n) => ['S', code, n, code === 'C' && n === 2 ? 400 : 40, 2, 'done']),
        ),
      ],
      counts: [
        ['survey', 'station', 'transect', 'species', 'count'],
        ...codes.flatMap((code) => [1, 2].map((n) => ['S', code, n, 'sandfish', n === 1 ? 1 : 3])),
      ],
    });
    const { rows } = await slatelineJson('sensitivity', '--book', book, '--species', 'sandfish');
    const doubtful = rows[0].variants.find(({ kind }: Row) => kind === 'without-questioned');
    expect(doubtful.stations).toEqual(['C']);
    // With C on 880 m2 the mean is (7 x 250 + 45.45) / 8 = 224.4 as it is; without it 250.
    expect(rows[0].densityPerHa).toBeCloseTo(224.432, 2);
    expect(doubtful.densityPerHa).toBeCloseTo(250, 9);
    const text = (await slateline('sensitivity', '--book', book, '--species', 'sandfish')).stdout;
    expect(text).toContain('without what is in question (C)');
  });
});

// Authority: issue 6: the text is for people, who say curryfish; the scientific name stands once, in the head.
describe('the text of a verb', () => {
  const text = async (verb: string, ...args: string[]) =>
    (await slateline(verb, '--book', demo, '--survey', survey, ...args)).stdout;
  it.each([
    ['explain', '--species', 'curryfish', '--of', 'biomass'],
    ['explain', '--species', 'curryfish', '--of', 'size'],
    ['harvest', '--species', 'lollyfish', '--rate', '0.1: plan'],
    ['sensitivity', '--species', 'curryfish'],
  ])('%s %s %s %s names the species as people do, and by its scientific name once', async (verb, ...args) => {
    const said = await text(verb, ...args);
    expect(said.match(/Stichopus herrmanni|Holothuria atra/g)).toHaveLength(1);
    expect(said).toMatch(/No (size limit of )?(curryfish|lollyfish) (was|is)/);
  });
  it('biomass and sizes put no scientific name into a sentence', async () => {
    expect(await text('sizes')).not.toMatch(/No [A-Z][a-z]+ [a-z]+ was measured/);
    const weights = await text('biomass');
    expect(weights).toContain('No weights for large giant clam and small giant clam:');
    expect(weights.match(/Tridacna/g)).toBeNull();
  });
});

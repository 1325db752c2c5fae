import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import { joinSurvey } from '../../survey/survey-in-hand.ts';
import type { Placed, TableRows } from '../../survey/table-rows.ts';
import { recordSchemas, type Species, type Stratum } from '../../survey/words.ts';
import { askedOf } from '../check-survey.ts';
import { type SurveyYear, surveyYears } from './animal.ts';
import { demoRows } from './demo-rows.ts';
import { surveyName } from './survey-words.ts';

const demo = demoRows();
const stations = demo.stations.map((one) => one.row);
const transects = demo.transects.map((one) => one.row);
const tallies = demo.tallies.map((one) => one.row);

describe('the demo book', () => {
  it('is the same to the byte for the same seed', () => {
    // Authority: invariance. The digest is a saved one: when it changes, every figure of the handbook changes too.
    const digest = createHash('sha256')
      .update(JSON.stringify(demoRows(1)))
      .digest('hex')
      .slice(0, 16);
    expect(digest).toBe('a4bd2d5eea079451');
    expect(demo).toEqual(demoRows(1));
  });

  it('is another book for another seed', () => {
    expect(JSON.stringify(demoRows(2))).not.toBe(JSON.stringify(demo));
  });

  it('holds three surveys of 21 to 30 stations with six belts each', () => {
    for (const year of surveyYears) {
      const here = stations.filter((station) => station.survey === surveyName(year));
      expect(here.length).toBeGreaterThanOrEqual(21);
      expect(here.length).toBeLessThanOrEqual(30);
      for (const { code } of here) {
        const belts = transects.filter(
          (one) => one.survey === surveyName(year) && one.station === code && one.swim === 1,
        );
        expect(belts.map((one) => one.transect)).toEqual(['1', '2', '3', '4', '5', '6']);
      }
    }
  });

  it('sends the divers to the same twelve planned places in every survey', () => {
    const plans = surveyYears.map((year) =>
      stations
        .filter((station) => station.survey === surveyName(year) && station.selection === 'fixed')
        .map(({ code, stratum, plannedLatitudeDeg, plannedLongitudeDeg, bearingDeg }) => ({
          code,
          stratum,
          plannedLatitudeDeg,
          plannedLongitudeDeg,
          bearingDeg,
        })),
    );
    expect(plans[0]).toHaveLength(12);
    expect(plans[1]).toEqual(plans[0]);
    expect(plans[2]).toEqual(plans[0]);
  });

  it('visits no random place under a code that another survey used', () => {
    const codes = stations.filter((one) => one.selection === 'random').map((one) => one.code);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('measures the first thirty of a species on a belt and counts the rest', () => {
    for (const tally of tallies) {
      const measured = tally.lengths.reduce((total, length) => total + length.n, 0);
      expect(measured).toBe(tally.swim === 1 ? Math.min(30, tally.count!) : 0);
    }
    const cut = tallies.filter((tally) => tally.swim === 1 && tally.count! > 30);
    expect(cut.length).toBeGreaterThan(20);
  });

  it('has two lost sheets, one aborted dive, and a reason for every belt that was not done whole', () => {
    const lost = transects.filter((one) => one.status === 'lost');
    const notDone = transects.filter((one) => one.status === 'not done');
    expect(lost).toHaveLength(2);
    expect(notDone.map((one) => one.transect)).toEqual(['3', '4', '5', '6']);
    expect(new Set(notDone.map((one) => one.station)).size).toBe(1);
    expect(transects.filter((one) => one.status !== 'done' && one.reason === null)).toEqual([]);
    const short = transects.filter((one) => one.status === 'partial');
    expect(short).toHaveLength(6);
    expect(short.every((one) => one.lengthM! < 40)).toBe(true);
  });

  it('has no animal on a belt that was lost, not done or marked none seen', () => {
    const closed = transects.filter(
      (one) => one.status === 'lost' || one.status === 'not done' || one.noneSeen,
    );
    const keys = new Set(closed.map(beltKey));
    expect(tallies.filter((tally) => keys.has(beltKey(tally)))).toEqual([]);
  });

  it('shows curryfish in 2022, looked for but on no sheet after', () => {
    const curryfish = 'Stichopus herrmanni';
    const years = tallies.filter((tally) => tally.species === curryfish).map((tally) => tally.survey);
    expect(new Set(years)).toEqual(new Set([surveyName(2022)]));
    expect(demo.targets.filter((one) => one.row.species === curryfish)).toHaveLength(3);
  });

  it('has cover that adds up to 100 on every searched belt', () => {
    for (const belt of transects) {
      const total = belt.cover.reduce((sum, part) => sum + part.percent, 0);
      expect(total).toBe(belt.status === 'done' || belt.status === 'partial' ? 100 : 0);
    }
  });

  it('names only species, strata and surveys that it lists', () => {
    const species = new Set(demo.species.map((one) => one.row.name));
    for (const rows of [demo.tallies, demo.weights, demo.targets, demo.limits]) {
      expect(rows.filter((one) => !species.has(one.row.species))).toEqual([]);
    }
  });

  it('says of every minimum size and every survey that it is invented', () => {
    expect(demo.limits.every((one) => one.row.source === 'invented for the demo')).toBe(true);
    expect(demo.surveys.every((one) => one.row.purpose?.startsWith('invented'))).toBe(true);
  });
});

describe('the demo in the hands of the estimators', () => {
  it('leaves nothing unresolved and raises no question', () => {
    for (const year of surveyYears) {
      const inHand = demoInHand(demo, year);
      for (const species of inHand.targets) {
        const states = observeSpecies(inHand, species).map((one) => one.state);
        expect(new Set(states)).toEqual(new Set(['observed']));
      }
      const targetList = { species: inHand.targets, madeFrom: 'declared', undeclared: [] } as const;
      expect(askedOf({ inHand, targetList })).toEqual([]);
    }
  });

  it('has a stratum of 2026 with none of a species that is plentiful elsewhere', () => {
    const inHand = demoInHand(demo, 2026);
    const lollyfish = inHand.targets.find((one) => one.commonName === 'lollyfish')!;
    const seen = observeSpecies(inHand, lollyfish);
    const animalsIn = (stratum: string) =>
      seen.filter((one) => one.station.stratum.name === stratum).reduce((sum, one) => sum + one.animals, 0);
    expect(animalsIn('outer terrace')).toBe(0);
    expect(animalsIn('south flat')).toBeGreaterThan(500);
  });

  it('is made of records that the schemas of the book accept', () => {
    const rows: readonly (readonly [keyof typeof recordSchemas, readonly Placed<object>[]])[] = [
      ['stratum', demo.strata],
      ['protocol', demo.protocols],
      ['species', demo.species],
      ['survey', demo.surveys],
    ];
    for (const [kind, placed] of rows) {
      for (const { row } of placed)
        recordSchemas[kind].parse({ ...row, id: identity(1), protocolId: identity(1) });
    }
    for (const row of stations) {
      recordSchemas.station.parse({ ...row, id: identity(1), surveyId: identity(1), stratumId: identity(1) });
    }
    for (const row of transects) {
      recordSchemas.transect.parse({ ...row, id: identity(1), stationId: identity(1), code: row.transect });
    }
    for (const row of tallies) {
      recordSchemas.tally.parse({ ...row, id: identity(1), transectId: identity(1), speciesId: identity(1) });
    }
  });
});

/**
 * Authority: the specification of the demo (DEMO.md of the design). Forty seeds; the mean of the station
 * densities must lie within 3.5 of its own standard errors of the density that was asked for.
 */
describe('the truth behind the demo', () => {
  const books = Array.from({ length: 40 }, (_, i) => demoRows(100 + i));
  const cases = [
    { name: 'greenfish', stratum: 'north flat', year: 2022, perHa: 300 },
    { name: 'lollyfish', stratum: 'south flat', year: 2024, perHa: 5000 },
    { name: 'sandfish', stratum: 'lagoon seagrass', year: 2022, perHa: 180 },
    { name: 'sandfish', stratum: 'lagoon seagrass', year: 2026, perHa: 60 },
  ] as const;
  for (const one of cases) {
    it(`gives back ${one.perHa} ${one.name} per hectare in the ${one.stratum} of ${one.year}`, () => {
      const densities = books.flatMap((book) => densitiesPerHa(demoInHand(book, one.year), one));
      const { mean, standardError } = momentsOf(densities);
      expect(Math.abs(mean - one.perHa)).toBeLessThan(3.5 * standardError);
      // Guards the check itself: a standard error above a fifth of the truth would let anything pass.
      expect(standardError).toBeLessThan(0.2 * one.perHa);
    });
  }

  it('clumps trochus with k 0.4', () => {
    // By hand: variance of a station density d is mean / area + mean^2 / k = 100 / 0.048 + 100^2 / 0.4 = 27 083.
    const whole = { name: 'trochus', stratum: 'south flat', year: 2024 } as const;
    const densities = books.flatMap((book) => densitiesPerHa(demoInHand(book, 2024), whole));
    const { mean, standardError } = momentsOf(densities);
    const variance = standardError ** 2 * densities.length;
    expect(mean).toBeGreaterThan(80);
    // 280 stations of a skewed variable: the variance itself is known to within about a third.
    expect(variance / 27_083).toBeGreaterThan(0.65);
    expect(variance / 27_083).toBeLessThan(1.5);
  });
});

function densitiesPerHa(
  inHand: SurveyInHand,
  one: { readonly name: string; readonly stratum: string },
): number[] {
  const species = inHand.targets.find((target) => target.commonName === one.name)!;
  return observeSpecies(inHand, species)
    .filter((seen) => seen.station.stratum.name === one.stratum)
    .map((seen) => (seen.animals * 1e8) / seen.searchedAreaCm2);
}

function momentsOf(values: readonly number[]): { readonly mean: number; readonly standardError: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / (values.length - 1) / values.length) };
}

/** The rows of one survey joined as an import would join them, with made-up identities. */
function demoInHand(rows: TableRows, year: SurveyYear): SurveyInHand {
  const name = surveyName(year);
  let last = 0;
  const newId = () => identity(++last);
  const withId = <Row>({ row }: Placed<Row>) => ({ ...row, id: newId() });
  const strata: Stratum[] = rows.strata.map(withId);
  const species: Species[] = rows.species.map(withId);
  const speciesIds = new Map(species.map((one) => [one.name, one.id]));
  const protocol = withId(rows.protocols[0]!);
  const survey = { ...withId(rows.surveys.find((one) => one.row.name === name)!), protocolId: protocol.id };
  const stationRecords = rows.stations
    .filter((one) => one.row.survey === name)
    .map((one) => ({
      ...withId(one),
      surveyId: survey.id,
      stratumId: strata.find((stratum) => stratum.name === one.row.stratum)!.id,
    }));
  const stationIds = new Map(stationRecords.map((one) => [one.code, one.id]));
  const belts = rows.transects
    .filter((one) => one.row.survey === name)
    .map((one) => ({ ...withId(one), code: one.row.transect, stationId: stationIds.get(one.row.station)! }));
  const beltIds = new Map(belts.map((one) => [beltKey(one), one.id]));
  const tallyRecords = rows.tallies
    .filter((one) => one.row.survey === name)
    .map(({ row }) => ({
      id: newId(),
      transectId: beltIds.get(beltKey(row))!,
      speciesId: speciesIds.get(row.species)!,
      count: row.count!,
      lengths: [...row.lengths],
    }));
  return joinSurvey(
    { survey, protocol, strata, targets: species },
    { stations: stationRecords, transects: belts, tallies: tallyRecords },
  );
}

function beltKey(one: { survey: string; station: string; transect: string; swim: number }): string {
  return `${one.survey} ${one.station} ${one.transect} ${one.swim}`;
}

function identity(n: number): string {
  return `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
}

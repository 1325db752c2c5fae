/**
 * An invented survey for the tests of this room: three strata (one with a lone station), six species
 * (one never seen, one whose answer is held, one whose answer waits for a blank station), a short belt,
 * lost belts, a station without a position. Its answers are made here by simple rules, because
 * this room is about showing them, not about estimating; nothing of it is published anywhere.
 */

import type { Belief, DensityAnswer, LeftOut, SizesAnswer } from '../estimates/answers.ts';
import type { Reason } from '../survey/message.ts';
import { observeSpecies, type SurveyInHand } from '../survey/observation.ts';
import { problemOf } from '../survey/problem-of.ts';
import { joinSurvey } from '../survey/survey-in-hand.ts';
import type { Protocol, Species, Station, Stratum, Survey, Tally, Transect } from '../survey/words.ts';
import type { ReportInput, ReportSurvey } from './report-input.ts';

let lastId = 0;
const newId = () => `00000000-0000-7000-8000-${String(++lastId).padStart(12, '0')}`;

function speciesOf(name: string, commonName: string | null): Species {
  const rest = { group: null, code: null, localName: null, aliases: [], habitats: [] };
  const bounds = { minLengthMm: null, maxLengthMm: null, depthMinM: null, depthMaxM: null };
  return { id: newId(), name, commonName, ...rest, ...bounds };
}

const lollyfish = speciesOf('Holothuria atra', 'lollyfish');
const whiteTeatfish = speciesOf('Holothuria fuscogilva', 'white teatfish');
const sandfish = speciesOf('Holothuria scabra', 'sandfish');
const greenfish = speciesOf('Stichopus chloronotus', 'greenfish');
const pricklyRedfish = speciesOf('Thelenota ananas', 'prickly redfish');
const trochus = speciesOf('Rochia nilotica', 'trochus');
export const fixtureSpecies = [lollyfish, whiteTeatfish, sandfish, greenfish, pricklyRedfish, trochus];

const stratumOf = (name: string, areaHa: number): Stratum => {
  return { id: newId(), name, habitat: null, areaHa, depthMinM: null, depthMaxM: null };
};
const northFlat = stratumOf('north flat', 420);
const lagoon = stratumOf('lagoon seagrass', 310);
const terrace = stratumOf('outer terrace', 145);
const strata = [northFlat, lagoon, terrace];

export const fixtureProtocol: Protocol = {
  id: newId(),
  name: 'belts in series',
  layout: 'series',
  transectsPerStation: 6,
  lengthM: 40,
  widthM: 2,
  gapM: 10,
  measureFirst: 30,
  lengthUnit: 'mm',
};

/** Mean animals per belt by stratum; 0 where a species is not met. */
const perBelt: ReadonlyMap<Species, readonly number[]> = new Map([
  [lollyfish, [11, 6, 0.5]],
  [sandfish, [0, 1.2, 0]],
  [greenfish, [2.5, 0.2, 0]],
  [pricklyRedfish, [0.02, 0, 0.4]],
  [trochus, [1.1, 0, 0.6]],
]);

/** Seeded luck of the fixture alone (a linear congruence, Park and Miller 1988, from memory). */
function seededLuck(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function countFrom(mean: number, luck: () => number, patch: number): number {
  return Math.floor(-Math.log(1 - luck()) * mean * patch + luck() * 0.8 * (mean > 0.3 ? 1 : 0));
}

export function fixtureSurvey(name: string, seed: number): SurveyInHand {
  const luck = seededLuck(seed);
  const survey: Survey = {
    id: newId(),
    name,
    protocolId: fixtureProtocol.id,
    starts: `${name}-03-09`,
    ends: `${name}-03-13`,
    purpose: 'To know whether the flats and the terrace can bear a season of harvest, and for which species.',
  };
  const stations: Station[] = [];
  const transects: Transect[] = [];
  const tallies: Tally[] = [];
  for (let i = 0; i < 18; i++) {
    const stratum = i < 10 ? 0 : i < 17 ? 1 : 2;
    const station = stationOf(survey, i, stratum, luck);
    stations.push(station);
    const patch = -Math.log(1 - luck()) * 1.1;
    for (let belt = 1; belt <= 6; belt++) {
      const transect = transectOf(station, i, belt);
      transects.push(transect);
      if (transect.status === 'lost' || (i === 12 && belt === 4)) continue;
      tallies.push(...talliesOf(transect, stratum, patch, luck));
    }
  }
  return joinSurvey(
    { survey, protocol: fixtureProtocol, strata, targets: fixtureSpecies },
    { stations, transects, tallies },
  );
}

function stationOf(survey: Survey, i: number, stratum: number, luck: () => number): Station {
  const unknown = { site: null, timeStart: null, timeEnd: null, endLatitudeDeg: null, endLongitudeDeg: null };
  const planned = { plannedLatitudeDeg: null, plannedLongitudeDeg: null, waypoint: null, bearingDeg: null };
  const sea = {
    depthM: null,
    night: false,
    visibilityM: null,
    tide: null,
    current: null,
    navigator: null,
    note: null,
  };
  const known = i !== 7;
  return {
    ...unknown,
    ...planned,
    ...sea,
    id: newId(),
    surveyId: survey.id,
    code: `S${i + 1}`,
    stratumId: strata[stratum]!.id,
    zone: i % 4 === 1 ? 'closed zone' : null,
    date: `${survey.name}-03-${String(9 + Math.floor(i / 4)).padStart(2, '0')}`,
    latitudeDeg: known ? -38.42 - 0.03 * stratum - luck() * 0.025 : null,
    longitudeDeg: known ? -120.31 + luck() * 0.09 : null,
    positionSource: known ? 'gps' : null,
    mode: stratum === 2 ? 'scuba' : 'snorkel',
    recorder: 'Recorder A',
    selection: 'random',
  };
}

function transectOf(station: Station, i: number, belt: number): Transect {
  const lost = (i === 4 && belt > 3) || (i === 14 && belt === 2);
  const short = i === 9 && belt === 6;
  return {
    id: newId(),
    stationId: station.id,
    code: String(belt),
    swim: 1,
    scope: [],
    lengthM: short ? 22 : 40,
    widthM: 2,
    depthStartM: null,
    depthEndM: null,
    cover: [],
    status: lost ? 'lost' : short ? 'partial' : 'done',
    reason: lost ? 'sheet washed away' : null,
    noneSeen: false,
    note: null,
  };
}

function talliesOf(transect: Transect, stratum: number, patch: number, luck: () => number): Tally[] {
  return fixtureSpecies.map((species) => {
    const mean = perBelt.get(species)?.[stratum] ?? 0;
    const count = mean === 0 ? 0 : countFrom(mean, luck, patch);
    return { id: newId(), transectId: transect.id, speciesId: species.id, count, lengths: [] };
  });
}

/** The answer of one species over some stations, by the plainest rules. */
function answerOf(inHand: SurveyInHand, species: Species, stratum: Stratum | null): DensityAnswer {
  const seen = observeSpecies(inHand, species).filter(
    (each) => stratum === null || each.station.stratum === stratum,
  );
  const counted = seen.filter((each) => each.state === 'observed');
  const animals = counted.reduce((sum, each) => sum + each.animals, 0);
  const searchedAreaM2 = counted.reduce((sum, each) => sum + each.searchedAreaCm2, 0) / 10_000;
  const areaHa = stratum?.areaHa ?? strata.reduce((sum, each) => sum + each.areaHa!, 0);
  const reason = heldReason(species, stratum, counted.length);
  const known = reason === null || reason.code === 'lone-station';
  const densityPerHa = known ? (animals * 10_000) / searchedAreaM2 : null;
  const spread = known && reason === null ? spreadOf(densityPerHa!, searchedAreaM2, counted.length) : null;
  const cautions: Reason[] = [];
  const positive = counted.filter((each) => each.animals > 0).length;
  if (spread !== null && positive > 0 && positive < 10)
    cautions.push({ code: 'few-positive-stations', parameters: { positive } });
  if (spread !== null && animals === 0) cautions.push(zeroBound(searchedAreaM2, counted.length));
  return {
    survey: inHand.survey.name,
    species: species.name,
    scope: { by: stratum === null ? 'survey' : 'stratum', name: stratum?.name ?? inHand.survey.name },
    stations: counted.length,
    stationsWithSpecies: positive,
    animals,
    searchedAreaM2,
    densityPerHa,
    standardErrorPerHa: spread?.standardErrorPerHa ?? null,
    degreesOfFreedom: spread === null ? null : counted.length - 1,
    intervalPerHa: spread?.intervalPerHa ?? null,
    intervalMethod: spread === null ? null : 'clumped',
    scatteredBoundPerHa: spread !== null && animals === 0 ? (2.9957 * 10_000) / searchedAreaM2 : null,
    areaHa,
    totalAnimals: densityPerHa === null ? null : densityPerHa * areaHa,
    totalStandardError: null,
    totalInterval:
      spread === null ? null : [spread.intervalPerHa[0] * areaHa, spread.intervalPerHa[1] * areaHa],
    meanWherePresentPerHa: null,
    prevalence: null,
    prevalenceInterval: null,
    estimators: [],
    belief: spread?.belief ?? null,
    reason,
    cautions,
    leftOut: leftOutOf(inHand, stratum),
  };
}

function heldReason(species: Species, stratum: Stratum | null, stations: number): Reason | null {
  const where = stratum?.name ?? 'the whole surveyed area';
  if (species === trochus && stratum !== terrace) {
    return {
      code: 'mixed-selection',
      parameters: {
        where,
        randomStations: 9,
        randomPerHa: 131,
        handPickedStations: 1,
        handPickedPerHa: 890,
        togetherPerHa: 207,
      },
    };
  }
  if (species === sandfish && stratum !== northFlat && stratum !== terrace) {
    return { code: 'unresolved-stations', parameters: { count: 1, stations: 'S13', where } };
  }
  return stations === 1 ? { code: 'lone-station', parameters: { strata: where } } : null;
}

/** The bound of METHODS c5 for clumped counts: (k / a) (0.05^(-1/(n k)) - 1). */
function clumpedBoundPerHa(searchedAreaM2: number, stations: number): number {
  const k = 0.2;
  const areaHa = searchedAreaM2 / stations / 10_000;
  return (k / areaHa) * (0.05 ** (-1 / (stations * k)) - 1);
}

function zeroBound(searchedAreaM2: number, stations: number): Reason {
  const scatteredPerHa = (2.9957 * 10_000) / searchedAreaM2;
  const clumpedPerHa = clumpedBoundPerHa(searchedAreaM2, stations);
  return {
    code: 'zero-bound',
    parameters: { scatteredPerHa, clumpedPerHa, k: 0.2, source: 'chosen', percent: 95 },
  };
}

function spreadOf(densityPerHa: number, searchedAreaM2: number, stations: number) {
  if (densityPerHa === 0) {
    const bound = clumpedBoundPerHa(searchedAreaM2, stations);
    const densities = Array.from({ length: 80 }, (_, i) => (bound * 2.2 * i) / 79);
    const k = 0.2;
    const areaHa = searchedAreaM2 / stations / 10_000;
    const weight = densities.map((density) => (1 + (density * areaHa) / k) ** (-stations * k));
    const belief: Belief = { densityPerHa: densities, weight };
    return { standardErrorPerHa: 0, intervalPerHa: [0, bound] as const, belief };
  }
  const animals = (densityPerHa * searchedAreaM2) / 10_000;
  const cv = Math.sqrt(1 / animals + 2 / stations);
  const sd = Math.sqrt(Math.log(1 + cv * cv));
  const densities = Array.from({ length: 121 }, (_, i) => densityPerHa * Math.exp(sd * (-4 + i / 15)));
  const weight = densities.map((density) => Math.exp(-0.5 * (Math.log(density / densityPerHa) / sd) ** 2));
  const ends = [densityPerHa * Math.exp(-2 * sd), densityPerHa * Math.exp(2 * sd)] as const;
  return {
    standardErrorPerHa: densityPerHa * cv,
    intervalPerHa: ends,
    belief: { densityPerHa: densities, weight },
  };
}

function leftOutOf(inHand: SurveyInHand, stratum: Stratum | null): LeftOut[] {
  return inHand.stations
    .filter((station) => stratum === null || station.stratum === stratum)
    .flatMap((station) =>
      station.transects
        .filter((transect) => transect.status === 'lost')
        .map(({ record }) => {
          const parameters = {
            station: station.record.code,
            transect: record.code,
            why: record.reason ?? '',
          };
          return {
            station: station.record.code,
            transect: record.code,
            reason: { code: 'left-out-lost', parameters },
          };
        }),
    );
}

function sizesOf(
  inHand: SurveyInHand,
  species: Species,
  meanMm: number,
  limitMm: number | null,
): SizesAnswer {
  const { animals } = answerOf(inHand, species, null);
  const from = Math.round(meanMm / 20) * 20 - 100;
  const shares = [1, 2, 5, 9, 14, 16, 12, 7, 3, 1].map((share) => share / 70);
  const classes = shares.map((share, i) => {
    return { fromMm: from + i * 20, toMm: from + (i + 1) * 20, share, animals: share * animals };
  });
  const share =
    limitMm === null
      ? 0
      : classes.filter((each) => each.fromMm >= limitMm).reduce((sum, each) => sum + each.share, 0);
  return {
    survey: inHand.survey.name,
    species: species.name,
    scope: { by: 'survey', name: inHand.survey.name },
    animals,
    measured: Math.round(animals * 0.4),
    meanLengthMm: meanMm,
    standardErrorMm: 6.2,
    shareAtLeast:
      limitMm === null
        ? null
        : { limitMm, share, standardError: 0.05, interval: [share * 0.7, Math.min(1, share * 1.3)] },
    quantilesMm: { p10: meanMm - 50, p25: meanMm - 24, p50: meanMm, p75: meanMm + 26, p90: meanMm + 52 },
    classes,
    borrowedAnimals: species === lollyfish ? 31 : 0,
    reason: null,
  };
}

function reportSurvey(inHand: SurveyInHand): ReportSurvey {
  const place = { survey: inHand.survey.name, station: 'S13', transect: '4', swim: 1 };
  return {
    inHand,
    targetsMade: 'listed',
    strata,
    densityBySurvey: fixtureSpecies.map((species) => answerOf(inHand, species, null)),
    densityByStratum: fixtureSpecies.flatMap((species) =>
      strata.map((stratum) => answerOf(inHand, species, stratum)),
    ),
    sizes: [
      sizesOf(inHand, lollyfish, 172, 150),
      sizesOf(inHand, greenfish, 181, 200),
      sizesOf(inHand, trochus, 95, null),
      {
        ...sizesOf(inHand, whiteTeatfish, 350, 350),
        measured: 0,
        meanLengthMm: null,
        standardErrorMm: null,
        shareAtLeast: null,
        quantilesMm: null,
        classes: [],
        reason: { code: 'none-measured', parameters: { species: whiteTeatfish.name } },
      },
    ],
    problems: [
      problemOf('transect-unresolved', place),
      problemOf('partial-without-reason', { ...place, station: 'S10', transect: '6' }, { value: 22 }),
      problemOf(
        'lone-station-in-stratum',
        { survey: inHand.survey.name },
        { parameters: { stratum: 'outer terrace' } },
      ),
      problemOf('selection-unknown', { survey: inHand.survey.name }, { parameters: { stations: 2, of: 18 } }),
    ],
  };
}

/** Two surveys, 2024 and 2026; the same bytes at every call. */
export function fixtureReport(): ReportInput {
  lastId = 1000;
  return {
    book: { name: 'Lorrin Islands', invented: true },
    decision: 'open the flats to a season of six weeks, or keep them closed for another year.',
    surveys: [reportSurvey(fixtureSurvey('2024', 411)), reportSurvey(fixtureSurvey('2026', 77))],
    comparisons: [{ from: '2024', to: '2026', aspects: [] }],
    species: fixtureSpecies,
    sizeLimits: [
      { id: newId(), speciesId: lollyfish.id, minimumMm: 150, source: 'invented for this demo' },
      { id: newId(), speciesId: greenfish.id, minimumMm: 200, source: 'invented for this demo' },
    ],
    settings: { positionDetail: 'rounded', confidence: 0.95, interval: 'clumped', seed: 1 },
    dataVersion: 'f3a1c09be274',
    programVersion: '0.1.0',
    generatedOn: '2026-04-02',
  };
}

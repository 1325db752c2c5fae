/** A small clean survey for the tests of the checks, as loose records that a test may spoil. */

import { seededRandom } from '../../maths/random.ts';
import type { Problem } from '../../survey/message.ts';
import { joinSurvey } from '../../survey/survey-in-hand.ts';
import type {
  MapAreaRecord,
  Plan,
  Protocol,
  Species,
  Station,
  Stratum,
  Survey,
  Tally,
  Transect,
} from '../../survey/words.ts';
import type { Check, CheckContext } from './check.ts';
import { type HandPicked, withPlannedPositions } from './ground.ts';

type Loose<Record> = { -readonly [Field in keyof Record]: Record[Field] };

export interface SurveySketch {
  readonly survey: Loose<Survey>;
  readonly protocol: Loose<Protocol>;
  readonly strata: Loose<Stratum>[];
  readonly species: Loose<Species>[];
  readonly stations: Loose<Station>[];
  readonly transects: Loose<Transect>[];
  readonly tallies: Loose<Tally>[];
  today: string | null;
  readonly maps: MapAreaRecord[];
  readonly plans: Plan[];
  readonly handPicked: HandPicked[];
}

const idOf = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
const surveyId = idOf(1);
const flatId = idOf(11);
const slopeId = idOf(12);
const sandfishId = idOf(21);
const lollyfishId = idOf(22);

/** Ten stations of three belts on a flat, two on a slope, worked by two teams on three days of September. */
export function cleanSketch(): SurveySketch {
  const stations = Array.from({ length: 12 }, (_, i) => stationOf(i));
  const transects = stations.flatMap((station, i) => [0, 1, 2].map((t) => transectOf(station, 3 * i + t, t)));
  return {
    survey: {
      id: surveyId,
      name: 'S',
      protocolId: idOf(2),
      starts: '2026-09-01',
      ends: '2026-09-12',
      purpose: null,
    },
    protocol: {
      id: idOf(2),
      name: 'belts',
      layout: 'series',
      transectsPerStation: 3,
      lengthM: 40,
      widthM: 2,
      gapM: 10,
      measureFirst: 5,
      lengthUnit: 'mm',
    },
    strata: [
      { id: flatId, name: 'flat', habitat: 'reef flat', areaHa: 120, depthMinM: 1, depthMaxM: 4 },
      { id: slopeId, name: 'slope', habitat: 'reef slope', areaHa: 60, depthMinM: 6, depthMaxM: 20 },
    ],
    species: [speciesOf(sandfishId, 'sandfish'), speciesOf(lollyfishId, 'lollyfish')],
    stations,
    transects,
    tallies: transects.map((transect, i) => tallyOf(transect, i)),
    today: '2026-10-01',
    maps: [],
    plans: [],
    handPicked: [],
  };
}

function stationOf(i: number): Station {
  const hour = 8 + 2 * (i % 4);
  const planned = { latitudeDeg: rounded(-17.75 - 0.003 * i), longitudeDeg: rounded(177.4 + 0.004 * i) };
  return {
    id: idOf(100 + i),
    surveyId,
    code: `S${i + 1}`,
    site: 'north',
    stratumId: i < 10 ? flatId : slopeId,
    zone: null,
    date: `2026-09-0${2 + Math.floor(i / 4)}`,
    timeStart: `${String(hour).padStart(2, '0')}:00`,
    timeEnd: `${String(hour + 1).padStart(2, '0')}:10`,
    latitudeDeg: rounded(planned.latitudeDeg + 0.0001),
    longitudeDeg: rounded(planned.longitudeDeg - 0.00003),
    endLatitudeDeg: rounded(planned.latitudeDeg + 0.0014),
    endLongitudeDeg: planned.longitudeDeg,
    plannedLatitudeDeg: planned.latitudeDeg,
    plannedLongitudeDeg: planned.longitudeDeg,
    positionSource: 'gps',
    waypoint: null,
    bearingDeg: null,
    depthM: i < 10 ? 2 : 9,
    mode: 'snorkel',
    night: false,
    visibilityM: null,
    tide: null,
    current: null,
    recorder: i % 2 === 0 ? 'Recorder A' : 'Recorder B',
    navigator: null,
    selection: 'random',
    note: null,
  };
}

function transectOf(station: Station, n: number, t: number): Transect {
  return {
    id: idOf(1000 + n),
    stationId: station.id,
    code: String(t + 1),
    swim: 1,
    scope: [],
    lengthM: 40,
    widthM: 2,
    depthStartM: null,
    depthEndM: null,
    cover: [
      { name: 'sand', percent: 60 },
      { name: 'rubble', percent: 40 },
    ],
    status: 'done',
    reason: null,
    noneSeen: false,
    note: null,
  };
}

function tallyOf(transect: Transect, n: number): Tally {
  const count = 2 + ((7 * n) % 5);
  const random = seededRandom(n);
  const lengths = lengthsOf(...Array.from({ length: Math.min(5, count) }, () => 140 + random.below(100)));
  return { id: idOf(5000 + n), transectId: transect.id, speciesId: sandfishId, count, lengths };
}

function speciesOf(id: string, name: string): Species {
  return {
    id,
    name,
    group: null,
    code: null,
    commonName: null,
    localName: null,
    aliases: [],
    minLengthMm: 60,
    maxLengthMm: 400,
    depthMinM: 0,
    depthMaxM: 12,
    habitats: ['reef flat', 'reef slope'],
  };
}

function rounded(degrees: number): number {
  return Number(degrees.toFixed(5));
}

/** What a check finds in the clean survey after it was spoilt. */
export function foundBy(check: Check, spoil: (sketch: SurveySketch) => void = () => {}): readonly Problem[] {
  const sketch = cleanSketch();
  spoil(sketch);
  return check.run(contextOf(sketch));
}

export function contextOf(sketch: SurveySketch): CheckContext {
  const { survey, protocol, strata, species, stations, transects, tallies } = sketch;
  const joined = joinSurvey({ survey, protocol, strata, targets: species }, { stations, transects, tallies });
  const ground = { maps: sketch.maps, plans: sketch.plans, handPicked: sketch.handPicked };
  return {
    ground,
    inHand: withPlannedPositions(joined, ground),
    targetList: { species, madeFrom: 'declared', undeclared: [] },
    species: new Map(species.map((one) => [one.id, one])),
    today: sketch.today,
  };
}

/** The tally, belt or station of a place, for a test to spoil. */
export function tallyAt(sketch: SurveySketch, station: string, transect: string): Loose<Tally> {
  const belt = transectAt(sketch, station, transect);
  return sketch.tallies.find((one) => one.transectId === belt.id)!;
}

export function transectAt(sketch: SurveySketch, station: string, transect: string): Loose<Transect> {
  const { id } = stationAt(sketch, station);
  return sketch.transects.find((one) => one.stationId === id && one.code === transect)!;
}

export function stationAt(sketch: SurveySketch, station: string): Loose<Station> {
  return sketch.stations.find((one) => one.code === station)!;
}

export const lengthsOf = (...lengthsMm: number[]) =>
  lengthsMm.map((lengthMm) => ({ lengthMm, n: 1, measure: null, photo: null }));

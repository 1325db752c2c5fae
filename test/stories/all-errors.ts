/** A small survey that carries an error of every kind, written straight into a book: an import would refuse some. */

import type { Change, Store } from '../../src/survey/store.ts';
import { areaRecord, planRecord } from '../../src/tasks/checks/map-sketch.ts';
import {
  cleanSketch,
  lengthsOf,
  type SurveySketch,
  stationAt,
  tallyAt,
  transectAt,
} from '../../src/tasks/checks/survey-sketch.ts';

const idOf = (n: number) => `00000000-0000-7000-9000-${String(n).padStart(12, '0')}`;

export async function writeAllErrors(store: Store): Promise<void> {
  const sketch = cleanSketch();
  moveToAfrica(sketch);
  spoilPositions(sketch);
  spoilTimes(sketch);
  spoilBelts(sketch);
  spoilCounts(sketch);
  spoilFrame(sketch);
  drawMap(sketch);
  const signature = { who: 'Recorder A', at: '2026-09-30T08:00:00Z', device: 'test laptop', why: 'test' };
  let made = 0;
  await store.apply(changesOf(sketch), signature, () => idOf(900 + made++));
}

/** At longitudes under 90 degrees the exchange of latitude and longitude cannot be refused on reading. */
function moveToAfrica({ stations }: SurveySketch): void {
  for (const one of stations) {
    for (const field of ['longitudeDeg', 'plannedLongitudeDeg', 'endLongitudeDeg'] as const) {
      one[field] = Number((one[field]! - 140).toFixed(5));
    }
  }
}

function spoilPositions(sketch: SurveySketch): void {
  const at = (code: string) => stationAt(sketch, code);
  at('S1').latitudeDeg = -17.57;
  at('S2').latitudeDeg! *= -1;
  Object.assign(at('S3'), { plannedLatitudeDeg: -17.755, latitudeDeg: -17.75833 });
  at('S4').latitudeDeg = -17.75342;
  const five = at('S5');
  Object.assign(five, { latitudeDeg: five.plannedLatitudeDeg, longitudeDeg: five.plannedLongitudeDeg });
  five.endLatitudeDeg = -17.4;
  Object.assign(at('S6'), { plannedLatitudeDeg: null, plannedLongitudeDeg: null });
  at('S6').latitudeDeg! -= 0.5;
  const seven = at('S7');
  Object.assign(seven, { latitudeDeg: seven.longitudeDeg, longitudeDeg: seven.latitudeDeg });
  const { latitudeDeg, longitudeDeg, plannedLatitudeDeg, plannedLongitudeDeg } = at('S9');
  Object.assign(at('S8'), { latitudeDeg, longitudeDeg, plannedLatitudeDeg, plannedLongitudeDeg });
  Object.assign(at('S12'), { latitudeDeg: -18.05, plannedLatitudeDeg: -18.05, timeStart: '11:20' });
}

function spoilTimes(sketch: SurveySketch): void {
  Object.assign(stationAt(sketch, 'S3'), { timeStart: '08:50', timeEnd: '09:40' });
  Object.assign(stationAt(sketch, 'S5'), { timeStart: '13:20', timeEnd: '02:10' });
  stationAt(sketch, 'S6').date = '2026-03-09';
  stationAt(sketch, 'S7').date = '2027-09-20';
  stationAt(sketch, 'S4').date = '2025-09-03';
}

function spoilBelts(sketch: SurveySketch): void {
  const belt = (station: string, transect: string, change: object) =>
    Object.assign(transectAt(sketch, station, transect), change);
  belt('S9', '1', { lengthM: 400 });
  belt('S9', '2', { widthM: 1 });
  belt('S9', '3', { lengthM: 25 });
  const extra = { id: idOf(1), code: '4', status: 'lost', noneSeen: true } as const;
  sketch.transects.push({ ...transectAt(sketch, 'S10', '3'), ...extra });
  forgetBelt(sketch, 'S11', '3');
  belt('S8', '1', { cover: [{ name: 'sand', percent: 80 }] });
  belt('S8', '2', { status: 'partial', lengthM: 20 });
  forgetCounts(sketch, 'S8', '3');
  forgetCounts(sketch, 'S2', '1');
  forgetCounts(sketch, 'S2', '2');
  belt('S2', '1', { status: 'lost' });
  belt('S2', '2', { status: 'lost' });
  belt('S2', '3', { status: 'partial', lengthM: 30, reason: 'sand' });
  forgetCounts(sketch, 'S5', '3');
  belt('S5', '3', { noneSeen: true, reason: 'sheet soaked' });
  for (const code of ['1', '2', '3']) forgetBelt(sketch, 'S7', code);
}

function spoilCounts(sketch: SurveySketch): void {
  for (const tally of sketch.tallies) Object.assign(tally, { count: 1, lengths: [] });
  const tally = (station: string, transect: string, count: number, ...lengthsMm: number[]) =>
    Object.assign(tallyAt(sketch, station, transect), { count, lengths: lengthsOf(...lengthsMm) });
  ['S3', 'S6', 'S10'].forEach((station, i) => {
    tally(station, '2', 5, 151 + i, 163, 178, 144, 209);
    tally(station, '3', 5, 171 + i, 193, 118, 164, 201);
  });
  tally('S6', '3', 5, 152, 163, 178, 144, 209);
  tally('S1', '1', 1, 18);
  tally('S1', '2', 1, 450);
  tally('S10', '1', 171);
  transectAt(sketch, 'S4', '1').status = 'lost';
  transectAt(sketch, 'S5', '1').noneSeen = true;
  tally('S5', '2', 1, 161, 172);
  const rounded = [{ lengthMm: 200, n: 120, measure: null, photo: null }];
  const lollyfish = { id: idOf(2), speciesId: sketch.species[1]!.id, count: 121, lengths: rounded };
  sketch.tallies.push({ ...lollyfish, transectId: transectAt(sketch, 'S9', '1').id });
}

function spoilFrame(sketch: SurveySketch): void {
  stationAt(sketch, 'S8').depthM = 21;
  stationAt(sketch, 'S12').stratumId = stationAt(sketch, 'S1').stratumId;
  stationAt(sketch, 'S9').selection = 'hand-picked';
  stationAt(sketch, 'S11').selection = null;
  for (const one of sketch.species) one.habitats = ['reef slope'];
  sketch.strata[1]!.areaHa = null;
}

/** S10 a few metres beyond the flat, S11 on an islet, S1 and S10 said to be in a zone that ends north of S2. */
function drawMap(sketch: SurveySketch): void {
  sketch.maps.push(
    areaRecord('flat', 'stratum', [37.39, -17.7768, 37.438, -17.74]),
    areaRecord('slope', 'stratum', [37.43801, -17.8, 37.46, -17.76]),
    areaRecord('closed', 'zone', [37.39, -17.7525, 37.46, -17.74]),
    areaRecord('islet', 'mask', [37.438, -17.782, 37.442, -17.777], 'land'),
  );
  for (const code of ['S1', 'S10']) stationAt(sketch, code).zone = 'closed';
}

function forgetBelt(sketch: SurveySketch, station: string, transect: string): void {
  forgetCounts(sketch, station, transect);
  sketch.transects.splice(sketch.transects.indexOf(transectAt(sketch, station, transect)), 1);
}

function forgetCounts(sketch: SurveySketch, station: string, transect: string): void {
  sketch.tallies.splice(sketch.tallies.indexOf(tallyAt(sketch, station, transect)), 1);
}

/** All records, and a second survey for which nobody wrote down what was looked for. */
function changesOf(sketch: SurveySketch): Change[] {
  const { survey, protocol, strata, species, stations, transects, tallies } = sketch;
  const second = { ...survey, id: idOf(3), name: 'T' };
  const station = { ...stationAt(sketch, 'S10'), id: idOf(4), surveyId: second.id };
  const target = { id: idOf(5), surveyId: survey.id, speciesId: species[0]!.id };
  const asPicked = { role: 'spare', selection: 'hand-picked' };
  // Of the second survey, that has one station, the plan still waits for S2.
  const plan = planRecord({ ...sketch, survey: second }, (_, i) => (i === 1 ? {} : asPicked));
  const change = (kind: Change['kind'], record: { readonly id: string }) =>
    ({ kind, recordId: record.id, after: record }) as Change;
  return [
    change('protocol', protocol),
    change('survey', survey),
    change('survey', second),
    change('target', target),
    change('plan', plan),
    ...sketch.maps.map((one) => change('mapArea', one)),
    ...strata.map((one) => change('stratum', one)),
    ...species.map((one) => change('species', one)),
    ...[...stations, station].map((one) => change('station', one)),
    ...transects.map((one) => change('transect', one)),
    ...tallies.map((one) => change('tally', one)),
  ];
}

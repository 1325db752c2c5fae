/** Small invented records for the store contract: a survey with one of every kind, and random acts upon it. */

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import type { Change, Signature } from '../src/survey/store.ts';
import { unknownStation } from '../src/survey/unknown-station.ts';
import { type RecordKind, type RecordOf, recordKinds } from '../src/survey/words.ts';

/** Identities that count up: UUIDv7 in form, and the same in every run. */
export function identityFrom(block: number): () => string {
  let n = 0;
  const head = block.toString(16).padStart(8, '0');
  return () => `${head}-0000-7000-8000-${(n++).toString(16).padStart(12, '0')}`;
}

export function sign(why: string): Signature {
  return { who: 'Recorder A', at: '2025-03-01T18:30:00.000Z', device: 'laptop 1', why };
}

const nextId = identityFrom(2);

/** A whole record, with only what matters to the test given. */
export function record<K extends RecordKind>(kind: K, given: Partial<RecordOf<K>>): RecordOf<K> {
  return { id: nextId(), ...blanks[kind], ...given } as RecordOf<K>;
}

export interface SmallSurvey {
  readonly surveyId: string;
  readonly changes: readonly Change[];
  of<K extends RecordKind>(kind: K): RecordOf<K>[];
}

/** Two stations, three transects, four tallies; a second survey shares the frame of the first. */
export function smallSurvey(number = 1, first?: SmallSurvey): SmallSurvey {
  const changes: Change[] = [];
  const add = <K extends RecordKind>(kind: K, given: Partial<RecordOf<K>>): RecordOf<K> => {
    const after = record(kind, given);
    changes.push({ kind, recordId: after.id, after } as unknown as Change);
    return after;
  };
  const [stratum, species, other] = first
    ? [first.of('stratum')[0]!, ...first.of('species')]
    : [
        add('stratum', { name: 'North reef', habitat: 'reef flat', areaHa: 12.5 }),
        add('species', { name: 'Species A', aliases: ['A', 'the "long" one'], habitats: ['sand'] }),
        add('species', { name: 'Species B', group: 'sea cucumbers', minLengthMm: 20 }),
      ];
  const protocol = add('protocol', { name: `protocol ${number}`, layout: 'series', lengthM: 40, widthM: 2 });
  const survey = add('survey', { name: `survey ${number}`, protocolId: protocol.id, starts: '2025-03-01' });
  const inSurvey = { surveyId: survey.id, stratumId: stratum!.id };
  const s1 = add('station', {
    ...inSurvey,
    code: 'S1',
    latitudeDeg: -20.5,
    longitudeDeg: 57.25,
    night: true,
  });
  const s2 = add('station', { ...inSurvey, code: 'S2', night: false, mode: 'scuba', selection: 'random' });
  const t1 = add('transect', { stationId: s1.id, code: 'T1', cover: [{ name: 'sand', percent: 62.5 }] });
  const t2 = add('transect', { stationId: s1.id, code: 'T1', swim: 2, scope: ['Species A'] });
  const t3 = add('transect', {
    stationId: s2.id,
    code: 'T1',
    status: 'partial',
    lengthM: 12.3,
    reason: 'current',
  });
  const long = { lengthMm: 182.5, n: 2, measure: null, photo: null };
  const photographed = { lengthMm: 90, n: 1, measure: 'body relaxed', photo: 'photos/é "1".jpg' } as const;
  add('tally', { transectId: t1.id, speciesId: species!.id, count: 7, lengths: [long, photographed] });
  add('tally', { transectId: t1.id, speciesId: other!.id, count: 0 });
  add('tally', { transectId: t2.id, speciesId: species!.id, count: 6, lengths: [long] });
  add('tally', { transectId: t3.id, speciesId: other!.id, count: 3 });
  add('weight', { surveyId: survey.id, speciesId: species!.id, state: 'live' });
  add('target', { surveyId: survey.id, speciesId: species!.id });
  add('mapping', { name: `mapping ${number}`, content: '{"files": []}\n' });
  add('answer', { problemKey: `station-unresolved ${number}`, value: number % 2 === 0 ? null : '41' });
  add('mapArea', { name: `area ${number}`, role: 'stratum' });
  add('plan', { name: `plan ${number}` });
  add('day', { surveyId: survey.id });
  add('photo', { sha256: checksumOf(pictureOf(number)), surveyId: survey.id, stationId: s1.id });
  if (!first)
    add('ownValue', { speciesId: species!.id, what: 'size-at-maturity', source: 'our own dissections' });
  if (!first) add('sizeLimit', { speciesId: species!.id, minimumMm: 200, source: 'a village rule' });
  const of = <K extends RecordKind>(kind: K) =>
    changes.filter((change) => change.kind === kind).map((change) => change.after as RecordOf<K>);
  return { surveyId: survey.id, changes, of };
}

/** The bytes behind the photo of a small survey. */
export function pictureOf(number: number): string {
  return `picture ${number}`;
}

export function checksumOf(bytes: string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

const corners = [
  { latitudeDeg: -20, longitudeDeg: 179.9 },
  { latitudeDeg: -20.1, longitudeDeg: -179.9 },
  { latitudeDeg: -20.1, longitudeDeg: 179.9 },
  { latitudeDeg: -20, longitudeDeg: 179.9 },
];

const plan: RecordOf<'plan'>['content'] = {
  survey: null,
  decision: 'open the flat again?',
  protocol: null,
  seed: 7,
  method: 'pivotal',
  minimumSpacingM: null,
  drawnOn: '2025-02-02',
  drawnBy: 'Officer A',
  strata: [{ name: 'North reef', areaHa: 12.5, maskedHa: 0, stations: 1, spares: 1 }],
  stations: [
    {
      code: 'N1',
      stratum: 'North reef',
      position: corners[0]!,
      selection: 'random',
      role: 'planned',
      replaces: null,
      belts: [],
      shareInside: null,
    },
  ],
  passedOver: [],
  replacements: [],
  laid: null,
};

/** The blank of each kind: unknown everywhere that unknown is allowed. */
const blanks: { readonly [K in RecordKind]: Partial<RecordOf<K>> } = {
  stratum: { habitat: null, areaHa: null, depthMinM: null, depthMaxM: null },
  protocol: {
    layout: null,
    transectsPerStation: null,
    lengthM: null,
    widthM: null,
    gapM: null,
    measureFirst: null,
    lengthUnit: null,
  },
  species: {
    group: null,
    code: null,
    commonName: null,
    localName: null,
    aliases: [],
    minLengthMm: null,
    maxLengthMm: null,
    depthMinM: null,
    depthMaxM: null,
    habitats: [],
  },
  survey: { protocolId: null, starts: null, ends: null, purpose: null },
  station: { ...unknownStation, date: '2025-03-01', timeStart: '09:05' },
  transect: {
    swim: 1,
    scope: [],
    lengthM: 40,
    widthM: 2,
    depthStartM: null,
    depthEndM: null,
    cover: [],
    status: 'done',
    reason: null,
    noneSeen: false,
    note: null,
  },
  tally: { count: 0, lengths: [] },
  weight: { stationCode: null, ordinal: 1, lengthMm: 210, weightG: 350.5, state: null, drainMinutes: null },
  target: {},
  sizeLimit: {},
  mapping: {},
  mapArea: {
    content: {
      area: { parts: [{ outer: corners, holes: [corners] }] },
      frozenOn: '2025-02-01',
      reason: null,
      source: 'reef "1".geojson',
    },
  },
  plan: { content: plan },
  ownValue: {
    content: { what: 'size-at-maturity', lengthMm: 190, lengthMeasure: null, place: null },
  },
  day: {
    date: '2025-03-01',
    content: {
      sea: 'slight',
      visibilityM: 12.5,
      habitat: null,
      notes: 'wind rose "after" noon',
      incidents: [{ time: '11:40', what: 'anchor dragged' }],
      fuelUsedL: 41,
      dives: [{ diver: 'Diver 1', entry: '09:05', exit: '10:10', maxDepthM: 9.4 }],
      limits: { divesPerDay: 3, minutesPerDay: null, surfaceIntervalMin: 60, maxDepthM: 30 },
    },
  },
  photo: {
    surveyId: null,
    stationId: null,
    content: {
      name: 'IMG "1".jpg',
      bytes: 2_400_000,
      type: 'image/jpeg',
      takenAt: '2025-03-01T16:20:05',
      timeFrom: 'EXIF',
      clockOffset: '+12:00',
      orientation: 6,
      matchedBy: 'by hand',
      note: null,
    },
  },
  answer: {
    code: 'station-unresolved',
    value: null,
    answer: 'none seen',
    who: 'Recorder A',
    why: 'sheet found',
    answeredAt: '2026-10-01T08:00:00Z',
  },
};

/**
 * Any sequence of acts upon a small survey: records put in, corrected, renamed, withdrawn and brought back,
 * in any order and often wrongly.
 */
export const anyActs: fc.Arbitrary<Change[][]> = fc
  .array(
    fc.array(fc.tuple(fc.nat(), fc.constantFrom('put', 'correct', 'withdraw'), fc.nat(4)), { maxLength: 8 }),
    {
      minLength: 1,
      maxLength: 8,
    },
  )
  .map((acts) => {
    const { changes } = smallSurvey();
    const random = acts.map((act) =>
      act.map(([which, what, n]) => randomChange(changes[which % changes.length]!, what, n)),
    );
    return [[...changes], ...random];
  });

function randomChange(original: Change, what: string, n: number): Change {
  if (what === 'withdraw') return { ...original, after: null } as Change;
  if (what === 'put') return original;
  return { ...original, after: { ...original.after, ...corrections[original.kind](n) } } as Change;
}

const corrections: { readonly [K in RecordKind]: (n: number) => Partial<RecordOf<K>> } = {
  stratum: (n) => ({ areaHa: n + 0.1 }),
  protocol: (n) => ({ gapM: n }),
  species: (n) => ({ name: `Species ${'ABCDE'[n]}` }),
  survey: (n) => ({ purpose: `purpose ${n}` }),
  station: (n) => ({ code: `S${n}`, depthM: n / 3 }),
  transect: (n) => ({ swim: n + 1, scope: ['Species A', 'Species B'].slice(n % 3) }),
  tally: (n) => ({ count: n, lengths: [{ lengthMm: n + 0.1, n: 1, measure: null, photo: null }] }),
  weight: (n) => ({ weightG: n + 1 }),
  target: () => ({}),
  sizeLimit: (n) => ({ minimumMm: n + 1 }),
  mapping: (n) => ({ content: `${n}` }),
  mapArea: (n) => ({ name: `area ${n}` }),
  plan: (n) => ({ content: { ...plan, seed: n } }),
  ownValue: (n) => ({
    content: { what: 'size-at-maturity', lengthMm: n + 1, lengthMeasure: null, place: null },
  }),
  day: (n) => ({ date: `2025-03-0${n + 1}` }),
  photo: (n) => ({ stationId: null, sha256: `${n}`.padStart(64, 'b') }),
  answer: (n) => ({ value: `${n}` }),
};

/** Every kind is in the small survey, or the contract would look away from one. */
export function kindsMissing(): RecordKind[] {
  const { changes } = smallSurvey();
  return recordKinds.filter((kind) => !changes.some((change) => change.kind === kind));
}

/**
 * The records kept of one survey as a store, so that every task runs over them as it does over the book. What waits to
 * be sent is laid over them by the same acts that will be sent; nothing of it is written anywhere.
 */

import type { Change, Store, SurveyRows } from '../../survey/store.ts';
import { unknownStation } from '../../survey/unknown-station.ts';
import type { RecordKind, RecordOf, Station, Tally, Transect } from '../../survey/words.ts';
import type { EarlierSurvey, SurveyRecords } from './survey-records-schemas.ts';

/** Only what the tasks that read one survey ask for; anything else is a mistake of ours. */
export function keptStore(records: SurveyRecords): Store {
  const kinds = recordsByKind(records);
  const of = <K extends RecordKind>(kind: K) =>
    inOrder((kinds.get(kind)?.values() ?? []) as Iterable<RecordOf<K>>);
  const ownRows = (): SurveyRows => ({
    stations: of('station').filter((one) => one.surveyId === records.surveyId),
    transects: of('transect'),
    tallies: of('tally'),
  });
  return {
    info: async () => records.book,
    all: async (kind) => of(kind),
    surveyRecords: async (surveyId, { lengths } = { lengths: true }) => {
      if (surveyId !== records.surveyId) return earlierRows(records, surveyId);
      const rows = ownRows();
      return lengths ? rows : { ...rows, tallies: rows.tallies.map((one) => ({ ...one, lengths: [] })) };
    },
    speciesSeen: async () =>
      new Map([
        ...records.seenElsewhere.map((one) => [one.surveyId, new Set(one.speciesIds)] as const),
        [records.surveyId, new Set(of('tally').map((one) => one.speciesId))],
      ]),
    apply: async (changes) => {
      for (const change of changes) lay(kinds, change);
    },
    dataVersion: async () => records.dataVersion,
    revisions: () => notKept(),
    asOf: () => notKept(),
    rebuild: () => notKept(),
    close: async () => {},
  };
}

function notKept(): never {
  throw new Error('the records of one survey hold no history');
}

type Kinds = Map<RecordKind, Map<string, RecordOf<RecordKind>>>;

function recordsByKind(records: SurveyRecords): Kinds {
  const lists: readonly (readonly [RecordKind, readonly RecordOf<RecordKind>[]])[] = [
    ['stratum', records.strata],
    ['protocol', records.protocols],
    ['species', records.species],
    ['survey', records.surveys],
    ['target', records.targets],
    ['sizeLimit', records.limits],
    ['answer', records.answers],
    ['mapArea', records.maps],
    ['plan', records.plans],
    ['station', [...records.stations, ...records.handPicked]],
    ['transect', records.transects],
    ['tally', records.tallies],
  ];
  return new Map(lists.map(([kind, list]) => [kind, new Map(list.map((one) => [one.id, one]))]));
}

function lay(kinds: Kinds, { kind, recordId, after }: Change): void {
  if (after === null) kinds.get(kind)?.delete(recordId);
  else kinds.get(kind)?.set(recordId, after);
}

/** As the book gives them: in the order of identity. */
function inOrder<One extends { readonly id: string }>(records: Iterable<One>): One[] {
  return [...records].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Stations of an earlier survey, each with a made-up code that keeps its place; none of a survey worked otherwise. */
function earlierRows({ earlier, species }: SurveyRecords, surveyId: string): SurveyRows {
  const found = earlier.find((one) => one.surveyId === surveyId);
  const rows = { stations: [] as Station[], transects: [] as Transect[], tallies: [] as Tally[] };
  found?.stations.forEach((station, i) => {
    const stationId = `${surveyId}/${i + 1}`;
    const code = String(i + 1);
    rows.stations.push({
      ...unknownStation,
      date: '1970-01-01',
      id: stationId,
      surveyId,
      code,
      stratumId: station.stratumId,
    });
    station.belts.forEach((belt, j) => {
      const id = `${stationId}/${j + 1}`;
      rows.transects.push(transectOf(belt, { id, stationId, code: String(j + 1) }));
      rows.tallies.push(...talliesOf(belt, id, species));
    });
  });
  return rows;
}

type Belt = EarlierSurvey['stations'][number]['belts'][number];

function transectOf(
  { status, lengthM, widthM, swim = 1, scope = [], noneSeen }: Belt,
  place: Pick<Transect, 'id' | 'stationId' | 'code'>,
): Transect {
  const searched = { status, lengthM, widthM, swim, scope, noneSeen: noneSeen === true };
  return { ...blankTransect, ...place, ...searched };
}

function talliesOf({ counts }: Belt, transectId: string, species: SurveyRecords['species']): Tally[] {
  const tallies: Tally[] = [];
  for (let i = 0; i + 1 < counts.length; i += 2) {
    const speciesId = species[counts[i]!]?.id;
    if (speciesId === undefined) throw new Error('a count of an earlier survey names no species');
    tallies.push({ id: `${transectId}/${i}`, transectId, speciesId, count: counts[i + 1]!, lengths: [] });
  }
  return tallies;
}

const blankTransect = { depthStartM: null, depthEndM: null, cover: [], reason: null, note: null };

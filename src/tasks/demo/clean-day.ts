/** A clean field day, cut from the demo's last two surveys: two teams, fourteen stations, one date. */

import type {
  ProtocolRow,
  SpeciesRow,
  StationRow,
  StratumRow,
  SurveyRow,
  TableRows,
  TallyRow,
  TargetRow,
  TransectRow,
} from '../../survey/table-rows.ts';
import { demoRows } from './demo-rows.ts';

type Writable<Row> = { -readonly [Field in keyof Row]: Row[Field] };

/** Rows that may still be spoiled. */
export interface Day {
  readonly strata: Writable<StratumRow>[];
  readonly protocols: Writable<ProtocolRow>[];
  readonly surveys: Writable<SurveyRow>[];
  readonly species: Writable<SpeciesRow>[];
  readonly targets: Writable<TargetRow>[];
  readonly stations: Writable<StationRow>[];
  readonly transects: Writable<TransectRow>[];
  readonly tallies: Writable<TallyRow>[];
}

const sources = ['Lorrin 2026', 'Lorrin 2024'];
const survey = 'Field day';
const date = '2026-09-02';

export function cleanDay(seed: number): Day {
  const demo = demoRows(seed);
  const codes = dayStations(demo);
  const nameOf = new Map(demo.species.map(({ row }) => [row.name, row.commonName ?? row.name]));
  const codeOf = (row: { readonly survey: string; readonly station: string }) =>
    codes.get(placeKey(row.survey, row.station));
  return {
    strata: demo.strata.map(({ row }) => ({ ...row })),
    protocols: demo.protocols.map(({ row }) => ({ ...row })),
    species: demo.species.map(({ row }) => ({ ...row })),
    surveys: [
      {
        name: survey,
        protocol: demo.protocols[0]!.row.name,
        starts: date,
        ends: date,
        purpose: 'practice: one messy field day, all of it invented',
      },
    ],
    targets: demo.species.map(({ row }) => ({ survey, species: row.name })),
    stations: demo.stations.flatMap(({ row }) => {
      const place = codes.get(placeKey(row.survey, row.code));
      return place === undefined ? [] : [dayStation(row, place)];
    }),
    transects: demo.transects.flatMap(({ row }) => {
      const place = row.swim === 1 ? codeOf(row) : undefined;
      return place === undefined ? [] : [{ ...row, survey, station: place.code }];
    }),
    tallies: demo.tallies
      .flatMap(({ row }) => {
        const place = row.swim === 1 ? codeOf(row) : undefined;
        return place === undefined
          ? []
          : [{ ...row, survey, station: place.code, species: nameOf.get(row.species)! }];
      })
      .map(asTyped),
  };
}

/** Nobody types a name alike all day. */
function asTyped(row: Writable<TallyRow>, i: number): Writable<TallyRow> {
  if (i % 7 === 3) return { ...row, species: row.species.toUpperCase() };
  return i % 7 === 5 ? { ...row, species: row.species.charAt(0).toUpperCase() + row.species.slice(1) } : row;
}

interface DayStation {
  readonly code: string;
  readonly team: 'A' | 'B';
  readonly startsAtMinutes: number;
}

/** Ten stations of the dense flat, three of the seagrass and one of the terrace; two teams take turns. */
function dayStations(demo: TableRows): ReadonlyMap<string, DayStation> {
  const left = new Map([
    ['south flat', 10],
    ['lagoon seagrass', 3],
    ['outer terrace', 1],
  ]);
  const codes = new Map<string, DayStation>();
  const chosen = sources.flatMap((source) => demo.stations.filter(({ row }) => row.survey === source));
  for (const { row } of chosen) {
    const wanted = left.get(row.stratum!) ?? 0;
    // A fixed station is in both surveys; a day visits it once.
    const again = row.survey !== sources[0] && row.selection === 'fixed';
    if (wanted === 0 || again || hasLostBelts(demo, row)) continue;
    left.set(row.stratum!, wanted - 1);
    const n = codes.size;
    const startsAtMinutes = 7 * 60 + Math.floor(n / 2) * 60;
    codes.set(placeKey(row.survey, row.code), {
      code: `D${n + 1}`,
      team: n % 2 === 0 ? 'A' : 'B',
      startsAtMinutes,
    });
  }
  return codes;
}

function placeKey(from: string, station: string): string {
  return JSON.stringify([from, station]);
}

function hasLostBelts(demo: TableRows, place: StationRow): boolean {
  return demo.transects.some(
    ({ row }) =>
      row.survey === place.survey &&
      row.station === place.code &&
      (row.status === 'lost' || row.status === 'not done'),
  );
}

function dayStation(row: StationRow, { code, team, startsAtMinutes }: DayStation): Writable<StationRow> {
  return {
    ...row,
    survey,
    code,
    date,
    timeStart: clock(startsAtMinutes),
    timeEnd: clock(startsAtMinutes + 45),
    recorder: `Recorder ${team}`,
    navigator: `Navigator ${team}`,
    selection: 'random',
  };
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

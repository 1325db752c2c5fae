/** What changed, by whom, when, why and on which device: of one record, or of what some names point at. */

import { Failure } from '../survey/failure.ts';
import type { Revision, Store } from '../survey/store.ts';
import type { RecordKind, Species, Station, Transect } from '../survey/words.ts';
import {
  allNamesOf,
  type Cell,
  cellsOfRecord,
  type NamesInForce,
  type NamesOfRecord,
  namesOfRecord,
  tableOfKind,
} from './record-in-words.ts';

export interface HistoryRequest {
  readonly survey: string | null;
  readonly station: string | null;
  readonly transect: string | null;
  readonly swim: number | null;
  /** By any of its names. */
  readonly species: string | null;
  readonly recordId: string | null;
  /** The newest so many changed records. */
  readonly limit: number;
}

export interface HistoryRow {
  readonly at: string;
  readonly who: string;
  readonly device: string;
  readonly why: string;
  readonly what: 'entered' | 'changed' | 'withdrawn';
  /** Name of the import table; `mappings` and `answers` have none. */
  readonly table: string;
  readonly record: NamesOfRecord;
  readonly recordId: string;
  readonly changes: readonly CellChange[];
  /** Signed earlier than a change before it: a clock had jumped back. The order is that of the writing. */
  readonly clockBehind: boolean;
}

export interface CellChange {
  readonly column: string;
  readonly before: Cell;
  readonly after: Cell;
}

export interface History {
  readonly rows: readonly HistoryRow[];
  /** Older changes that match and were left out for the limit. */
  readonly leftOut: number;
  readonly dataVersion: string;
}

/**
 * Newest last. Records are known by the names they have now (withdrawn ones by their last), so a station that was
 * given another code is found with all its past. Throws a Failure when nothing matches. One pass over the history.
 */
export async function history(store: Store, request: HistoryRequest): Promise<History> {
  const known = await namesInForce(store);
  const matches = matcher(request, known);
  const kept: { revision: Revision; clockBehind: boolean }[] = [];
  let leftOut = 0;
  let latest = '';
  for await (const revision of store.revisions(request.recordId ?? undefined, kindsAsked(request))) {
    const { at } = revision.signature;
    const clockBehind = at < latest;
    if (!clockBehind) latest = at;
    if (!matches(revision)) continue;
    kept.push({ revision, clockBehind });
    // Cut in portions: one at a time would move the whole list for each revision.
    if (kept.length < 2 * request.limit) continue;
    leftOut += kept.length - request.limit;
    kept.splice(0, kept.length - request.limit);
  }
  leftOut += Math.max(0, kept.length - request.limit);
  if (kept.length === 0) throw new Failure('nothing-in-history', { asked: askedInWords(request) });
  const rows = kept.slice(-request.limit).map(({ revision, clockBehind }) => ({
    ...historyRow(revision, known),
    clockBehind,
  }));
  return { rows, leftOut, dataVersion: await store.dataVersion() };
}

const namingKinds = ['stratum', 'protocol', 'species', 'survey', 'station', 'transect'] as const;

interface Known extends NamesInForce {
  readonly species: ReadonlyMap<string, Species>;
}

/** The last word on every record that gives a name to others, the withdrawn ones too. */
async function namesInForce(store: Store): Promise<Known> {
  const names = new Map<string, string>();
  const stations = new Map<string, Station>();
  const transects = new Map<string, Transect>();
  const species = new Map<string, Species>();
  for await (const { kind, recordId, before, after } of store.revisions(undefined, namingKinds)) {
    const last = after ?? before;
    if (kind === 'station') stations.set(recordId, last as Station);
    else if (kind === 'transect') transects.set(recordId, last as Transect);
    else names.set(recordId, (last as { readonly name: string }).name);
    if (kind === 'species') species.set(recordId, last as Species);
  }
  return { names, stations, transects, species };
}

/** The kinds that can bear the names asked for: most of a history need not be read for most questions. */
function kindsAsked({ survey, station, transect, swim, species }: HistoryRequest): RecordKind[] | undefined {
  const asked = Object.entries({ survey, station, transect, swim, species })
    .filter(([, name]) => name !== null)
    .map(([name]) => name);
  if (asked.length === 0) return undefined;
  return (Object.keys(namesBorne) as RecordKind[]).filter((kind) =>
    asked.every((name) => namesBorne[kind].includes(name)),
  );
}

const namesBorne: Readonly<Record<RecordKind, readonly string[]>> = {
  stratum: [],
  protocol: [],
  species: ['species'],
  survey: ['survey'],
  station: ['survey', 'station'],
  transect: ['survey', 'station', 'transect', 'swim'],
  tally: ['survey', 'station', 'transect', 'swim', 'species'],
  weight: ['survey', 'station', 'species'],
  target: ['survey', 'species'],
  sizeLimit: ['species'],
  mapping: [],
  mapArea: [],
  plan: [],
  ownValue: ['species'],
  day: ['survey'],
  photo: ['survey', 'station'],
  answer: ['survey', 'station', 'transect', 'swim', 'species'],
};

function matcher(request: HistoryRequest, known: Known): (revision: Revision) => boolean {
  const wanted = Object.entries({
    survey: request.survey,
    station: request.station,
    transect: request.transect,
    swim: request.swim,
  }).filter(([, name]) => name !== null);
  const species = request.species === null ? null : speciesWanted(request.species, known);
  if (wanted.length === 0 && species === null) return () => true;
  return ({ kind, before, after }) => {
    const names = namesOfRecord(kind, (after ?? before)!, known);
    const fits = wanted.every(([name, value]) => alike(names[name], value));
    return fits && (species === null || species.has(String(names.species).toLowerCase()));
  };
}

/** All names that species have borne which answer to the name asked for. */
function speciesWanted(asked: string, known: Known): ReadonlySet<string> {
  const wanted = asked.trim().toLowerCase();
  const found = [...known.species.values()].filter((one) => allNamesOf(one).includes(wanted));
  return new Set(found.map((one) => one.name.toLowerCase()));
}

function alike(name: string | number | undefined, wanted: string | number | null): boolean {
  return name !== undefined && String(name).toLowerCase() === String(wanted).trim().toLowerCase();
}

function historyRow(revision: Revision, known: Known): Omit<HistoryRow, 'clockBehind'> {
  const { kind, recordId, before, after, signature } = revision;
  const { at, who, device, why } = signature;
  const record = namesOfRecord(kind, (after ?? before)!, known);
  const what = before === null ? 'entered' : after === null ? 'withdrawn' : 'changed';
  const changes = changesOf(revision, record, known);
  return { at, who, device, why, what, table: tableOfKind[kind], record, recordId, changes };
}

function changesOf(
  { kind, before, after }: Revision,
  record: NamesOfRecord,
  known: Known,
): readonly CellChange[] {
  const was = before === null ? null : cellsOfRecord(kind, before, known);
  const is = after === null ? null : cellsOfRecord(kind, after, known);
  return (
    [...(is ?? was)!.keys()]
      .map((column) => ({ column, before: was?.get(column) ?? null, after: is?.get(column) ?? null }))
      .filter((change) => change.before !== change.after)
      // The names of a record that comes or goes stand in `record` already.
      .filter(({ column }) => (was !== null && is !== null) || !(column in record))
  );
}

function askedInWords({ recordId, survey, station, transect, swim, species }: HistoryRequest): string {
  const asked = Object.entries({ record: recordId, survey, station, transect, swim, species })
    .filter(([, name]) => name !== null)
    .map(([word, name]) => `${word} “${name}”`);
  return asked.length === 0 ? 'an empty book' : asked.join(', ');
}

/**
 * Brings the areas of a map file into the book: every area is checked, the strata get their hectares with the masks
 * taken off, and all of it is one act. A stop anywhere means nothing is written.
 */

import { Failure } from '../../survey/failure.ts';
import type { MapFinding } from '../../survey/map-area.ts';
import type { Problem } from '../../survey/message.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import type { Change, Signature, Store } from '../../survey/store.ts';
import type { MapAreaRecord, Stratum } from '../../survey/words.ts';
import { type BookGround, groundOf, measuredStrata } from './book-ground.ts';
import { drawnLate } from './drawn-late.ts';
import { mapProblems } from './map-problems.ts';
import { type MapFile, type NewArea, newAreas } from './new-areas.ts';
import { isSameGround, recordedArea } from './recorded-ground.ts';
import { allMasked, frozenChanges, nearNames, typedAreas } from './strata-questions.ts';
import { rowsOf, type StrataRow } from './strata-rows.ts';

export interface BringRequest {
  /** Null to freeze what is there, without a new map. */
  readonly file: MapFile | null;
  /** Name of an area to take out of the book; null for none. A stratum keeps its hectares, without a map. */
  readonly withdraw: string | null;
  /** What the area to take out is; null where its name says it. */
  readonly withdrawRole: MapAreaRecord['role'] | null;
  /** What the reader of the file met. */
  readonly readFindings: readonly MapFinding[];
  /** The day to freeze the strata of the file on; null leaves them as they are. */
  readonly freezeOn: string | null;
  /** Who lets a frozen stratum change, and why; null when nobody does. */
  readonly acceptance: { readonly who: string; readonly why: string } | null;
  readonly dryRun: boolean;
  /** ISO day. */
  readonly today: string;
}

export interface BringTools {
  readonly store: Store;
  readonly signature: Signature;
  readonly newId: () => string;
}

export interface BringResult {
  /** As the book stands afterwards, or would stand after a dry run; after a stop as it stands. */
  readonly rows: readonly StrataRow[];
  readonly problems: readonly Problem[];
  readonly written: boolean;
  /** Names of strata that the book did not have. */
  readonly newStrata: readonly string[];
  /** Masks that nobody gave a reason for; when there are any, nothing else was looked at. */
  readonly masksWithoutReason: number;
}

export async function bringStrata(request: BringRequest, tools: BringTools): Promise<BringResult> {
  const { store } = tools;
  const [before, strata, stations, surveys] = await Promise.all([
    store.all('mapArea'),
    store.all('stratum'),
    store.all('station'),
    store.all('survey'),
  ]);
  const stationsIn = (id: string) => stations.filter(({ stratumId }) => stratumId === id).length;
  const brought =
    request.file === null ? { areas: [], findings: [], withoutReason: 0 } : newAreas(request.file);
  const after = mergedAreas(before, brought.areas, request, tools.newId);
  checkWithdrawn(before, request);
  const ground = groundOf(after);
  const file = request.file?.name ?? null;
  const newStrata = after
    .filter(({ role, name }) => role === 'stratum' && !strata.some((one) => one.name === name))
    .map(({ name }) => name);
  const settled = settledStrata({ strata, after, ground, brought: brought.areas }, tools.newId);
  const problems = [
    ...mapProblems([...request.readFindings, ...brought.findings, ...ground.findings], file),
    ...nearNames(newStrata, strata),
    ...typedAreas(strata, before, ground),
    ...frozenChanges(before, after, strata, ground, request.acceptance),
    ...allMasked(ground),
    ...drawnLate({ before, after, strata: settled, stations, surveys, today: request.today }),
  ];
  const stopped = brought.withoutReason > 0 || problems.some(({ severity }) => severity === 'stop');
  const masksWithoutReason = brought.withoutReason;
  if (stopped) {
    const rows = rowsOf({ areas: before, strata, measured: measuredStrata(before) }, stationsIn);
    return { rows, problems, written: false, newStrata: [], masksWithoutReason };
  }
  const changes = changesOf(before, after, strata, settled);
  if (!request.dryRun && changes.length > 0) await store.apply(changes, signed(request, tools), tools.newId);
  const rows = rowsOf({ areas: after, strata: settled, measured: ground.strata }, stationsIn);
  return { rows, problems, written: !request.dryRun, newStrata, masksWithoutReason };
}

/** A stratum and a zone may bear one name: which of them goes is for the officer to say, never both in silence. */
function checkWithdrawn(before: readonly MapAreaRecord[], request: BringRequest): void {
  const { withdraw: name } = request;
  if (name === null) return;
  const meant = before.filter((one) => isWithdrawn(one, request));
  if (meant.length === 0) throw unknownArea(name, before);
  if (meant.length > 1)
    throw new Failure('area-name-of-several', { name, roles: meant.map(({ role }) => role).join(', ') });
}

function isWithdrawn(
  { name, role }: MapAreaRecord,
  { withdraw, withdrawRole }: Pick<BringRequest, 'withdraw' | 'withdrawRole'>,
): boolean {
  return name === withdraw && (withdrawRole === null || role === withdrawRole);
}

function unknownArea(name: string, areas: readonly MapAreaRecord[]): Failure {
  const known = areas.map((one) => one.name);
  const nearest = nearestName(name, known) ?? '';
  return new Failure('unknown-area-name', { name, nearest, known: known.slice(0, 12).join(', ') });
}

/** New areas take the place of those with their role and name. */
function mergedAreas(
  before: readonly MapAreaRecord[],
  brought: readonly NewArea[],
  request: BringRequest,
  newId: () => string,
): readonly MapAreaRecord[] {
  const { file, freezeOn } = request;
  const keyOf = ({ role, name }: { readonly role: string; readonly name: string }) =>
    JSON.stringify([role, name]);
  const known = new Map(before.map((record) => [keyOf(record), record]));
  const merged = new Map(known);
  for (const { role, name, reason, area } of brought) {
    const old = known.get(keyOf({ role, name }));
    const frozen = role === 'stratum' ? (freezeOn ?? old?.content.frozenOn ?? null) : null;
    const content = { area: recordedArea(area), reason, source: file?.name ?? null, frozenOn: frozen };
    // The same ground from a file of another name is the same map.
    const same = old !== undefined && isSameGround(old, content.area) && old.content.reason === reason;
    const kept = same ? { ...old.content, frozenOn: frozen } : content;
    merged.set(keyOf({ role, name }), { id: old?.id ?? newId(), name, role, content: kept });
  }
  const all = [...merged.values()].filter((one) => !isWithdrawn(one, request));
  if (file !== null || freezeOn === null) return all;
  return all.map((one) =>
    one.role === 'stratum' && one.content.frozenOn === null
      ? { ...one, content: { ...one.content, frozenOn: freezeOn } }
      : one,
  );
}

/** The strata with their hectares from the map; new ones with what the map says of them. */
function settledStrata(
  book: {
    readonly strata: readonly Stratum[];
    readonly after: readonly MapAreaRecord[];
    readonly ground: BookGround;
    readonly brought: readonly NewArea[];
  },
  newId: () => string,
): readonly Stratum[] {
  const { strata, after, ground, brought } = book;
  const left = new Map(ground.strata.map(({ name, ground: { leftHa } }) => [name, leftHa]));
  const known = strata.map((one) => ({ ...one, areaHa: left.get(one.name) ?? one.areaHa }));
  const missing = after.filter(
    ({ role, name }) => role === 'stratum' && !strata.some((one) => one.name === name),
  );
  return [
    ...known,
    ...missing.map(({ name }): Stratum => {
      const habitat = brought.find((one) => one.role === 'stratum' && one.name === name)?.properties.habitat;
      const said = typeof habitat === 'string' && habitat.trim() !== '' ? habitat.trim() : null;
      return { id: newId(), name, habitat: said, areaHa: left.get(name)!, depthMinM: null, depthMaxM: null };
    }),
  ];
}

function changesOf(
  before: readonly MapAreaRecord[],
  after: readonly MapAreaRecord[],
  strata: readonly Stratum[],
  settled: readonly Stratum[],
): Change[] {
  const isNew = <Record extends { readonly id: string }>(old: readonly Record[], record: Record) => {
    const was = old.find(({ id }) => id === record.id);
    return was === undefined || JSON.stringify(was) !== JSON.stringify(record);
  };
  return [
    ...settled
      .filter((one) => isNew(strata, one))
      .map((one): Change => ({ kind: 'stratum', recordId: one.id, after: one })),
    ...after
      .filter((one) => isNew(before, one))
      .map((one): Change => ({ kind: 'mapArea', recordId: one.id, after: one })),
    ...before
      .filter(({ id }) => !after.some((one) => one.id === id))
      .map(({ id }): Change => ({ kind: 'mapArea', recordId: id, after: null })),
  ];
}

/** An acceptance stands in the history with the change it allowed. */
function signed({ acceptance }: BringRequest, { signature }: BringTools): Signature {
  if (acceptance === null) return signature;
  return { ...signature, who: acceptance.who, why: `frozen strata changed: ${acceptance.why}` };
}

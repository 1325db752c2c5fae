/** The officer's own values: brought in from a table, all or none, and withdrawn by name. */

import { Failure } from '../survey/failure.ts';
import type { Problem } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { Change, Signature, Store } from '../survey/store.ts';
import { nameOfValue } from '../survey/value-words.ts';
import type { OwnValue, Species } from '../survey/words.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';
import { type PlacedValue, readValuesTable } from './values-table.ts';

export interface ValueTools {
  readonly store: Store;
  readonly signature: Signature;
  readonly newId: () => string;
}

export interface AddedValue {
  readonly species: string;
  readonly name: string;
  readonly source: string;
  readonly row: number;
  readonly value: PlacedValue['content'];
}

export interface AddResult {
  readonly added: readonly AddedValue[];
  readonly problems: readonly Problem[];
  readonly dataVersion: string;
}

/** Brings all values of a table in, or none of them when one cell is wrong. */
export async function addValues(
  file: { readonly name: string; readonly bytes: Uint8Array },
  { store, signature, newId }: ValueTools,
): Promise<AddResult> {
  const words = await readBookWords(store);
  const find = (name: string): Species | null => {
    try {
      return speciesAsked(words, name);
    } catch (error) {
      if (error instanceof Failure) return null;
      throw error;
    }
  };
  const names = words.species
    .flatMap((one) => [one.name, one.commonName ?? ''])
    .filter((name) => name !== '');
  const read = readValuesTable(file, find, names);
  const stops = read.problems.some((problem) => problem.severity === 'stop');
  if (!stops) await store.apply(await changesFor(read.value, store, newId), signature, newId);
  const added = stops
    ? []
    : read.value.map(({ species, source, content, row }) => ({
        species: species.name,
        name: nameOfValue(content),
        source,
        row,
        value: content,
      }));
  return { added, problems: read.problems, dataVersion: await store.dataVersion() };
}

/** The same thing from the same source is one value: bringing it again changes it. */
async function changesFor(
  values: readonly PlacedValue[],
  store: Store,
  newId: () => string,
): Promise<readonly Change[]> {
  const own = await store.all('ownValue');
  const limits = await store.all('sizeLimit');
  return values.map(({ species, source, content }): Change => {
    if (content.what === 'size-limit') {
      const before = limits.find((one) => one.speciesId === species.id && one.source === source);
      const id = before?.id ?? newId();
      const after = { id, speciesId: species.id, minimumMm: content.minimumMm, source };
      return { kind: 'sizeLimit', recordId: id, after };
    }
    const what = nameOfValue(content);
    const before = own.find(
      (one) => one.speciesId === species.id && one.what === what && one.source === source,
    );
    const id = before?.id ?? newId();
    return { kind: 'ownValue', recordId: id, after: { id, speciesId: species.id, what, source, content } };
  });
}

export interface WithdrawRequest {
  /** As the list names it: "length-weight, live". */
  readonly name: string;
  readonly species: string;
  /** Null where one source alone gives it. */
  readonly source: string | null;
}

/** Withdraws one own value; the book keeps who did it and why. Throws a Failure when there is none, or more than one. */
export async function withdrawValue(
  request: WithdrawRequest,
  { store, signature, newId }: ValueTools,
): Promise<{ readonly withdrawn: OwnValue; readonly species: string; readonly dataVersion: string }> {
  const species = speciesAsked(await readBookWords(store), request.species);
  const own = (await store.all('ownValue')).filter((one) => one.speciesId === species.id);
  const wanted = request.name.trim().toLowerCase();
  const found = own.filter(
    (one) =>
      (one.what.toLowerCase() === wanted || one.content.what === wanted) &&
      (request.source === null || one.source === request.source),
  );
  const [value, second] = found;
  const known = (found.length > 1 ? found : own).map((one) => `${one.what} (${one.source})`).join('; ');
  if (value === undefined) {
    const nearest =
      nearestName(
        request.name,
        own.map((one) => one.what),
      ) ?? '';
    throw new Failure('no-such-own-value', { name: request.name, species: species.name, nearest, known });
  }
  if (second !== undefined) throw new Failure('several-own-values', { name: request.name, known });
  await store.apply([{ kind: 'ownValue', recordId: value.id, after: null }], signature, newId);
  return { withdrawn: value, species: species.name, dataVersion: await store.dataVersion() };
}

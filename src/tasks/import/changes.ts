/** Collects what an import would change, and counts it by table. */

import type { Change } from '../../survey/store.ts';
import type { TableName } from '../../survey/table-rows.ts';
import type { RecordKind, RecordOf } from '../../survey/words.ts';

export interface Counted {
  added: number;
  changed: number;
  unchanged: number;
}

const tableOfKind: Readonly<Record<RecordKind, TableName | null>> = {
  stratum: 'strata',
  protocol: 'protocols',
  survey: 'surveys',
  station: 'stations',
  transect: 'transects',
  tally: 'counts',
  species: 'species',
  weight: 'weights',
  target: 'targets',
  sizeLimit: 'limits',
  mapping: null,
  answer: null,
  mapArea: null,
  plan: null,
  ownValue: null,
  day: null,
  photo: null,
};

export class Changes {
  readonly list: Change[] = [];
  readonly #counts = new Map<TableName, Counted>();
  readonly #newId: () => string;

  constructor(newId: () => string) {
    this.#newId = newId;
  }

  counted(table: TableName): Counted {
    let counts = this.#counts.get(table);
    if (counts === undefined) {
      counts = { added: 0, changed: 0, unchanged: 0 };
      this.#counts.set(table, counts);
    }
    return counts;
  }

  /**
   * Brings one record up to date: new when its natural key is not in `known`, changed when any field
   * differs, else unchanged. `known` is updated, so that later rows find it.
   * Rows made up for tables that were not given (`countIt` false) do not enter the totals.
   */
  keep<K extends RecordKind>(
    kind: K,
    known: Map<string, RecordOf<K>>,
    key: string,
    fields: Omit<RecordOf<K>, 'id'>,
    countIt = true,
  ): RecordOf<K> {
    const before = known.get(key);
    const table = tableOfKind[kind];
    const counts = countIt && table !== null ? this.counted(table) : null;
    if (before !== undefined && hasFields(before, fields)) {
      if (counts !== null) counts.unchanged++;
      return before;
    }
    const record = { id: before?.id ?? this.#newId(), ...fields } as unknown as RecordOf<K>;
    known.set(key, record);
    this.list.push({ kind, recordId: record.id, after: record } as unknown as Change);
    if (counts !== null) counts[before === undefined ? 'added' : 'changed']++;
    return record;
  }
}

/** True when every field of `fields` stands in the record just so. */
function hasFields(record: object, fields: object): boolean {
  const standing = record as Readonly<Record<string, unknown>>;
  for (const [name, value] of Object.entries(fields)) {
    const before = standing[name];
    if (before === value) continue;
    if (typeof value !== 'object' || value === null || before === null) return false;
    if (JSON.stringify(before) !== JSON.stringify(value)) return false;
  }
  return true;
}

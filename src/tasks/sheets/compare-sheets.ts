/**
 * Two sheets of one station, cell by cell: somebody else's beside yours, or a sheet that was typed twice.
 *
 * Belts are matched by their code and swim, counts by their species, because a second typing has identities of its own.
 * A belt or a count that is on one sheet only differs in being there.
 */

import { compareCodes } from '../../survey/survey-in-hand.ts';
import type { Length, Tally, Transect } from '../../survey/words.ts';
import type { Sheet, SheetDifference } from './sheet-schemas.ts';

/** In the order of the sheet: the station, then belt by belt. None when both say the same. */
export function compareSheets(one: Sheet, other: Sheet): SheetDifference[] {
  const station = fieldsThatDiffer(one.station, other.station, ['id']);
  return [
    ...station.map((cell) => ({ transect: null, swim: null, speciesId: null, ...cell })),
    ...pairs(one.transects, other.transects, beltKey).flatMap(({ left, right }) =>
      beltDifferences({ sheet: one, belt: left }, { sheet: other, belt: right }),
    ),
  ];
}

interface Side {
  readonly sheet: Sheet;
  readonly belt: Transect | undefined;
}

function beltDifferences(one: Side, other: Side): SheetDifference[] {
  const { code: transect, swim } = (one.belt ?? other.belt)!;
  const place = { transect, swim };
  if (one.belt === undefined || other.belt === undefined) {
    const there = { field: 'transect', one: one.belt !== undefined, other: other.belt !== undefined };
    return [{ ...place, speciesId: null, ...there }];
  }
  const belt = fieldsThatDiffer(one.belt, other.belt, ['id', 'stationId']);
  const counts = pairs(talliesOf(one), talliesOf(other), (tally) => tally.speciesId);
  return [
    ...belt.map((cell) => ({ ...place, speciesId: null, ...cell })),
    ...counts.flatMap(({ left, right }) => {
      const { speciesId } = (left ?? right)!;
      return tallyDifferences(left, right).map((cell) => ({ ...place, speciesId, ...cell }));
    }),
  ];
}

type CellDifference = Pick<SheetDifference, 'field' | 'one' | 'other'>;

function tallyDifferences(one: Tally | undefined, other: Tally | undefined): CellDifference[] {
  const cells = [
    { field: 'count', one: one?.count ?? null, other: other?.count ?? null },
    { field: 'lengths', one: lengthsInWords(one?.lengths), other: lengthsInWords(other?.lengths) },
  ];
  return cells.filter((cell) => cell.one !== cell.other);
}

/** The order in which animals were measured says nothing, so lengths are compared sorted. */
function lengthsInWords(lengths: readonly Length[] | undefined): string | null {
  if (lengths === undefined) return null;
  const each = lengths.flatMap(({ lengthMm, n, measure }) =>
    Array<string>(n).fill(`${lengthMm}${measure === null ? '' : ` ${measure}`}`),
  );
  return each.sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b)).join(', ');
}

function fieldsThatDiffer(one: object, other: object, leftOut: readonly string[]): CellDifference[] {
  const right = other as Readonly<Record<string, unknown>>;
  return Object.entries(one)
    .filter(([field]) => !leftOut.includes(field))
    .map(([field, value]) => ({ field, one: cell(value), other: cell(right[field]) }))
    .filter((difference) => difference.one !== difference.other);
}

function cell(value: unknown): SheetDifference['one'] {
  if (value === null || value === undefined) return null;
  return typeof value === 'object' ? JSON.stringify(value) : (value as string | number | boolean);
}

function talliesOf({ sheet, belt }: Side): readonly Tally[] {
  return sheet.tallies.filter((tally) => tally.transectId === belt?.id);
}

function beltKey({ code, swim }: Transect): string {
  return `${code} ${swim}`;
}

interface Pair<Item> {
  readonly left: Item | undefined;
  readonly right: Item | undefined;
}

function pairs<Item>(
  left: readonly Item[],
  right: readonly Item[],
  key: (item: Item) => string,
): readonly Pair<Item>[] {
  const lefts = new Map(left.map((item) => [key(item), item]));
  const rights = new Map(right.map((item) => [key(item), item]));
  const keys = [...new Set([...lefts.keys(), ...rights.keys()])].sort(compareCodes);
  return keys.map((one) => ({ left: lefts.get(one), right: rights.get(one) }));
}

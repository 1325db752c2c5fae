import { expect, test } from 'vitest';
import { chosenRows, inOrder, tabSeparated } from './answer-order.ts';

const row = (species: string, place: string, most: number | null, spread: number | null = null) => ({
  survey: 'North',
  species,
  name: species,
  scope: { by: 'stratum' as const, name: place },
  most,
  spread,
});
type Row = ReturnType<typeof row>;
const by = { most: (one: Row) => one.most, spread: (one: Row) => one.spread };
const rows = [row('b', 'flat', 5, 40), row('a', 'slope', null), row('a', 'flat', 80, 20)];

test('the densest comes first and the unknown last', () => {
  expect(inOrder(rows, 'most', by).map((one) => one.most)).toEqual([80, 5, null]);
  expect(inOrder(rows, 'surest', by).map((one) => one.spread)).toEqual([20, 40, null]);
});

test('by name and by place are orders of words', () => {
  expect(inOrder(rows, 'name', by).map((one) => one.species + one.scope.name)).toEqual([
    'aflat',
    'aslope',
    'bflat',
  ]);
  expect(inOrder(rows, 'place', by).map((one) => one.scope.name)).toEqual(['flat', 'flat', 'slope']);
});

test('one species in one place', () => {
  expect(chosenRows(rows, { species: 'a', place: 'flat' })).toEqual([rows[2]]);
  expect(chosenRows(rows, { species: null, place: null })).toHaveLength(3);
});

test('a tab inside a sentence never makes a column', () => {
  expect(
    tabSeparated([
      ['a', 'b'],
      ['one\ttwo', ''],
    ]),
  ).toBe('a\tb\none two\t\n');
});

import { expect, test } from 'vitest';
import { textTable } from './text-table.ts';

interface Row {
  readonly species: string;
  readonly perHa: string;
}

const columns = [
  { head: 'species', cell: (row: Row) => row.species },
  { head: 'animals/ha', cell: (row: Row) => row.perHa, number: true },
];

test('numbers stand to the right under a rule, and a macron does not push them out of line', () => {
  const rows = [
    { species: 'mālie', perHa: '5.0' },
    { species: 'lollyfish', perHa: '1480' },
  ];
  // by hand: the first column is nine signs wide, the second ten
  expect(textTable(columns, rows)).toBe(
    ['species    animals/ha', '─────────  ──────────', 'mālie             5.0', 'lollyfish        1480'].join(
      '\n',
    ),
  );
});

test('a name with a line end or a terminal sign in it stays one line of plain text', () => {
  const table = textTable(columns, [{ species: 'a\nb\u001b[31mc', perHa: '1' }]);
  expect(table.split('\n')).toHaveLength(3);
  expect(table).not.toContain('\u001b');
});

test('no rows give the heads alone', () => {
  expect(textTable(columns, []).split('\n')).toHaveLength(2);
});

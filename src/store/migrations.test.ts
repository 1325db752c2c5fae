import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { smallSurvey } from '../../test/store-records.ts';
import { kindTables } from './kind-tables.ts';
import { readMigrations } from './migrations.ts';

// Written down when a file is released. A change of a released file breaks books that exist: make a new file.
const released: Readonly<Record<number, string>> = {
  1: '82adacfbc3786f30df0a52a6d5e08cf5bf7d1119e56f09dd30b29cc5345e1113',
  2: 'ea368886761e2329514487bb3d9dd02c5229af661684e17bb0d5cb4a550efc0d',
  3: 'c6124dee89895da4929c323df5fe2a55e3230776a01aa70e243083af8efa7d3e',
  4: 'ea9cf8d884ad9c8cfbe086d5c42fd0b41fbf649b05c90111dd5d6fad8e8ff9c2',
  5: '869b85d4cb8114470a75d0ad37c461590c31c31ccc92d3a692f7ddc2c0d3fdff',
  6: 'fd8aae2f6523c40caa3b934dddee25afe5b278f78719462a2c76fdaa67bae622',
};

test('no released migration has been edited', () => {
  const found = Object.fromEntries(readMigrations().map(({ number, sha256 }) => [number, sha256]));
  expect(found).toEqual(released);
});

test('migrations are numbered from 1 without a gap', () => {
  const numbers = readMigrations().map((migration) => migration.number);
  expect(numbers).toEqual(numbers.map((_, i) => i + 1));
});

test('the columns of each table are those of its rows, in the same order', () => {
  const database = new DatabaseSync(':memory:');
  for (const { sql } of readMigrations()) database.exec(sql);
  for (const { kind, after } of smallSurvey().changes) {
    const { table, rowOf } = kindTables[kind];
    const columns = database.prepare(`PRAGMA table_info(${table})`).all();
    expect(columns.map((column) => column.name)).toEqual(Object.keys(rowOf(after!)));
  }
  database.close();
});

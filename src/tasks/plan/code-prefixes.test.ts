import { expect, test } from 'vitest';
import { codePrefixes } from './code-prefixes.ts';

test('strata have beginnings of codes that fit on a slate and differ from each other', () => {
  const names = ['north flat', 'Nord-Fläche', 'lagoon', 'RF', 'a b c d', '?', 'lagoon 2'];
  const prefixes = codePrefixes(names);
  expect([...prefixes.values()]).toEqual(['NF', 'NF2', 'LAG', 'RF', 'ABC', 'S', 'L2']);
});

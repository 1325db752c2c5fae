import { expect, test } from 'vitest';
import { check } from './counted-but-no-target.ts';
import { cleanSketch, contextOf } from './survey-sketch.ts';

test('a species that was counted without being looked for is asked about', () => {
  const context = contextOf(cleanSketch());
  const undeclared = context.targetList.species.slice(1);
  const found = check.run({ ...context, targetList: { ...context.targetList, undeclared } });
  expect(found).toMatchObject([{ place: { species: 'lollyfish' }, value: 'lollyfish' }]);
  expect(check.run(context)).toEqual([]);
});

import { expect, test } from 'vitest';
import { cleanSketch, contextOf } from './survey-sketch.ts';
import { check } from './targets-assumed.ts';

test('a list of targets that was made up is noted, a declared one is not', () => {
  const context = contextOf(cleanSketch());
  const targetList = { ...context.targetList, madeFrom: 'species list' } as const;
  expect(check.run({ ...context, targetList })).toMatchObject([{ severity: 'note', value: 2 }]);
  expect(check.run(context)).toEqual([]);
});

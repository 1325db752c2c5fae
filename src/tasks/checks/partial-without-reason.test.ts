import { expect, test } from 'vitest';
import { check } from './partial-without-reason.ts';
import { foundBy, transectAt } from './survey-sketch.ts';

const cut = (reason: string | null) =>
  foundBy(check, (sketch) =>
    Object.assign(transectAt(sketch, 'S2', '3'), { status: 'partial', lengthM: 25, reason }),
  );

test('a belt cut short is asked for its reason, once', () => {
  expect(cut(null)).toMatchObject([{ place: { station: 'S2', transect: '3' }, value: 25 }]);
  expect(cut('sand chute')).toEqual([]);
});

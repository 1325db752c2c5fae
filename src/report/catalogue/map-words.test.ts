import { expect, test } from 'vitest';
import { type MapFindingCode, mapFinding, mapFindingSeverities } from '../../survey/map-area.ts';
import type { Parameters } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { slotsOf } from './fill.ts';
import { mapWords } from './map-words.ts';
import { positionWords } from './position-words.ts';
import { sentence } from './sentence.ts';

test('every finding of a map has a sentence, and positions in it are no rounded numbers', () => {
  for (const code of Object.keys(mapFindingSeverities) as MapFindingCode[]) {
    expect(mapFinding(code, null).code).toBe(code);
    expect(mapWords[code].length).toBeGreaterThan(20);
    // Three significant digits of a degree are 11 km.
    expect(slotsOf(mapWords[code]).filter((slot) => /Deg$/.test(slot))).toEqual([]);
  }
});

test('a finding says the area, the border, the place and the number', () => {
  const parameters: Parameters = {
    area: 'flat',
    piece: 'piece 2, hole 1',
    times: '3 times',
    at: '-17.01000, 177.01000',
  };
  expect(sentence('en', problemOf('self-crossing', { file: 'reef.kml' }, { parameters }))).toBe(
    'reef.kml: area flat: piece 2, hole 1: the border crosses itself 3 times, first at -17.01000, 177.01000, so that inside and outside cannot be told; untie it there',
  );
});

test('what was taken for granted in a position, and why a text gives none, is said with the text', () => {
  for (const words of Object.values(positionWords)) {
    expect(words).toMatch(/^(“\{value\}”|the |no position)/);
    expect(words).not.toMatch(/[[\]]/);
  }
});

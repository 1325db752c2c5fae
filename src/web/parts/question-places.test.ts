import { expect, test } from 'vitest';
import type { ProblemRow } from '../../tasks/sheets/answer-schemas.ts';
import { questionKey, questionPlaces } from './question-places.ts';

const asked = (
  station: string | null,
  severity: ProblemRow['severity'],
  transect: string | null = null,
): ProblemRow => ({
  code: 'transect-unresolved',
  severity,
  message: '',
  station,
  transect,
  swim: null,
  species: null,
  value: null,
  suggestion: null,
  stationId: null,
  answer: null,
});

test('the survey as a whole comes first, and S2 before S10', () => {
  const places = questionPlaces([asked('S10', 'note'), asked('S2', 'note'), asked(null, 'note')]);
  expect(places.map((place) => place.station)).toEqual([null, 'S2', 'S10']);
});

test('in one place what must be corrected comes before notes, then belt by belt', () => {
  const [place] = questionPlaces([
    asked('S1', 'note', '1'),
    asked('S1', 'explain', '12'),
    asked('S1', 'explain', '3'),
    asked('S1', 'stop', '9'),
  ]);
  expect(place?.questions.map((one) => one.transect)).toEqual(['9', '3', '12', '1']);
});

test('no question is lost by grouping', () => {
  const list = ['A', 'B', 'A', null].map((station) => asked(station, 'explain'));
  expect(questionPlaces(list).flatMap((place) => place.questions)).toHaveLength(4);
});

test('two belts ask two questions', () => {
  expect(questionKey(asked('S1', 'explain', '1'))).not.toBe(questionKey(asked('S1', 'explain', '2')));
});

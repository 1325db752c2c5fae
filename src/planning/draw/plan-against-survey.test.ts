import { expect, test } from 'vitest';
import type { PlanContent, PlannedStation } from '../../survey/plan-words.ts';
import { planAgainstSurvey } from './plan-against-survey.ts';

const station = (code: string, given: Partial<PlannedStation> = {}): PlannedStation => ({
  ...{ code, stratum: 'flat', position: { latitudeDeg: -17, longitudeDeg: 177 }, selection: 'random' },
  ...{ role: 'planned', replaces: null, belts: [], shareInside: null },
  ...given,
});

const plan: PlanContent = {
  ...{ survey: 'X', decision: null, protocol: null, seed: 1, method: 'acceptance', minimumSpacingM: null },
  ...{ drawnOn: '2026-01-01', drawnBy: 'Officer A', passedOver: [], laid: null },
  strata: [{ name: 'flat', areaHa: 10, maskedHa: 0, stations: 3, spares: 2 }],
  stations: [
    station('A', { role: 'dropped' }),
    station('B'),
    station('C'),
    station('H', { selection: 'hand-picked' }),
    station('D', { replaces: 'A' }),
    station('E', { role: 'spare' }),
  ],
  replacements: [
    { dropped: 'A', replacement: 'D', stratum: 'flat', reason: 'surf', who: 'Officer A', date: '2026-02-01' },
  ],
};

// By hand: B, C and D are asked for, A gave its place to D; B and D were visited, A against the plan, Z is a stranger.
test('a replaced station counts in the place of its replacement, and what nobody asked for is named', () => {
  const against = planAgainstSurvey(plan, [
    { code: 'b' },
    { code: 'D' },
    { code: 'A' },
    { code: 'Z' },
    { code: 'E' },
  ]);
  expect(against).toMatchObject({ planned: 3, visited: 2, replaced: 1, notInPlan: ['A', 'Z', 'E'] });
  expect(against.strata[0]).toMatchObject({
    ...{ handPickedPlanned: 1, handPickedVisited: 0 },
    notVisited: ['C', 'H'],
  });
});

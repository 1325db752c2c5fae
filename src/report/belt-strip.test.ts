import { expect, test } from 'vitest';
import { beltStrip } from './belt-strip.ts';
import { beltsOf } from './belts.ts';
import { fixtureProtocol, fixtureSpecies, fixtureSurvey } from './report-fixture.ts';
import { stripLegend } from './strip-legend.ts';

const stations = fixtureSurvey('2026', 77).stations;
const station = (code: string) => stations.find((each) => each.record.code === code)!;
const frame = { width: 320, protocol: fixtureProtocol, species: null, fullCount: 40 };

test('counted, empty, lost, blank and short belts look as they were looked at', async () => {
  for (const code of ['S1', 'S2', 'S5', 'S10', 'S13']) {
    await expect(beltStrip(station(code), frame)).toMatchFileSnapshot(`../../test/golden/strip-${code}.svg`);
  }
  await expect(stripLegend(680)).toMatchFileSnapshot('../../test/golden/strip-legend.svg');
});

test('parallel belts stand below each other and quadrats side by side as boxes', async () => {
  for (const layout of ['parallel', 'quadrats'] as const) {
    const drawn = beltStrip(station('S10'), { ...frame, protocol: { ...fixtureProtocol, layout } });
    await expect(drawn).toMatchFileSnapshot(`../../test/golden/strip-${layout}.svg`);
  }
});

test('a short belt is drawn short and to scale: 22 of 40 m', () => {
  const widths = [...beltStrip(station('S10'), frame).matchAll(/fill="none" stroke="#22252a"[^>]*/g)];
  const boxes = [
    ...beltStrip(station('S10'), frame).matchAll(/width="([\d.]+)" height="20" fill="none"/g),
  ].map((m) => Number(m[1]));
  expect(widths.length).toBeGreaterThan(0);
  // by hand: 22 / 40 = 0.55
  expect(boxes.at(-1)! / boxes[0]!).toBeCloseTo(0.55, 2);
});

test('a blank belt waits for an answer and is not shown as empty', () => {
  const states = beltsOf(station('S13'), null, fixtureProtocol).map((belt) => belt.state);
  expect(states[3]).toBe('unresolved');
  expect(beltStrip(station('S13'), frame)).toContain('4 unresolved');
});

test('a station with nothing written is one dotted box', () => {
  const empty = { ...station('S1'), transects: [] };
  expect(beltStrip(empty, frame)).toContain('nothing written');
});

test('the belts of one species hold its animals alone', () => {
  const lollyfish = fixtureSpecies[0]!;
  const one = beltsOf(station('S2'), lollyfish, fixtureProtocol).reduce((sum, belt) => sum + belt.animals, 0);
  const all = beltsOf(station('S2'), null, fixtureProtocol).reduce((sum, belt) => sum + belt.animals, 0);
  expect(one).toBeGreaterThan(0);
  expect(one).toBeLessThan(all);
});

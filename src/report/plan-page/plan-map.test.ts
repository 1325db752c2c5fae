import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import type { PlanContent, PlannedStation } from '../../survey/plan-words.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import { planMap } from './plan-map.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { stationDetail } from './station-detail.ts';

const { document } = parseHTML('<!doctype html><html></html>');
const frame = { document, width: 680, inWords: 'six stations', language: 'en' } as const;

function boxed(name: string, role: MapAreaRecord['role'], [west, south, east, north]: readonly number[]) {
  const at = (longitudeDeg: number, latitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
  const outer = [
    at(west!, south!),
    at(east!, south!),
    at(east!, north!),
    at(west!, north!),
    at(west!, south!),
  ];
  const content = { area: { parts: [{ outer, holes: [] }] }, reason: null, source: null, frozenOn: null };
  return { id: name, name, role, content };
}

const areas = [
  boxed('flat', 'stratum', [177, -17.02, 177.03, -17]),
  boxed('slope', 'stratum', [177.03, -17.02, 177.05, -17]),
  // Far larger than the strata: only what it takes from them is drawn.
  boxed('coast', 'mask', [170, -17.005, 177.01, -10]),
];

function station(
  code: string,
  at: readonly [number, number],
  given: Partial<PlannedStation> = {},
): PlannedStation {
  return {
    ...{ code, stratum: 'flat', selection: 'random', role: 'planned', replaces: null, belts: [] },
    ...{ position: { latitudeDeg: at[0], longitudeDeg: at[1] }, shareInside: null },
    ...given,
  };
}

const content: PlanContent = {
  ...{ survey: 'X', decision: null, protocol: null, seed: 1, method: 'acceptance', minimumSpacingM: null },
  ...{ drawnOn: '2026-01-01', drawnBy: 'Officer A', passedOver: [], replacements: [], laid: null },
  strata: [
    { name: 'flat', areaHa: 690, maskedHa: 60, stations: 3, spares: 1 },
    { name: 'slope', areaHa: 470, maskedHa: 0, stations: 1, spares: 0 },
  ],
  stations: [
    station('F-01', [-17.015, 177.005], { selection: 'fixed' }),
    station('F-02', [-17.01, 177.02], { role: 'dropped' }),
    station('F-03', [-17.004, 177.025], { replaces: 'F-02' }),
    station('F-04', [-17.017, 177.017], { role: 'spare' }),
    station('H-1', [-17.008, 177.012], { selection: 'hand-picked' }),
    station('S-01', [-17.01, 177.04], { stratum: 'slope' }),
  ],
};

const input = { content, areas, positionDetail: 'exact' } as unknown as PlanPageInput;

test('the map of a plan looks as it was looked at', async () => {
  await expect(planMap(input, frame)).toMatchFileSnapshot('../../../test/golden/plan-map.svg');
});

test('a map without positions is not drawn at all', () => {
  expect(planMap({ ...input, positionDetail: 'none' }, frame)).toBeNull();
});

test('a station from above is to scale, with the border beside it', async () => {
  const belts = [0, 1].map((i) => ({
    ...{ number: i + 1, trueBearingDeg: 90, magneticBearingDeg: 77 },
    start: { latitudeDeg: -17.0197, longitudeDeg: 177.01 + 0.0005 * i },
    end: { latitudeDeg: -17.0197, longitudeDeg: 177.0104 + 0.0005 * i },
  }));
  const laid = station('F-05', [-17.0197, 177.01], { belts });
  const near = areas.map(({ content: { area }, role }) => ({ area, isMask: role === 'mask' }));
  const drawn = stationDetail(laid, { areas: near, beltWidthM: 2 }, 'en');
  await expect(drawn).toMatchFileSnapshot('../../../test/golden/plan-station.svg');
  expect(stationDetail(station('F-06', [-17, 177]), { areas: near, beltWidthM: 2 }, 'en')).toBeNull();
});

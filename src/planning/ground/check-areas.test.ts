import { describe, expect, test } from 'vitest';
import { near } from '../../maths/nearness.ts';
import { areaHaOf } from './area-size.ts';
import { checkAreas } from './check-areas.ts';
import { mappedStrata } from './mapped-strata.ts';
import { areaOf, boxArea } from './test-areas.ts';

const named = (name: string, west: number, east: number, south = -17.1, north = -17) => ({
  name,
  area: boxArea(west, south, east, north),
});

describe('strata together', () => {
  test('that only share a border are sound, across the date line too', () => {
    expect(checkAreas([named('a', 179.9, 180), named('b', -180, -179.9), named('c', 177, 177.1)])).toEqual(
      [],
    );
  });

  // Second way: the common box measured by itself; its stated error must cover the difference.
  test('that claim the same ground are a stop, with hectares and their error', () => {
    const [finding, ...others] = checkAreas([named('a', 179.9, -179.98), named('b', 180, -179.9)]);
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      code: 'overlap',
      severity: 'stop',
      where: 'a',
      parameters: { other: 'b' },
    });
    const expectedHa = areaHaOf(boxArea(180, -17.1, -179.98, -17));
    near(finding!.parameters['areaHa'] as number, expectedHa, 1e-6);
    expect(finding!.parameters['errorHa']).toBeLessThan(0.1);
  });

  // By hand: 0.00001 degrees of longitude are 1.06 m at 17 S.
  test('whose border was drawn twice overlap in a sliver, or leave one', () => {
    expect(checkAreas([named('a', 177, 177.10001), named('b', 177.1, 177.2)])).toMatchObject([
      { code: 'overlap-sliver', severity: 'note', parameters: { other: 'b' } },
    ]);
    const ring = {
      name: 'ring',
      area: areaOf(
        boxArea(177, -17.1, 177.2, -17).parts[0]!.outer,
        boxArea(177.05, -17.08, 177.15, -17.02).parts[0]!.outer,
      ),
    };
    const plug = named('plug', 177.05001, 177.15, -17.08, -17.02);
    const [gap, ...others] = checkAreas([ring, plug]);
    expect(others).toEqual([]);
    expect(gap).toMatchObject({ code: 'gap-sliver', where: null });
    near(gap!.parameters['widthM'] as number, 1.063, 0.01);
  });

  test('of which one lies with exchanged coordinates is a stop', () => {
    const odd = { name: 'odd', area: boxArea(12.2, 43, 12.3, 43.1) };
    const strata = [named('a', 43, 43.1, 12, 12.1), named('b', 43.2, 43.3, 12, 12.1), odd];
    expect(checkAreas(strata)).toMatchObject([
      { code: 'swapped-coordinates', where: 'odd', parameters: { points: 4 } },
    ]);
    const lost = { name: 'lost', area: boxArea(-60, 12, -59.9, 12.1) };
    expect(checkAreas([...strata.slice(0, 2), lost])).toMatchObject([
      { code: 'far-from-neighbours', where: 'lost' },
    ]);
  });

  test('with one name twice are a stop', () => {
    expect(checkAreas([named('a', 177, 177.1), named('a', 178, 178.1)])).toMatchObject([
      { code: 'name-repeated' },
    ]);
  });
});

test('mapped strata carry their freeze date, their ground and every finding', () => {
  const crossed = areaOf([
    { latitudeDeg: -17, longitudeDeg: 177 },
    { latitudeDeg: -17.1, longitudeDeg: 177.1 },
    { latitudeDeg: -17, longitudeDeg: 177.1 },
    { latitudeDeg: -17.1, longitudeDeg: 177 },
    { latitudeDeg: -17, longitudeDeg: 177 },
  ]);
  const mapped = mappedStrata(
    [
      { ...named('a', 179.9, -179.9), typedAreaHa: 235.6 },
      { name: 'crossed', area: crossed, typedAreaHa: null },
    ],
    {
      frozenOn: '2026-03-01',
      masks: [
        { name: 'islet', why: 'land', area: boxArea(180, -17.1, -179.8, -17) },
        { name: 'crossed mask', why: 'land', area: crossed },
      ],
    },
  );
  expect(mapped.frozenOn).toBe('2026-03-01');
  expect(mapped.findings.map(({ code }) => code)).toEqual([
    'area-typed-differs',
    'self-crossing',
    'self-crossing',
  ]);
  near(mapped.strata[0]!.ground.leftHa, mapped.strata[0]!.ground.wholeHa / 2, 1e-5);
  expect(mapped.strata[1]!.ground.dropped).toEqual([]);
});

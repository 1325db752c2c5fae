import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import { compareSheets } from './compare-sheets.ts';
import type { Sheet } from './sheet-schemas.ts';

const speciesId = '00000009-0000-7000-8000-000000000001';

/** The same sheet typed by somebody else: other identities, the same words. */
function typed(block: number, count = 3, lengthsMm = [180, 200]): Sheet {
  const newId = identityFrom(block);
  const station = record('station', { id: newId(), surveyId: speciesId, stratumId: speciesId, code: 'S1' });
  const belts = ['10', '2'].map((code) => record('transect', { id: newId(), stationId: station.id, code }));
  const lengths = lengthsMm.map((lengthMm) => ({ lengthMm, n: 1, measure: null, photo: null }));
  const tally = record('tally', { id: newId(), transectId: belts[0]!.id, speciesId, count, lengths });
  return { station, transects: belts, tallies: [tally] };
}

describe('a sheet typed twice', () => {
  it('alike in every cell has no difference, whatever its identities and the order of its lengths', () => {
    expect(compareSheets(typed(51), typed(52, 3, [200, 180]))).toEqual([]);
  });

  it('differs in the cells that differ, each with its place and both values', () => {
    const place = { transect: '10', swim: 1, speciesId };
    expect(compareSheets(typed(51), typed(52, 4, [180, 210]))).toEqual([
      { ...place, field: 'count', one: 3, other: 4 },
      { ...place, field: 'lengths', one: '180, 200', other: '180, 210' },
    ]);
  });

  it('tells a written zero from a blank', () => {
    const blank = { ...typed(52), tallies: [] };
    const [count] = compareSheets(typed(51, 0, []), blank);
    expect(count).toMatchObject({ field: 'count', one: 0, other: null });
  });

  it('with a belt on one side only says so, belts in the order people expect', () => {
    const other = typed(52);
    const short = { ...other, transects: [], tallies: [] };
    expect(compareSheets(typed(51), short)).toEqual([
      { transect: '2', swim: 1, speciesId: null, field: 'transect', one: true, other: false },
      { transect: '10', swim: 1, speciesId: null, field: 'transect', one: true, other: false },
    ]);
  });

  it('with another depth or status differs in that field of the belt or the station', () => {
    const other = typed(52);
    const [first, second] = other.transects;
    const changed = {
      ...other,
      station: { ...other.station, depthM: 7 },
      transects: [{ ...first!, status: 'partial' as const }, second!],
    };
    expect(
      compareSheets(typed(51), changed).map(({ transect, field, other: to }) => [transect, field, to]),
    ).toEqual([
      [null, 'depthM', 7],
      ['10', 'status', 'partial'],
    ]);
  });
});

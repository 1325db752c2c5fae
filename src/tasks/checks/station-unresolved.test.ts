import { expect, test } from 'vitest';
import { check } from './station-unresolved.ts';
import { foundBy, stationAt, transectAt } from './survey-sketch.ts';

test('a station without a transect is asked about, one whose belts are lost is not', () => {
  const found = foundBy(check, (sketch) => {
    const { id } = stationAt(sketch, 'S3');
    sketch.transects.splice(
      0,
      sketch.transects.length,
      ...sketch.transects.filter((one) => one.stationId !== id),
    );
  });
  expect(found.map((one) => one.place.station)).toEqual(['S3']);
  expect(
    foundBy(check, (sketch) => {
      transectAt(sketch, 'S3', '1').status = 'lost';
    }),
  ).toEqual([]);
});

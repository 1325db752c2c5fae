import { expect, test } from 'vitest';
import { check } from './latitude-longitude-exchanged.ts';
import { foundBy, stationAt } from './survey-sketch.ts';

const inAfrica = (exchange: boolean) =>
  foundBy(check, (sketch) => {
    // At longitudes under 90 degrees a reader cannot refuse the exchange.
    for (const one of sketch.stations) {
      one.longitudeDeg! -= 140;
      one.plannedLongitudeDeg! -= 140;
      one.endLongitudeDeg! -= 140;
    }
    const { latitudeDeg, longitudeDeg } = stationAt(sketch, 'S2');
    if (exchange)
      Object.assign(stationAt(sketch, 'S2'), { latitudeDeg: longitudeDeg, longitudeDeg: latitudeDeg });
  });

test('latitude and longitude exchanged are asked about', () => {
  expect(inAfrica(true)).toMatchObject([{ place: { station: 'S2' }, suggestion: '-17.752900, 37.403970' }]);
  expect(inAfrica(false)).toEqual([]);
});

import { parseHTML } from 'linkedom';
import { expect, it } from 'vitest';
import { precisionCurveFigure } from './precision-curve-figure.ts';

const { document } = parseHTML('<!doctype html><html></html>');
const curve = (cv: number) =>
  [8, 16, 32, 64].map((stations) => ({
    ...{ stations, cvAssured: cv / Math.sqrt(stations), fallAssured: 1 - 0.05 * Math.log(stations) },
  }));

it('draws both panels, names every species, and marks the planned number', () => {
  const picture = precisionCurveFigure(
    {
      species: [
        { subject: { name: 'sandfish' }, curve: curve(2) },
        { subject: { name: 'trochus' }, curve: curve(1) },
      ],
      ...{ need: { stations: 38 }, bookSpecies: [] },
    },
    { document, stationsPerDay: 4 },
  );
  expect(picture.match(/>sandfish</g)).toHaveLength(2);
  expect(picture.match(/>38 stations</g)).toHaveLength(2);
  expect(picture).toContain('stations (4 a boat day)');
  // By hand: 2 / sqrt(64) = 25 %, the last point of the first species.
  expect(picture).toContain('25\u00a0% at 64 stations');
  expect(picture).not.toContain('NaN');
});

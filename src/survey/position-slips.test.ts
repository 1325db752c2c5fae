import { describe, expect, test } from 'vitest';
import { near } from '../maths/nearness.ts';
import { distanceBetweenM } from '../planning/ground/geodesic.ts';
import { reviewSlips, writeSuggestion } from './position-slips.ts';

const planned = { latitudeDeg: -17.75, longitudeDeg: 177.4 };
const review = (latitude: string, longitude: string, plan = planned) =>
  reviewSlips({ latitude, longitude, planned: plan, distanceM: distanceBetweenM });

describe('a position away from its plan', () => {
  // Scenario 7: planned 17.750 S, typed 17.570 S: 19.9 km; swapped digits 17.750?
  test('17.570 S for 17.750 S is 19.9 km away, with swapped figures suggested', () => {
    const { typedDistanceM, suggestions } = review('17.570 S', '177.400 E');
    expect((typedDistanceM! / 1000).toFixed(1)).toBe('19.9');
    expect(suggestions[0]).toMatchObject({
      slip: 'digits-swapped',
      text: '17.750 S, 177.400 E',
      distanceM: 0,
    });
    expect(writeSuggestion(suggestions[0]!)).toBe('17° 45.000′ S, 177° 24.000′ E');
  });

  // Scenario 7: 17 45.30' typed as 17 45' 30" gives 369 m and a question. (Vector rows: 0.2' of latitude.)
  test('45.30 minutes typed as 45 minutes 30 seconds is 369 m away', () => {
    const plan = { latitudeDeg: -(17 + 45.3 / 60), longitudeDeg: 177.4 };
    const { typedDistanceM, suggestions } = review(`17 45' 30" S`, `177 24' 00" E`, plan);
    expect(typedDistanceM!.toFixed(0)).toBe('369');
    expect(suggestions[0]!.slip).toBe('decimal-minutes-typed-as-seconds');
    near(suggestions[0]!.position.latitudeDeg, plan.latitudeDeg, 1e-12);
  });

  // By hand: 45' 18" is 45.3'; somebody typed 45.18'.
  test('45 minutes 18 seconds typed as 45.18 minutes', () => {
    const { suggestions } = review('17 45.18 S', '177 24.00 E', {
      latitudeDeg: -17.755,
      longitudeDeg: 177.4,
    });
    expect(suggestions[0]!.slip).toBe('seconds-typed-as-decimal-minutes');
  });

  test('17 45.30 typed as 17.4530 degrees', () => {
    const { suggestions } = review('17.4530 S', '177.2400 E', { latitudeDeg: -17.755, longitudeDeg: 177.4 });
    expect(suggestions[0]!.slip).toBe('minutes-typed-as-decimal-degrees');
  });

  test.each([
    ['17.75', '177.4'],
    ['17.75 N', '177.4 E'],
    ['17.75 N', '177.4 W'],
    ['-17.75', '-177.4'],
  ])('%s %s has lost its hemisphere', (latitude, longitude) => {
    expect(review(latitude, longitude).suggestions[0]).toMatchObject({
      slip: 'hemisphere-missing',
      distanceM: 0,
    });
  });

  test('longitude typed as latitude is no position, and is exchanged', () => {
    const { typedDistanceM, suggestions } = review('177.4', '-17.75');
    expect(typedDistanceM).toBeNull();
    expect(suggestions[0]).toMatchObject({ slip: 'latitude-longitude-exchanged', distanceM: 0 });
  });

  test('exchanged where both could be either', () => {
    const { suggestions } = review('43.2', '12.6', { latitudeDeg: 12.6, longitudeDeg: 43.2 });
    expect(suggestions[0]!.slip).toBe('latitude-longitude-exchanged');
  });
});

test('a position near its plan is not questioned', () => {
  // By hand: 0.0002 degrees of latitude are 22 m.
  const { typedDistanceM, suggestions } = review('17.7502 S', '177.4 E');
  expect(typedDistanceM).toBeGreaterThan(20);
  expect(suggestions).toEqual([]);
});

test('a position that no single slip explains gets no suggestion', () => {
  expect(review('12.111 S', '150.222 E').suggestions).toEqual([]);
});

import { describe, expect, test } from 'vitest';
import l3 from '../../../test/vectors/l3_wmm2025.json' with { type: 'json' };
import l3b from '../../../test/vectors/l3b_wmm2025_coefficients.json' with { type: 'json' };
import { near } from '../../maths/nearness.ts';
import { declinationAt, magneticBearingDeg, trueBearingDeg, yearOf } from './declination.ts';

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
const { data, expected } = l3;
const published = data.year.map((year, i) => ({
  year,
  latitudeDeg: data.lat[i]!,
  longitudeDeg: data.lon[i]!,
  heightKm: data.alt_km[i]!,
  declinationDeg: expected.D[i]!,
  horizontalNanotesla: Math.hypot(expected.X[i]!, expected.Y[i]!),
}));

describe('the compass', () => {
  // Authority: vector l3, WMM2025 technical report (read): printed to 0.01 degrees and 0.1 nT.
  test.each(published)('points $declinationDeg degrees off at $latitudeDeg $longitudeDeg in $year', (row) => {
    const found = declinationAt(row, { year: row.year }, row.heightKm);
    expect(Math.abs(found.declinationDeg - row.declinationDeg)).toBeLessThanOrEqual(0.00501);
    expect(Math.abs(found.horizontalNanotesla - row.horizontalNanotesla)).toBeLessThan(0.1);
  });

  // Authority: vector l3, further rows of the same model (read).
  test('agrees with further published rows', () => {
    const { extra, precise } = expected;
    extra.D.forEach((declinationDeg, i) => {
      const place = at(extra.lat[i]!, extra.lon[i]!);
      const found = declinationAt(place, { year: extra.year[i]! }, extra.alt_km[i]!);
      expect(Math.abs(found.declinationDeg - declinationDeg)).toBeLessThanOrEqual(0.00501);
    });
    const found = declinationAt(at(precise.lat, precise.lon), { year: precise.year }, precise.alt_km);
    expect(Math.abs(found.horizontalNanotesla - Math.hypot(precise.X, precise.Y))).toBeLessThan(0.01);
  });

  // Authority: vector l3, the agency's own calculator on 4 July 2026 (read), to 5 decimals; a day is 0.0003 degrees.
  test('agrees with the agency calculator of 4 July 2026', () => {
    const { online_2026_07_04: online } = expected;
    online.D.forEach((declinationDeg, i) => {
      const found = declinationAt(at(online.lat[i]!, online.lon[i]!), { isoDate: '2026-07-04' });
      expect(Math.abs(found.declinationDeg - declinationDeg)).toBeLessThan(0.005);
    });
  });

  // Authority: vector l3b, an independent synthesis from the coefficients.
  test.each(l3b.expected.declination)('points $D degrees off in the tropics at $place', (row) => {
    near(declinationAt(at(row.lat, row.lon), { year: row.year }).declinationDeg, row.D, 1e-6);
  });

  // Scenario 11: declination 12.8 E, compass 090 = true 102.8.
  test('at 17.75 S 177.40 E compass 090 is true 102.8', () => {
    const { declinationDeg } = declinationAt(at(-17.75, 177.4), { year: 2026.5 });
    expect(declinationDeg.toFixed(1)).toBe('12.8');
    expect(trueBearingDeg(90, declinationDeg).toFixed(1)).toBe('102.8');
    near(magneticBearingDeg(trueBearingDeg(90, declinationDeg), declinationDeg), 90, 1e-12);
    near(magneticBearingDeg(5, 12), 353, 1e-12);
  });

  test('says when the day lies outside the years of the model', () => {
    const place = at(-17.75, 177.4);
    const cautions = (isoDate: string) => declinationAt(place, { isoDate }).cautions;
    expect(cautions('2025-01-01')).toEqual([]);
    expect(cautions('2029-12-31')).toEqual([]);
    expect(cautions('2024-12-31')).toEqual(['outside-model-validity']);
    expect(cautions('2030-01-02')).toEqual(['outside-model-validity']);
  });

  // Authority: vector l3 (row 2025, 80 N 0 E: horizontal 6523 nT; the caution zone begins below 6000 nT).
  test('is not to be trusted near the magnetic poles', () => {
    expect(declinationAt(at(80, 0), { year: 2025 }).cautions).toEqual([]);
    expect(declinationAt(at(85, -130), { year: 2025 }).cautions).toEqual(['weak-horizontal-field']);
  });
});

// By hand: 182 of 365 days before 2 July 2026; 2028 has 366.
test('a day is a part of its own year', () => {
  near(yearOf('2026-07-02'), 2026 + 182 / 365, 1e-12);
  near(yearOf('2028-12-31'), 2028 + 365 / 366, 1e-12);
});

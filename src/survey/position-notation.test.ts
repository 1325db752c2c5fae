import { describe, expect, test } from 'vitest';
import { near } from '../maths/nearness.ts';
import { positionOfUtm } from '../planning/ground/utm.ts';
import {
  readPosition,
  writeDecimalDegrees,
  writeDegreesMinutes,
  writePosition,
} from './position-notation.ts';

// Authority for all: 17.755 degrees are 17 degrees 45.3 minutes are 17 degrees 45 minutes 18 seconds (by hand: 0.755 x 60, 0.3 x 60).
const latitudeDeg = -17.755;
const longitudeDeg = 177.4;

describe('a position is read', () => {
  test.each([
    ['-17.755, 177.4'],
    ['-17.755 177.4'],
    ['-17.755;177.4'],
    ['-17.755\t177.4'],
    ['−17.755, 177.4'],
    ['–17.755 / 177.4'],
    ['-17,755; 177,4'],
    ['-17,755, 177,4'],
    ['-17,755 177,4'],
    ['17.755S 177.4E'],
    ['17.755° S, 177.400° E'],
    ['S17.755 E177.4'],
    ['s 17,755 e 177,4'],
    ['177.4 E, 17.755 S'],
    ['E 177.4, S 17.755'],
    ['17.755 South 177.4 East'],
    ['Lat: -17.755 Long: 177.4'],
    ['lon=177.4 lat=-17.755'],
    ['Latitude -17.755, Longitude 177.4'],
    ['17 45.3 S 177 24 E'],
    ["17°45.3'S 177°24.0'E"],
    ['17° 45.300′ S, 177° 24.000′ E'],
    ['17º45,3’S 177º24,0’E'],
    ['17*45.3´S 177*24.0´E'],
    ["S 17° 45.3' E 177° 24'"],
    ['S17 45.3, E177 24.0'],
    ["-17°45.3' 177°24.0'"],
    ['-17 45.3 177 24'],
    ['17 deg 45.3 min S, 177 deg 24 min E'],
    ['1745.300S 17724.000E'],
    ['17°45\'18"S 177°24\'00"E'],
    ["17°45'18''S 177°24'0''E"],
    ['17° 45′ 18″ S, 177° 24′ 0″ E'],
    ['17°45’18”S, 177°24’00”E'],
    ['17 45 18 S 177 24 00 E'],
    ['17:45:18 S 177:24:00 E'],
    ['-17 45 18 177 24 0'],
    ['17-45-18S 177-24-00E'],
    ['177°24\'00"E 17°45\'18"S'],
    ['１７．７５５S １７７．４E'],
    ['17.755S\n177.4E'],
  ])('from %s', (text) => {
    const reading = readPosition(text);
    expect(reading.refusal).toBeNull();
    near(reading.position!.latitudeDeg, latitudeDeg, 1e-12);
    near(reading.position!.longitudeDeg, longitudeDeg, 1e-12);
  });

  test.each([
    ['17.755, 177.4', ['no-hemisphere']],
    ['-17.755 S, 177.4 E', ['sign-and-letter']],
    ['-17, 177.4', ['no-hemisphere', 'whole-degrees']],
    ['-17,177', ['whole-degrees', 'no-hemisphere']],
    ['1745.300S 17724.000E', ['joined-minutes']],
    ['-17 45.3; 177.4', ['no-hemisphere', 'mixed-notations']],
  ])('from %s, with what was taken for granted', (text, cautions) => {
    const reading = readPosition(text);
    expect(reading.refusal).toBeNull();
    expect(reading.cautions.toSorted()).toEqual(cautions.toSorted());
  });

  test.each([
    ['', 'empty'],
    ['north of the pass', 'not-understood'],
    ['17.755 S', 'letters-do-not-fit'],
    ['-17.755', 'one-coordinate-only'],
    ['17.755 E, 177.4 S', 'degrees-out-of-range'],
    ['-17,75,177,4', 'ambiguous-commas'],
    ['-17.755 N, 177.4 E', 'sign-against-letter'],
    ['17.755 S, 177.4 O', 'letter-o'],
    ['17 75.3 S, 177 24 E', 'minutes-out-of-range'],
    ['17 45 60 S, 177 24 0 E', 'minutes-out-of-range'],
    ['17.5 30 S, 177 24 E', 'fraction-before-last-part'],
    ['95 S, 177 E', 'degrees-out-of-range'],
    ['1, 2, 3', 'too-many-numbers'],
    ['17 45 18 177 24', 'not-understood'],
    ['60K 542383 8037290', 'utm-not-converted'],
  ])('%s is refused: %s', (text, refusal) => {
    const reading = readPosition(text);
    expect(reading.position).toBeNull();
    expect(reading.refusal).toBe(refusal);
  });

  test('longitude first, without letters, is refused with the exchange as a suggestion', () => {
    const reading = readPosition('177.4, -17.755');
    expect(reading).toMatchObject({ position: null, refusal: 'degrees-out-of-range' });
    expect(reading.suggestion).toBe('17° 45.300′ S, 177° 24.000′ E');
  });
});

describe('UTM', () => {
  // Authority: gdaltransform 3.6.2 (PROJ) from EPSG:327xx or 326xx to EPSG:4326, printed to 12 decimals or more.
  test.each([
    ['1K 637000 8037000', -17.7500188112574, -175.707768410896],
    ['zone 60 S, 542383.123 mE 8037290.5 mN', -17.7512432772392, 177.399800180017],
    ['60S 166021.4 9990000', -0.0903483095697862, 173.999995905082],
    ['55N 300000E 900000N', 8.13797644506454, 145.184782467414],
    ['UTM 37L 750000 9000000', -9.03950880763539, 41.2741814435948],
  ])('%s is read to a millimetre', (text, north, east) => {
    const { position } = readPosition(text, positionOfUtm);
    // 1e-8 degrees are 1.1 mm.
    expect(Math.abs(position!.latitudeDeg - north)).toBeLessThan(1e-8);
    expect(Math.abs(position!.longitudeDeg - east)).toBeLessThan(1e-8);
  });

  test('without a hemisphere, or out of its zone, is refused', () => {
    const refusal = (text: string) => readPosition(text, positionOfUtm).refusal;
    expect(refusal('60 542383 8037290')).toBe('utm-without-hemisphere');
    expect(refusal('61K 542383 8037290')).toBe('utm-out-of-range');
    expect(refusal('60K 942383 8037290')).toBe('utm-out-of-range');
    expect(readPosition('60S 542383 8037290', positionOfUtm).cautions).toEqual(['utm-letter-as-hemisphere']);
  });
});

describe('a position is written', () => {
  test('in degrees and decimal minutes, and read back as the same place', () => {
    const text = writePosition({ latitudeDeg, longitudeDeg });
    expect(text).toBe('17° 45.300′ S, 177° 24.000′ E');
    near(readPosition(text).position!.latitudeDeg, latitudeDeg, 1e-12);
  });

  // By hand: 59.9996 minutes round to 60.000, which is the next degree.
  test('never with sixty minutes', () => {
    expect(writeDegreesMinutes(-(17 + 59.9996 / 60), 'latitude')).toBe('18° 00.000′ S');
    expect(writeDegreesMinutes(-0.000001, 'longitude')).toBe('000° 00.000′ E');
    expect(writeDegreesMinutes(5.5, 'latitude', 0)).toBe('05° 30′ N');
  });

  test('in decimal degrees', () => {
    expect(writeDecimalDegrees({ latitudeDeg, longitudeDeg })).toBe('-17.75500, 177.40000');
    expect(writeDecimalDegrees({ latitudeDeg: -0.000001, longitudeDeg: -179.5 }, 4)).toBe(
      '0.0000, -179.5000',
    );
  });

  // Second way: the text is read again; three decimals of a minute are at most 0.93 m off in each direction.
  test('within a metre of where it is, everywhere', () => {
    for (let i = 0; i < 400; i++) {
      const place = { latitudeDeg: -89.9 + i * 0.44987, longitudeDeg: -179.9 + i * 0.899321 };
      const back = readPosition(writePosition(place));
      expect(back.cautions).toEqual([]);
      expect(Math.abs(back.position!.latitudeDeg - place.latitudeDeg)).toBeLessThanOrEqual(
        0.0005 / 60 + 1e-9,
      );
      expect(Math.abs(back.position!.longitudeDeg - place.longitudeDeg)).toBeLessThanOrEqual(
        0.0005 / 60 + 1e-9,
      );
    }
  });
});

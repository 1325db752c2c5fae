import { describe, expect, it } from 'vitest';
import { type Station, stationSchema } from '../../survey/words.ts';
import { readMetres, stationAsWritten, writtenText } from './written-station.ts';

const place = {
  survey: { starts: '2026-11-01', ends: '2026-11-05' },
  names: {
    date: 'Date',
    timeStart: 'Start',
    timeEnd: 'End',
    position: 'Position',
    depthM: 'Depth, m',
    visibilityM: 'Visibility, m',
  },
};
const uuid = '0199a000-0000-7000-8000-000000000001';
const empty: Station = {
  ...(Object.fromEntries(Object.keys(stationSchema.shape).map((key) => [key, null])) as unknown as Station),
  id: uuid,
  surveyId: uuid,
  stratumId: uuid,
  code: 'S1',
  date: '2026-11-02',
};

describe('the head of a slate as it was written', () => {
  it('a position in degrees and minutes goes into the book as degrees', () => {
    const station = stationAsWritten(empty, { position: '17 45.300 S 177 24.0 E' }, place);
    // By hand: 45.3 / 60 = 0.755 south; 24 / 60 = 0.4 east.
    expect(station.latitudeDeg).toBeCloseTo(-17.755, 10);
    expect(station.longitudeDeg).toBeCloseTo(177.4, 10);
    expect(stationSchema.parse(station)).toEqual(station);
    expect(writtenText('position', station, {})).toBe('17° 45.300′ S, 177° 24.000′ E');
  });

  it('what cannot be read is kept in the note, word for word, and is no number', () => {
    const written = { position: '17 45.3 S', depthM: '12 or 13', visibilityM: '8,5 m' };
    const station = stationAsWritten({ ...empty, note: 'swell' }, written, place);
    expect(station).toMatchObject({ latitudeDeg: null, longitudeDeg: null, depthM: null, visibilityM: 8.5 });
    expect(station.note).toBe('swell; Position: 17 45.3 S; Depth, m: 12 or 13');
  });

  it('cells that nobody typed in stay as the book has them, to the last digit', () => {
    const standing: Station = {
      ...empty,
      latitudeDeg: -17.7551234,
      longitudeDeg: 177.4,
      positionSource: 'gps',
      depthM: 4,
    };
    expect(stationAsWritten(standing, {}, place)).toEqual(standing);
    const retyped = { position: writtenText('position', standing, {}) };
    expect(stationAsWritten(standing, retyped, place)).toEqual(standing);
  });

  it('an emptied cell is unknown again, and a new position is no longer the one from the receiver', () => {
    const standing: Station = {
      ...empty,
      latitudeDeg: -17,
      longitudeDeg: 177,
      positionSource: 'gps',
      depthM: 4,
    };
    const emptied = stationAsWritten(standing, { position: ' ', depthM: '' }, place);
    expect(emptied).toMatchObject({
      latitudeDeg: null,
      longitudeDeg: null,
      positionSource: null,
      depthM: null,
    });
    expect(stationAsWritten(standing, { position: '18 S 177 E' }, place).positionSource).toBeNull();
  });

  it('day and times are read, and what is no day or no time is in the note beside the day that stood there', () => {
    const read = stationAsWritten(empty, { date: '3/11/2026', timeStart: '810', timeEnd: '9h05' }, place);
    expect(read).toMatchObject({ date: '2026-11-03', timeStart: '08:10', timeEnd: '09:05', note: null });
    const unread = stationAsWritten(empty, { date: '33/11', timeStart: 'after lunch' }, place);
    expect(unread).toMatchObject({ date: '2026-11-02', timeStart: null });
    expect(unread.note).toBe('Date: 33/11; Start: after lunch');
    expect(stationAsWritten({ ...empty, timeEnd: '09:00' }, { timeEnd: ' ' }, place).timeEnd).toBeNull();
  });

  it('metres are read with point or comma, and nothing is guessed', () => {
    expect(['4', '4.5', '4,5 m', '0'].map(readMetres)).toEqual([4, 4.5, 4.5, 0]);
    expect(['', '-4', '4-5', '4 ft', 'about 4'].map(readMetres)).toEqual([null, null, null, null, null]);
  });
});

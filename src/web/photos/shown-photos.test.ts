import { describe, expect, it } from 'vitest';
import type { PhotoInBook } from '../../tasks/sheets/photo-schemas.ts';
import { shownPhotos } from './shown-photos.ts';
import type { WaitingPhoto } from './waiting-photos.ts';

const one = 'a'.repeat(64);
const other = 'b'.repeat(64);
const file = {
  name: 'IMG_2.jpg',
  type: 'image/jpeg',
  bytes: 7,
  takenAt: '2026-09-30T16:20',
  clockOffset: null,
  orientation: 6,
} as const;
const inBook: PhotoInBook = {
  ...file,
  name: 'IMG_1.jpg',
  revision: 'r1',
  sha256: one,
  surveyId: 'survey',
  stationId: null,
  timeFrom: 'EXIF',
  matchedBy: null,
  note: null,
};
const waiting = (more: Partial<WaitingPhoto>): WaitingPhoto => ({
  requestId: 'request',
  sha256: one,
  surveyId: 'survey',
  file,
  picture: null,
  said: {},
  stationCode: null,
  base: null,
  who: 'Recorder A',
  addedAt: '2026-09-30T18:00:00Z',
  state: 'waiting',
  message: null,
  theirs: null,
  ...more,
});

describe('the photos a person sees', () => {
  it('are those of the book, with what was said of them here and is not there yet', () => {
    const said = waiting({ said: { stationId: 'S1', takenAt: null, note: 'wet' } });
    const [shown] = shownPhotos([inBook], [said]);
    const expected = { stationId: 'S1', matchedBy: 'by hand', takenAt: null, timeFrom: null, note: 'wet' };
    expect(shown).toMatchObject({ ...expected, revision: 'r1', waits: true });
  });

  it('are also those that only this laptop has, in the order in which all were taken', () => {
    const picture = new Blob(['bytes']);
    const added = waiting({
      sha256: other,
      picture,
      said: { stationId: 'S1' },
      file: { ...file, takenAt: '2026-09-30T08:00' },
    });
    const shown = shownPhotos([inBook, { ...inBook, sha256: 'c'.repeat(64), takenAt: null }], [added]);
    expect(shown.map(({ sha256 }) => sha256[0])).toEqual(['b', 'a', 'c']);
    expect(shown[0]).toMatchObject({
      stationId: 'S1',
      timeFrom: 'EXIF',
      revision: null,
      waits: true,
      picture,
    });
  });

  it('taken off here are without a station at once; a conflict leaves what the book says', () => {
    const matched = { ...inBook, stationId: 'S1', matchedBy: 'by hand' } as const;
    const off = waiting({ said: { stationId: null } });
    expect(shownPhotos([matched], [off])[0]).toMatchObject({ stationId: null, matchedBy: null });
    expect(shownPhotos([matched], [{ ...off, state: 'conflict' }])[0]).toMatchObject({
      stationId: 'S1',
      waits: false,
    });
  });
});

describe('a photo taken away here', () => {
  const away = { away: 'a picture of the lunch' };

  it('is seen no more, whether the book has it or its bytes still wait', () => {
    expect(shownPhotos([inBook], [waiting({ said: away })])).toEqual([]);
    const added = waiting({ sha256: other, picture: new Blob(['bytes']) });
    expect(shownPhotos([], [added, waiting({ sha256: other, said: away })])).toEqual([]);
  });

  it('is seen while somebody else said otherwise, or the book refused', () => {
    for (const state of ['conflict', 'refused'] as const) {
      expect(shownPhotos([inBook], [waiting({ said: away, state })])).toHaveLength(1);
    }
  });
});

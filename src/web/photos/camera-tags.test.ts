import { describe, expect, it } from 'vitest';
import { type CameraWrote, jpegWithDamagedExif, jpegWithExif } from '../../../test/jpeg-with-exif.ts';
import { cameraTags } from './camera-tags.ts';

const said = (wrote: CameraWrote | null) => cameraTags(jpegWithExif(wrote).buffer);
const nothing = { takenAt: null, clockOffset: null, orientation: null };

// The bytes follow EXIF 2.32 and TIFF 6.0 (`test/jpeg-with-exif.ts`); the reader is exifr, as on the screen.
describe('what a camera wrote', () => {
  it.each(['II', 'MM'] as const)('is read whichever end of its numbers comes first (%s)', async (order) => {
    const wrote = {
      dateTimeOriginal: '2026:09:30 16:20:05',
      offsetTimeOriginal: '+12:00',
      orientation: 6,
      order,
    };
    expect(await said(wrote)).toEqual({
      takenAt: '2026-09-30T16:20:05',
      clockOffset: '+12:00',
      orientation: 6,
    });
  });

  it('is the time on its own clock: neither its offset nor the zone of this laptop moves it', async () => {
    const wrote = { dateTimeOriginal: '2026:09:30 23:50:00' };
    for (const offsetTimeOriginal of ['+12:00', '-10:00']) {
      expect((await said({ ...wrote, offsetTimeOriginal })).takenAt).toBe('2026-09-30T23:50:00');
    }
    expect(await said(wrote)).toEqual({ ...nothing, takenAt: '2026-09-30T23:50:00' });
  });

  it.each([
    '0000:00:00 00:00:00',
    '    :  :     :  :  ',
    '2026:13:40 16:20:05',
    '2026-09-30T16:20:05',
    'yesterday',
  ])('is not said where the time is none: "%s"', async (dateTimeOriginal) => {
    expect((await said({ dateTimeOriginal, orientation: 1 })).takenAt).toBeNull();
  });

  it('is nothing without tags, and an orientation beyond 8 is none', async () => {
    expect(await said(null)).toEqual(nothing);
    expect(await said({ orientation: 9 })).toEqual(nothing);
  });

  it('is nothing where the tags are damaged, cut short or no picture at all: never an error', async () => {
    expect(await cameraTags(jpegWithDamagedExif().buffer)).toEqual(nothing);
    const whole = jpegWithExif({ dateTimeOriginal: '2026:09:30 16:20:05', orientation: 6 });
    for (let length = 0; length < whole.length; length += 1) {
      const { takenAt } = await cameraTags(whole.slice(0, length).buffer);
      expect([null, '2026-09-30T16:20:05']).toContain(takenAt);
    }
    expect(await cameraTags(new TextEncoder().encode('<script>').buffer)).toEqual(nothing);
  });
});

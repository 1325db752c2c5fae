import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checksumOf, identityFrom, sign, smallSurvey } from '../../../test/store-records.ts';
import { createBook } from '../../store/book-folder.ts';
import { verifyBook } from '../../store/verify-book.ts';
import { bringInPhotoNotes } from '../../tasks/sheets/old-photo-notes.ts';
import { oldPhotoNotes } from './old-photo-notes.ts';

const ids = identityFrom(61);
const signed = { who: 'Slateline', at: '2026-11-25T18:00:00.000Z', device: 'laptop 1', newId: ids };

/** A book as the version before wrote it: a picture and its note, for each of them. */
async function oldBook() {
  const folder = mkdtempSync(join(tmpdir(), 'old-photos-'));
  const store = await createBook(folder, {
    name: 'North',
    invented: true,
    at: '2026-09-30T08:00:00.000Z',
    bookId: ids(),
  });
  const survey = smallSurvey();
  await store.apply(
    survey.changes.filter(({ kind }) => kind !== 'photo'),
    sign('import'),
    ids,
  );
  const note = (picture: string, more: object) => {
    const sha256 = checksumOf(picture);
    writeFileSync(join(folder, 'photos', `${sha256}.jpg`), picture);
    const known = {
      sha256,
      type: 'image/jpeg',
      bytes: picture.length,
      takenAt: null,
      surveyId: null,
      stationId: null,
    };
    writeFileSync(join(folder, 'photos', `${sha256}.json`), JSON.stringify({ ...known, ...more }));
  };
  return { folder, store, survey, note };
}

test('notes of photos come into the book once, as one act, and no photo is lost', async () => {
  const { folder, store, survey, note } = await oldBook();
  const stationId = survey.of('station')[0]!.id;
  note('one', { name: 'IMG_1.jpg', takenAt: '2026-09-30T16:20', surveyId: survey.surveyId, stationId });
  note('two', { name: 'IMG_2.jpg' });
  // Its sheet was thrown away before anybody saved it.
  note('three', { name: 'IMG_3.jpg', surveyId: survey.surveyId, stationId: ids() });
  writeFileSync(join(folder, 'photos', `${'a'.repeat(64)}.json`), '{"sha256": "../../etc/passwd"}');
  const files = readdirSync(join(folder, 'photos'));
  expect(await bringInPhotoNotes(oldPhotoNotes(folder), store, signed)).toBe(3);
  const photos = (await store.all('photo')).toSorted((a, b) => (a.content.name < b.content.name ? -1 : 1));
  expect(photos.map((one) => [one.content.name, one.surveyId, one.stationId, one.content.matchedBy])).toEqual(
    [
      ['IMG_1.jpg', survey.surveyId, stationId, 'by hand'],
      ['IMG_2.jpg', null, null, null],
      ['IMG_3.jpg', survey.surveyId, null, null],
    ],
  );
  expect(photos[0]!.content).toMatchObject({ takenAt: '2026-09-30T16:20', timeFrom: 'EXIF' });
  expect(readdirSync(join(folder, 'photos'))).toEqual(files);
  // Again it changes nothing, also for a photo that was taken off its station since.
  const off = { ...photos[0]!, stationId: null };
  await store.apply([{ kind: 'photo', recordId: off.id, after: off }], sign('the wrong slate'), ids);
  expect(await bringInPhotoNotes(oldPhotoNotes(folder), store, signed)).toBe(0);
  expect((await store.all('photo')).every((one) => one.stationId === null)).toBe(true);
  await store.close();
  const { findings } = await verifyBook({ folder, backups: join(folder, 'backups') });
  expect(findings.filter(({ sound }) => !sound)).toEqual([]);
});

test('a note without its picture is nobody’s photo', async () => {
  const { folder, store, note } = await oldBook();
  expect(oldPhotoNotes(folder)).toEqual([]);
  note('one', { name: 'IMG_1.jpg', type: 'image/png' });
  expect(oldPhotoNotes(folder)).toEqual([]);
  await store.close();
});

import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { photoPaths } from './photo-files.ts';

// By hand: one picture of the book, one beside the book, one link to the folder beside it, one link in a circle.
test('photos behind a link are not the book’s: a link to a folder is not entered', () => {
  const home = mkdtempSync(join(tmpdir(), 'photos-'));
  const photos = join(home, 'book', 'photos');
  const beside = join(home, 'beside');
  mkdirSync(join(photos, 'day 1'), { recursive: true });
  mkdirSync(beside);
  writeFileSync(join(photos, 'day 1', 'slate.jpg'), 'ours');
  writeFileSync(join(beside, 'other.jpg'), 'not ours');
  symlinkSync(beside, join(photos, 'away'), 'dir');
  symlinkSync(photos, join(photos, 'day 1', 'circle'), 'dir');
  expect(photoPaths(join(home, 'book'))).toEqual(['day 1/slate.jpg']);
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pictureType } from './picture-type.ts';

const bytesOf = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

describe('the kind of a picture', () => {
  it('is read from a real file', () => {
    const png = readFileSync(join(import.meta.dirname, '../../docs/report.png'));
    expect(pictureType(png)).toBe('image/png');
  });

  // Authority: the signatures as the formats publish them (JFIF, RFC 9649 for WebP, ISO/IEC 23008-12, GIF89a, TIFF 6.0), from memory.
  it('is told by how the bytes begin', () => {
    expect(pictureType(bytesOf('\xff\xd8\xff\xe1..Exif'))).toBe('image/jpeg');
    expect(pictureType(bytesOf('RIFF\x24\0\0\0WEBPVP8 '))).toBe('image/webp');
    expect(pictureType(bytesOf('\0\0\0\x18ftypheic\0\0\0\0'))).toBe('image/heic');
    expect(pictureType(bytesOf('GIF89a\x01\0'))).toBe('image/gif');
    expect(pictureType(bytesOf('II*\0\x08\0\0\0'))).toBe('image/tiff');
  });

  it('is none for a page, a drawing with script, a film, a document, or nothing', () => {
    for (const text of [
      '<html>',
      '<svg xmlns=',
      '\0\0\0\x18ftypmp42',
      '%PDF-1.7',
      'RIFF\x24\0\0\0WAVE',
      '',
    ]) {
      expect([text, pictureType(bytesOf(text))]).toEqual([text, null]);
    }
  });
});

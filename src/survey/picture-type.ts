/** What kind of picture some bytes are, by how they begin; a name or a header can say anything. */

import type { PhotoContent } from './photo-words.ts';

/** Null when it is none that is kept. Signatures of the published formats, from memory; the tests hold real ones. */
export function pictureType(bytes: Uint8Array): PhotoContent['type'] | null {
  const text = (from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'image/jpeg';
  if (text(0, 8) === '\x89PNG\r\n\x1a\n') return 'image/png';
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return 'image/webp';
  if (text(4, 8) === 'ftyp' && heicBrands.has(text(8, 12))) return 'image/heic';
  if (text(0, 6) === 'GIF87a' || text(0, 6) === 'GIF89a') return 'image/gif';
  if (text(0, 4) === 'II*\0' || text(0, 4) === 'MM\0*') return 'image/tiff';
  return null;
}

const heicBrands: ReadonlySet<string> = new Set(['heic', 'heix', 'heim', 'heis', 'mif1', 'msf1']);

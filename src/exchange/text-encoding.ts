/** Which encoding the bytes of a text file are in, and their text in pieces. */

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/**
 * The encoding of a text: by its byte order mark, else UTF-16 by its zero bytes, else UTF-8 when every byte fits,
 * else Windows-1252, in which nearly any bytes have a meaning: whoever reads it so must say so.
 * Null when the bytes are no text: a zero byte outside UTF-16.
 */
export function encodingOf(bytes: Uint8Array): Encoding | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const wide = zeroBytes(bytes);
  if (wide !== null) return wide;
  if (bytes.includes(0)) return null;
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

/** A short text, whatever its encoding; bytes that are no text are read as UTF-8, and what reads them says so. */
export function decodedText(bytes: Uint8Array): string {
  return new TextDecoder(encodingOf(bytes) ?? 'utf-8').decode(bytes);
}

/** UTF-16 without a mark: nearly every second byte of an ordinary table is zero. */
function zeroBytes(bytes: Uint8Array): Encoding | null {
  const sampled = Math.min(bytes.length - (bytes.length % 2), 1000);
  const zeros = [0, 0];
  for (let i = 0; i < sampled; i++) if (bytes[i] === 0) zeros[i % 2]!++;
  const many = sampled * 0.35;
  if (sampled < 4) return null;
  if (zeros[1]! > many && zeros[0] === 0) return 'utf-16le';
  return zeros[0]! > many && zeros[1] === 0 ? 'utf-16be' : null;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    const decoder = new TextDecoder('utf-8', { fatal: true });
    for (const piece of piecesOf(bytes)) decoder.decode(piece);
    return true;
  } catch {
    return false;
  }
}

/** The text in one string when it is short, else in pieces of whole lines, each without its last line end. */
export function* textPieces(bytes: Uint8Array, encoding: Encoding, whole: boolean): Generator<string> {
  const decoder = new TextDecoder(encoding);
  if (whole || encoding.startsWith('utf-16')) yield decoder.decode(bytes);
  else for (const piece of piecesOf(bytes)) yield decoder.decode(piece);
}

/** Bytes that one piece has at most, if its lines are not longer. */
const pieceBytes = 64_000_000;
const lineFeed = 10;

function* piecesOf(bytes: Uint8Array): Generator<Uint8Array> {
  let start = 0;
  while (bytes.length - start > pieceBytes) {
    const end = bytes.indexOf(lineFeed, start + pieceBytes);
    if (end < 0) break;
    yield bytes.subarray(start, end);
    start = end + 1;
  }
  yield bytes.subarray(start);
}

/**
 * A JPEG by bytes, with the tags of a camera: what a photo of a slate is made of, without a camera.
 *
 * Layout: EXIF 2.32 (CIPA DC-008-2019), 4.5.4 (APP1) and 4.6 (tags); TIFF 6.0 (1992), section 2 (header, IFD, types);
 * the picture itself ITU-T T.81 (1992), annex B (markers), K.3 (the usual DC Huffman table), from memory; that a real
 * browser shows it and tells its size is tested in `test/screens/photos.test.ts`.
 */

export interface CameraWrote {
  /** "2026:09:30 16:20:05", tag 0x9003 DateTimeOriginal. */
  readonly dateTimeOriginal?: string;
  /** "+12:00", tag 0x9011 OffsetTimeOriginal. */
  readonly offsetTimeOriginal?: string;
  /** 1 to 8, tag 0x0112 Orientation. */
  readonly orientation?: number;
  /** Order of bytes: "II" little end first, "MM" big end first. */
  readonly order?: 'II' | 'MM';
}

/** A grey picture of so many blocks of 8 x 8 points, with an APP1 segment where a camera wrote anything. */
export function jpegWithExif(
  wrote: CameraWrote | null,
  { blocksWide = 4, blocksHigh = 2, grey = 0 } = {},
): Uint8Array<ArrayBuffer> {
  const exif = wrote === null ? [] : segment(0xe1, [...latin('Exif\0\0'), ...tiff(wrote)]);
  const { head, scan } = greyPicture(blocksWide, blocksHigh, grey);
  return Uint8Array.from([0xff, 0xd8, ...exif, ...head, ...scan, 0xff, 0xd9]);
}

/** Its APP1 segment with the offset of the first IFD pointing far outside: damaged as half-written files are. */
export function jpegWithDamagedExif(): Uint8Array<ArrayBuffer> {
  const whole = jpegWithExif({ dateTimeOriginal: '2026:09:30 16:20:05', order: 'MM' });
  const tiffAt = 12;
  whole.set([0x7f, 0xff, 0xff, 0xf0], tiffAt + 4);
  return whole;
}

interface Entry {
  readonly tag: number;
  readonly type: 'ascii' | 'short' | 'long';
  readonly value: string | number;
}

/** Header, IFD 0 with the orientation and the pointer to the Exif IFD, Exif IFD with the times. */
function tiff({ order = 'II', ...wrote }: CameraWrote): number[] {
  const header = [...latin(order), ...number(42, 2, order), ...number(8, 4, order)];
  const first: Entry[] = [
    ...(wrote.orientation === undefined
      ? []
      : [{ tag: 0x0112, type: 'short', value: wrote.orientation } as const]),
    { tag: 0x8769, type: 'long', value: 0 },
  ];
  const times: Entry[] = [
    ...(wrote.dateTimeOriginal === undefined
      ? []
      : [{ tag: 0x9003, type: 'ascii', value: wrote.dateTimeOriginal } as const]),
    ...(wrote.offsetTimeOriginal === undefined
      ? []
      : [{ tag: 0x9011, type: 'ascii', value: wrote.offsetTimeOriginal } as const]),
  ];
  const exifAt = 8 + ifd(first, 8, order).length;
  const pointed = first.map((entry) => (entry.tag === 0x8769 ? { ...entry, value: exifAt } : entry));
  return [...header, ...ifd(pointed, 8, order), ...ifd(times, exifAt, order)];
}

/** Number of entries, twelve bytes for each, no next IFD, then the values that are longer than four bytes. */
function ifd(entries: readonly Entry[], at: number, order: 'II' | 'MM'): number[] {
  const dataAt = at + 2 + 12 * entries.length + 4;
  const rows: number[] = [];
  const data: number[] = [];
  for (const { tag, type, value } of entries) {
    const bytes =
      typeof value === 'string' ? latin(`${value}\0`) : number(value, type === 'short' ? 2 : 4, order);
    const kind = { ascii: 2, short: 3, long: 4 }[type];
    const count = typeof value === 'string' ? bytes.length : 1;
    const inPlace =
      bytes.length <= 4 ? [...bytes, 0, 0, 0, 0].slice(0, 4) : number(dataAt + data.length, 4, order);
    if (bytes.length > 4) data.push(...bytes, ...(bytes.length % 2 === 1 ? [0] : []));
    rows.push(...number(tag, 2, order), ...number(kind, 2, order), ...number(count, 4, order), ...inPlace);
  }
  return [...number(entries.length, 2, order), ...rows, 0, 0, 0, 0, ...data];
}

/** Baseline, one component: every block has a difference of no bits to the block before it, and nothing else. */
function greyPicture(blocksWide: number, blocksHigh: number, grey: number) {
  const quantization = segment(0xdb, [0, ...Array<number>(64).fill(1)]);
  const frame = segment(0xc0, [
    8,
    ...number(8 * blocksHigh, 2, 'MM'),
    ...number(8 * blocksWide, 2, 'MM'),
    1,
    1,
    0x11,
    0,
  ]);
  // Two codes of one bit each would use up the all-ones code; so the codes are 0 (nothing) and 10 (grey of 8 bits).
  const dc = segment(0xc4, [0x00, 1, 1, ...Array<number>(14).fill(0), 0, 8]);
  const ac = segment(0xc4, [0x10, 1, ...Array<number>(15).fill(0), 0]);
  const start = segment(0xda, [1, 1, 0x00, 0, 63, 0]);
  // The first block may carry a grey (its difference to nothing, 8 bits of 128 or more); the others follow it.
  const bits =
    (grey === 0 ? '0' : `10${(128 + (grey & 127)).toString(2)}`) +
    '0' +
    '00'.repeat(blocksWide * blocksHigh - 1);
  const filled = bits.padEnd(Math.ceil(bits.length / 8) * 8, '1');
  const scan = filled.match(/.{8}/g)!.flatMap((byte) => {
    const value = Number.parseInt(byte, 2);
    return value === 0xff ? [0xff, 0] : [value];
  });
  return { head: [...quantization, ...frame, ...dc, ...ac, ...start], scan };
}

function segment(marker: number, content: readonly number[]): number[] {
  return [0xff, marker, ...number(content.length + 2, 2, 'MM'), ...content];
}

function number(value: number, bytes: number, order: 'II' | 'MM'): number[] {
  const big = Array.from({ length: bytes }, (_, i) => (value >>> (8 * (bytes - 1 - i))) & 0xff);
  return order === 'MM' ? big : big.reverse();
}

function latin(text: string): number[] {
  return [...text].map((letter) => letter.charCodeAt(0));
}

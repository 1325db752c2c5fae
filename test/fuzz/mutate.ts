/** Damages files the way disks, cables, spreadsheets and tired people do; every step is drawn from one seed. */

import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { NamedBytes } from '../../src/exchange/sheets.ts';
import type { SeededRandom } from '../../src/maths/random.ts';

/** The file again, damaged in one to four places. */
export function mutated(file: NamedBytes, random: SeededRandom): NamedBytes {
  let bytes: Uint8Array = Uint8Array.from(file.bytes);
  const isZip = file.name.endsWith('.xlsx');
  for (let times = 1 + random.below(4); times > 0; times--) {
    const damages = isZip
      ? [damageBytes, damageZip, damageParts, damageParts]
      : [damageBytes, damageCells, damageCells];
    bytes = pick(damages, random)(bytes, random);
  }
  return { name: file.name, bytes };
}

function pick<Item>(items: readonly Item[], random: SeededRandom): Item {
  return items[random.below(items.length)]!;
}

/** Bits that flipped, pieces that are missing, doubled or in the wrong place, a file that ends too early. */
function damageBytes(bytes: Uint8Array, random: SeededRandom): Uint8Array {
  if (bytes.length === 0) return Uint8Array.of(random.below(256));
  const at = random.below(bytes.length);
  const length = 1 + random.below(Math.min(40, bytes.length - at));
  const [before, piece, after] = [bytes.slice(0, at), bytes.slice(at, at + length), bytes.slice(at + length)];
  switch (random.below(6)) {
    case 0: {
      const flipped = Uint8Array.from(bytes);
      flipped[at]! ^= 1 << random.below(8);
      return flipped;
    }
    case 1:
      return joined(before, after);
    case 2:
      return joined(before, piece, piece, after);
    case 3:
      return before;
    case 4:
      return joined(
        before,
        Uint8Array.from({ length }, () => random.below(256)),
        after,
      );
    default:
      return joined(after, before);
  }
}

/** What people and spreadsheets put into cells. */
const nasty = [
  ...[
    '',
    ' ',
    '0',
    '-1',
    '1e308',
    '1e-308',
    'NaN',
    'Infinity',
    '0x10',
    '999',
    '-99999',
    '0.01',
    '1,234',
    '12,5',
  ],
  ...[
    '1.234,5',
    '12-14',
    '~20',
    '<1',
    '5+',
    '18 cm',
    '03/04/2026',
    '31/02/2026',
    '16-17 Sept 2011',
    '45356',
    '2026-02-30',
  ],
  ...[
    '=1+1',
    "'=1",
    '@x',
    '"',
    '""',
    '"open',
    'a"b',
    '\n',
    '\r',
    '\r\n',
    '\t',
    ';',
    ',',
    '\u0000',
    '\u2028',
    '\uFEFF',
  ],
  ...[
    'survey',
    'station',
    'count',
    'Total',
    'yes',
    'done',
    'lost',
    'not done',
    'sandfish',
    'Sandfish ',
    'sand fsh',
    '__proto__',
  ],
  ...[
    'constructor',
    'toString',
    'a'.repeat(40_000),
    '\\;',
    'x:y',
    '40:sand',
    '9'.repeat(400),
    '١٢',
    'é',
    '\ud800',
  ],
];

/** Cells replaced, rows doubled, dropped and swapped, headers repeated, titles above and sums below. */
function damageCells(bytes: Uint8Array, random: SeededRandom): Uint8Array {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe;
  const text = wide ? Buffer.from(bytes).toString('utf16le') : new TextDecoder().decode(bytes);
  const changed = damagedText(text, random);
  return wide ? new Uint8Array(Buffer.from(changed, 'utf16le')) : new TextEncoder().encode(changed);
}

function damagedText(text: string, random: SeededRandom): string {
  const rows = text.split('\n');
  const at = random.below(rows.length);
  const row = rows[at]!;
  switch (random.below(9)) {
    case 0:
    case 1:
    case 2: {
      const delimiter = row.includes(';') ? ';' : ',';
      const cells = row.split(delimiter);
      cells[random.below(cells.length)] = pick(nasty, random);
      rows[at] = cells.join(delimiter);
      break;
    }
    case 3:
      rows.splice(random.below(rows.length + 1), 0, row);
      break;
    case 4:
      rows.splice(at, 1);
      break;
    case 5:
      rows.splice(random.below(rows.length + 1), 0, rows[0]!);
      break;
    case 6:
      rows.push(pick(['Total,,,,12', 'seen by a tired person', ';;;', ',,,,', 'Note: x'], random));
      break;
    case 7:
      rows.unshift(pick(['Survey of the reef', ',,', '', 'a,b,c,d,e,f,g,h,i,j,k,l'], random));
      break;
    default:
      return text.replaceAll(
        pick(['\n', ',', ';', '"', '/', '2', 'S1'], random),
        pick(nasty, random).slice(0, 20),
      );
  }
  return rows.join('\n');
}

/** Numbers in the records of the zip: sizes, places, methods, counts. */
function damageZip(bytes: Uint8Array, random: SeededRandom): Uint8Array {
  const changed = Uint8Array.from(bytes);
  const view = new DataView(changed.buffer);
  const records: number[] = [];
  for (let at = 0; at + 22 <= changed.length; at++) {
    if (changed[at] === 0x50 && changed[at + 1] === 0x4b) records.push(at);
  }
  if (records.length === 0) return damageBytes(bytes, random);
  const at = pick(records, random) + 4 + random.below(40);
  const value = pick([0, 1, 8, 0xff, 0xffff, 0x7fffffff, 0xffffffff, random.below(2 ** 31)], random);
  if (at + 4 <= changed.length) view.setUint32(at, value >>> 0, true);
  return changed;
}

/** One part of the workbook unpacked, its text changed, and packed again, so that the damage reaches the sheets. */
function damageParts(bytes: Uint8Array, random: SeededRandom): Uint8Array {
  const parts = readZip(bytes);
  if (parts === null || parts.length === 0) return damageBytes(bytes, random);
  const part = pick(parts, random);
  const text = new TextDecoder().decode(part.content);
  part.content = new TextEncoder().encode(damagedXml(text, random));
  return writeZip(parts);
}

function damagedXml(text: string, random: SeededRandom): string {
  const tags = [...text.matchAll(/<[^>]+>|>[^<]+</g)];
  if (tags.length === 0) return text;
  const tag = pick(tags, random);
  const [start, end] = [tag.index, tag.index + tag[0].length];
  const around = (middle: string) => text.slice(0, start) + middle + text.slice(end);
  switch (random.below(6)) {
    case 0:
      return around('');
    case 1:
      return around(tag[0] + tag[0]);
    case 2:
      return around(`${tag[0].slice(0, 1)}${escaped(pick(nasty, random))}${tag[0].slice(-1)}`);
    case 3:
      return around(tag[0].replace(/\d+/, String(pick([0, -1, 7, 65_536, 1_048_577, 99_999_999], random))));
    case 4:
      return around(`${tag[0]}<f>1/0</f>`);
    default:
      return around(tag[0].replace(/"[^"]*"/, `"${escaped(pick(nasty, random)).slice(0, 50)}"`));
  }
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

interface ZipPart {
  readonly name: string;
  content: Uint8Array;
}

/** The parts of a zip whose directory is whole; null when it is not. A second, smaller reader than the program's. */
function readZip(bytes: Uint8Array): ZipPart[] | null {
  try {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    let end = bytes.length - 22;
    while (end >= 0 && view.getUint32(end, true) !== 0x06054b50) end--;
    let at = view.getUint32(end + 16, true);
    const parts: ZipPart[] = [];
    for (let i = view.getUint16(end + 10, true); i > 0; i--) {
      const [packed, nameLength] = [view.getUint32(at + 20, true), view.getUint16(at + 28, true)];
      const local = view.getUint32(at + 42, true);
      const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
      const data = bytes.subarray(from, from + packed);
      const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
      const content =
        view.getUint16(at + 10, true) === 0 ? data : inflateRawSync(data, { maxOutputLength: 1e7 });
      parts.push({ name, content: Uint8Array.from(content) });
      at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    }
    return parts;
  } catch {
    return null;
  }
}

/** A zip of these parts. The check sums are zero, which readers take as “not given”. */
export function writeZip(parts: readonly ZipPart[]): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { name, content } of parts) {
    const packed = deflateRawSync(content);
    const sizes = {
      packed: packed.length,
      unpacked: content.length,
      name: new TextEncoder().encode(name),
      offset,
    };
    const local = zipRecord(0x04034b50, sizes);
    pieces.push(local, packed);
    directory.push(zipRecord(0x02014b50, sizes));
    offset += local.length + packed.length;
  }
  const listed = joined(...directory);
  const end = new DataView(new ArrayBuffer(22));
  end.setUint32(0, 0x06054b50, true);
  end.setUint16(8, parts.length, true);
  end.setUint16(10, parts.length, true);
  end.setUint32(12, listed.length, true);
  end.setUint32(16, offset, true);
  return joined(...pieces, listed, new Uint8Array(end.buffer));
}

interface ZipSizes {
  readonly packed: number;
  readonly unpacked: number;
  readonly name: Uint8Array;
  readonly offset: number;
}

/** A local header, or the entry of the directory, which says the same with two bytes more before it. */
export function zipRecord(signature: number, { packed, unpacked, name, offset }: ZipSizes): Uint8Array {
  const inDirectory = signature === 0x02014b50;
  const header = new DataView(new ArrayBuffer(inDirectory ? 46 : 30));
  const shift = inDirectory ? 2 : 0;
  header.setUint32(0, signature, true);
  header.setUint16(4 + shift, 20, true);
  header.setUint16(8 + shift, 8, true);
  header.setUint32(18 + shift, packed, true);
  header.setUint32(22 + shift, unpacked, true);
  header.setUint16(26 + shift, name.length, true);
  if (inDirectory) header.setUint32(42, offset, true);
  return joined(new Uint8Array(header.buffer), name);
}

export function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(pieces));
}

/** What the directory of a zip file says about its parts, before anything is unpacked. */

import { maxUnpackedBytes, maxWorkbookParts } from './limits.ts';

/** Why a workbook is not unpacked; null when its directory promises sizes within the limits. */
export type ZipFault = 'not a zip' | 'too large';

const endSignature = 0x06054b50;
const partSignature = 0x02014b50;
const unknown32 = 0xffffffff;

/**
 * Reads the directory at the end of the file. The sizes stand for what will be unpacked, because the unpacker
 * stops any part that grows beyond the size its directory entry promises. Promises that cannot be
 * checked so (no size at all, or one in the wide form for files over 4 GB) are refused.
 */
export function faultOfZip(bytes: Uint8Array): ZipFault | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end < 0) return 'not a zip';
  const parts = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (parts === 0xffff || at === unknown32 || parts > maxWorkbookParts) return 'too large';
  let unpackedBytes = 0;
  for (let part = 0; part < parts; part++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== partSignature) return 'not a zip';
    const packed = view.getUint32(at + 20, true);
    const unpacked = view.getUint32(at + 24, true);
    if (unpacked === unknown32 || (unpacked === 0 && packed > 2)) return 'too large';
    unpackedBytes += unpacked;
    if (unpackedBytes > maxUnpackedBytes) return 'too large';
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return null;
}

/** The end record stands last, but a comment of up to 65 535 bytes may follow it. */
function endOfDirectory(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 65_535);
  for (let at = view.byteLength - 22; at >= lowest; at--) {
    if (view.getUint32(at, true) === endSignature) return at;
  }
  return -1;
}

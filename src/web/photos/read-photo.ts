/** A file from disk, camera or a dropped folder, read once: what it is, its checksum, what its camera wrote. */

import { pictureType } from '../../survey/picture-type.ts';
import { cameraTags } from './camera-tags.ts';
import type { WaitingPhoto } from './waiting-photos.ts';

export interface PhotoRead extends Pick<WaitingPhoto, 'sha256' | 'file'> {
  readonly state: 'read';
  readonly picture: Blob;
}

type NotRead = { readonly state: 'no picture' | 'too large' | 'unreadable' };

/** As much as the book takes. */
export const mostMb = 40;

export async function readPhoto(given: File): Promise<PhotoRead | NotRead> {
  if (given.size > mostMb * 1024 * 1024) return { state: 'too large' };
  // A card that was pulled out, a file that was moved: it cannot be read though it was dropped.
  const bytes = await given.arrayBuffer().catch(() => null);
  if (bytes === null) return { state: 'unreadable' };
  const type = pictureType(new Uint8Array(bytes));
  if (type === null) return { state: 'no picture' };
  const sha256 = hexadecimal(await crypto.subtle.digest('SHA-256', bytes));
  const file = { name: given.name, type, bytes: bytes.byteLength, ...(await cameraTags(bytes)) };
  return { state: 'read', sha256, file, picture: new Blob([bytes], { type }) };
}

function hexadecimal(digest: ArrayBuffer): string {
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

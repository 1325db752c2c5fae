/** Adds files to the photos: each is read, kept on this disk and sent. Says what became of every one. */

import type { Answer } from '../state/api.ts';
import { newId } from '../state/new-id.ts';
import { addPhoto, sendUnkept } from './photo-sender.svelte.ts';
import { type PhotoRead, readPhoto } from './read-photo.ts';
import { smallPicture } from './small-pictures.ts';
import type { WaitingPhoto } from './waiting-photos.ts';

export interface PhotoTarget {
  readonly surveyId: string;
  /** Null where nobody has said it yet. */
  readonly station: { readonly id: string; readonly code: string } | null;
  readonly who: string;
}

export interface Added {
  /** Checksums, in the order of the files. */
  readonly added: string[];
  /** Names. */
  readonly notPictures: string[];
  readonly tooLarge: string[];
  readonly unreadable: string[];
  /** No room in the browser, and the book did not answer. */
  readonly notKept: string[];
  readonly refused: { readonly name: string; readonly message: string }[];
}

export async function addPhotos(
  files: readonly File[],
  target: PhotoTarget,
  onRead: (read: number) => void,
): Promise<Added> {
  const became: Added = {
    added: [],
    notPictures: [],
    tooLarge: [],
    unreadable: [],
    notKept: [],
    refused: [],
  };
  let drawn: Promise<unknown> = Promise.resolve();
  for (const [i, file] of files.entries()) {
    onRead(i + 1);
    const read = await readPhoto(file);
    if (read.state === 'read') {
      await addOne(read, target, became);
      // From the bytes at hand, while the next file is read; never more than one behind, for they are large.
      await drawn;
      drawn = smallPicture(read, () => true);
    } else if (read.state === 'no picture') became.notPictures.push(file.name);
    else if (read.state === 'too large') became.tooLarge.push(file.name);
    else became.unreadable.push(file.name);
  }
  return became;
}

async function addOne(read: PhotoRead, target: PhotoTarget, became: Added): Promise<void> {
  const photo = asWaiting(read, target);
  try {
    await addPhoto(photo);
    became.added.push(photo.sha256);
  } catch {
    // No room in this browser (QuotaExceededError), or one that keeps nothing: the book itself may take it.
    told(await sendUnkept(photo), photo, became);
  }
}

function told(answer: Answer<unknown>, { sha256, file }: WaitingPhoto, became: Added): void {
  if (answer.state === 'ok') became.added.push(sha256);
  else if (answer.state === 'unreachable') became.notKept.push(file.name);
  else became.refused.push({ name: file.name, message: answer.message });
}

function asWaiting(
  { sha256, file, picture }: PhotoRead,
  { surveyId, station, who }: PhotoTarget,
): WaitingPhoto {
  return {
    requestId: newId(),
    sha256,
    surveyId,
    file,
    picture,
    said: station === null ? {} : { stationId: station.id },
    stationCode: station?.code ?? null,
    base: null,
    who,
    addedAt: new Date().toISOString(),
    state: 'waiting',
    message: null,
    theirs: null,
  };
}

/** Brings waiting photos into the book, in the order of adding, as soon as it answers. One tab sends at a time. */

import { photoSavedSchema, stalePhotoSchema } from '../../tasks/sheets/photo-schemas.ts';
import type { Answer } from '../state/api.ts';
import { asked } from '../state/book.svelte.ts';
import { newId } from '../state/new-id.ts';
import { photoRequest } from './photo-request.ts';
import {
  baseOf,
  changeWaiting,
  dropSayings,
  type PhotoSaying,
  photoSent,
  type WaitingPhoto,
  waitingPhotosNow,
} from './waiting-photos.ts';

let photos: readonly WaitingPhoto[] = $state.raw([]);

export const waitingPhotos = {
  get all() {
    return photos;
  },
};

const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('slateline-photos') : null;

/** To be called once; returns how to stop. */
export function watchPhotos(): () => void {
  const again = () => void sendPhotos();
  void readWaiting().then(again);
  const timer = setInterval(again, 5_000);
  addEventListener('online', again);
  channel?.addEventListener('message', readWaiting);
  return () => {
    clearInterval(timer);
    removeEventListener('online', again);
    channel?.removeEventListener('message', readWaiting);
  };
}

/** Resolves when the photo is on this disk; sending comes after. Throws when the browser has no room for it. */
export async function addPhoto(photo: WaitingPhoto): Promise<void> {
  await changeWaiting([photo]);
  await told();
  void sendPhotos();
}

/** Straight into the book, for a browser that can keep nothing. */
export async function sendUnkept(photo: WaitingPhoto): Promise<Answer<unknown>> {
  const { path, asking } = photoRequest(photo, null);
  return asked(path, photoSavedSchema, asking);
}

export type Saying = Pick<WaitingPhoto, 'sha256' | 'surveyId' | 'file' | 'stationCode' | 'base' | 'who'> & {
  readonly said: PhotoSaying;
};

/** What a person says of a photo, whether it is in the book or waits itself. Never between two ends of one sending. */
export async function sayOfPhoto(saying: Saying): Promise<void> {
  await withLock(async () => {
    const standing = (await waitingPhotosNow()).findLast((one) => one.sha256 === saying.sha256);
    const requestId = newId();
    const fresh = { state: 'waiting', message: null, theirs: null, requestId } as const;
    // Whether its bytes have reached the book already, only the book can say: they go first, then it is taken away.
    const goesBehind =
      saying.said.away !== undefined && standing?.picture != null && standing.theirs === null;
    if (standing === undefined || goesBehind) {
      const base = goesBehind ? null : saying.base;
      await changeWaiting([{ ...saying, ...fresh, base, picture: null, addedAt: new Date().toISOString() }]);
    } else {
      const { stationCode, surveyId, who } = saying;
      const said = { ...standing.said, ...saying.said };
      const base = standing.theirs?.revision ?? standing.base;
      // The bytes are in the book where it answered with a photo of its own.
      const picture = standing.theirs === null ? standing.picture : null;
      const after = { ...standing, ...fresh, stationCode, surveyId, who, said, base, picture };
      await changeWaiting([after], { instead: standing.requestId });
    }
  });
  await told();
  void sendPhotos();
}

/** A person let what the book says stand, or has taken care of the file. */
export async function dropWaiting(requestId: string): Promise<void> {
  await changeWaiting([], { instead: requestId });
  await told();
}

let again = false;
let sending = false;

async function sendPhotos(): Promise<void> {
  again = true;
  if (sending) return;
  sending = true;
  try {
    while (again) {
      again = false;
      if (await hasUnsent()) await withLock(sendAll);
    }
  } finally {
    sending = false;
  }
}

async function hasUnsent(): Promise<boolean> {
  return (await waitingPhotosNow().catch(() => [])).some(({ state }) => state === 'waiting');
}

async function sendAll(): Promise<void> {
  const stuck = new Set<string>();
  for (const photo of await waitingPhotosNow()) {
    if (photo.state !== 'waiting' || stuck.has(photo.sha256)) {
      stuck.add(photo.sha256);
      continue;
    }
    if (await hasToWait(photo)) continue;
    const base = await baseOf(photo);
    const { path, asking } = photoRequest(photo, base);
    const answer = await asked(path, photoSavedSchema, asking);
    if (answer.state === 'unreachable' || (answer.state === 'refused' && answer.status >= 500)) break;
    if (answer.state === 'ok') {
      if (photo.said.away !== undefined) await dropSayings(photo.sha256);
      await photoSent(photo, { base, revision: answer.value.revision });
    }
    if (answer.state === 'refused') await refused(photo, answer);
    if (answer.state === 'refused') stuck.add(photo.sha256);
    await told();
  }
}

/** Taken away while its own bytes still wait: they go first, on another round, or wait for a person. */
async function hasToWait({ said, sha256 }: WaitingPhoto): Promise<boolean> {
  if (said.away === undefined) return false;
  return (await waitingPhotosNow()).some((one) => one.sha256 === sha256 && one.picture !== null);
}

async function refused(
  photo: WaitingPhoto,
  { status, code, message, body }: Extract<Answer<unknown>, { state: 'refused' }>,
): Promise<void> {
  if (code === 'no-such-station') return waitForSheet(photo);
  // The book never had it, or has it no more: that is what was wanted.
  if (code === 'no-such-photo' && photo.said.away !== undefined) return dropSayings(photo.sha256);
  const theirs = status === 409 ? (stalePhotoSchema.safeParse(body).data?.theirs ?? null) : null;
  await changeWaiting([{ ...photo, state: theirs === null ? 'refused' : 'conflict', message, theirs }]);
}

/** Its sheet is still being typed: the bytes go ahead, their match waits for the sheet. */
async function waitForSheet(photo: WaitingPhoto): Promise<void> {
  if (photo.picture === null) return;
  const { stationId, ...others } = photo.said;
  const ahead = { ...photo, requestId: newId(), said: others };
  const match = {
    ...photo,
    requestId: newId(),
    picture: null,
    base: null,
    said: { stationId: stationId ?? null },
  };
  await changeWaiting([ahead, match], { instead: photo.requestId });
  again = true;
}

async function readWaiting(): Promise<void> {
  photos = await waitingPhotosNow().catch(() => []);
}

async function told(): Promise<void> {
  await readWaiting();
  channel?.postMessage('changed');
}

async function withLock(work: () => Promise<void>): Promise<void> {
  if (!('locks' in navigator)) return work();
  await navigator.locks.request('slateline-photo-sender', work);
}

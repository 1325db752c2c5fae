/** The photos of one survey for a screen, read again whenever something of them changed; and where their pictures are. */

import { onDestroy } from 'svelte';
import { photoListSchema } from '../../tasks/sheets/photo-schemas.ts';
import { askOrKept } from '../state/book.svelte.ts';
import { waitingPhotos } from './photo-sender.svelte.ts';
import { type ShownPhoto, shownPhotos } from './shown-photos.ts';

export interface SurveyPhotos {
  readonly all: readonly ShownPhoto[];
  /** Whether they have been looked for. */
  readonly ready: boolean;
  /** After something was done straight in the book. */
  readAgain(): void;
  addressOf(photo: Pick<ShownPhoto, 'sha256' | 'picture'>): string;
}

const betweenMs = 250;

/** To be called while a component is made. */
export function surveyPhotos(surveyId: () => string): SurveyPhotos {
  let all: readonly ShownPhoto[] = $state.raw([]);
  let ready = $state(false);
  const { addressOf } = photoAddresses();
  let again = false;
  let reading = false;
  const read = async () => {
    again = true;
    if (reading) return;
    reading = true;
    while (again) {
      again = false;
      const id = surveyId();
      const list = await askOrKept(`/api/photos?surveyId=${id}`, photoListSchema);
      const own = waitingPhotos.all.filter((one) => one.surveyId === id);
      // Both at once, so that a photo on its way from here to there is never in neither.
      all = shownPhotos(list?.photos ?? [], own);
      ready = true;
      // A whole folder changes something for every photo; the page is drawn for many of them together.
      await new Promise((done) => setTimeout(done, betweenMs));
    }
    reading = false;
  };
  $effect(() => {
    surveyId();
    waitingPhotos.all;
    void read();
  });
  return {
    get all() {
      return all;
    },
    get ready() {
      return ready;
    },
    readAgain: () => void read(),
    addressOf,
  };
}

/** Pictures that only this laptop has get an address of this page, and keep it when the book has them too. */
export function photoAddresses(): Pick<SurveyPhotos, 'addressOf'> {
  const own = new Map<string, string>();
  onDestroy(() => {
    for (const address of own.values()) URL.revokeObjectURL(address);
  });
  return {
    addressOf: ({ sha256, picture }) => {
      if (picture !== null && !own.has(sha256)) own.set(sha256, URL.createObjectURL(picture));
      return own.get(sha256) ?? `/api/photos/${sha256}`;
    },
  };
}

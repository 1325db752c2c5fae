/** Whether a part of the screen is still there, for what comes back to it late: its own values are gone with it. */

import { onDestroy } from 'svelte';

/** To be called while the part is made. */
export function onScreen(): () => boolean {
  let isThere = true;
  onDestroy(() => {
    isThere = false;
  });
  return () => isThere;
}

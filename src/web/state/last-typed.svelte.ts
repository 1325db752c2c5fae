/** What the next sheet most likely shares with the last one of this evening. */

import type { Station } from '../../survey/words.ts';

type Shared = Pick<Station, 'stratumId' | 'date' | 'selection'>;

const place = 'slateline-last-typed';

interface LastTyped {
  station: Partial<Shared>;
  form: 'lines' | 'list';
  savedCode: string | null;
  /** Whether the rest of the head was unfolded. */
  headOpen: boolean;
}

export const lastTyped: LastTyped = $state({
  station: {},
  form: readForm(),
  savedCode: null,
  headOpen: false,
});

export function rememberTyped({ stratumId, date, selection, code }: Station, form: 'lines' | 'list'): void {
  lastTyped.station = { stratumId, date, selection };
  lastTyped.form = form;
  lastTyped.savedCode = code;
  try {
    localStorage.setItem(place, form);
  } catch {
    // The next sheet begins in the usual form.
  }
}

function readForm(): 'lines' | 'list' {
  try {
    return localStorage.getItem(place) === 'list' ? 'list' : 'lines';
  } catch {
    return 'lines';
  }
}

/** How the animals of a survey were counted, in the words in which published densities say it. */

import type { SurveyInHand } from '../../survey/observation.ts';
import type { CountMethod } from '../../survey/value-words.ts';

export interface MethodUsed {
  /** One, or several where a survey mixes them. */
  readonly methods: readonly CountMethod[];
  /** Widths of the belts that were searched, in metres, rising. */
  readonly beltWidthsM: readonly number[];
}

/** From the protocol's layout and what each station says of tow and night; belts where nothing says otherwise. */
export function methodUsed({ protocol, stations }: SurveyInHand): MethodUsed {
  const ofLayout =
    protocol?.layout === 'timed' ? 'timed search' : protocol?.layout === 'quadrats' ? 'quadrats' : 'belts';
  const methods = stations.map(({ record }): CountMethod => {
    if (record.mode === 'towed') return 'towed observer';
    return record.night === true ? 'night search' : ofLayout;
  });
  const widths = stations.flatMap(({ transects }) => transects.map(({ record }) => record.widthM));
  const beltWidthsM = [...new Set(widths.filter((width) => width !== null))].toSorted((a, b) => a - b);
  return { methods: [...new Set(methods)].toSorted(), beltWidthsM };
}

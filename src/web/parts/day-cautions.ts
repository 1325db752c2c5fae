/** What the dives of a day make one ask, beside the limits: only times and depths as typed are looked at. */

import type { DayContent } from '../../survey/day-words.ts';
import type { DiverDay } from '../../tasks/sheets/survey-schemas.ts';

export type Caution =
  | { readonly kind: 'overlap' | 'noDepth'; readonly diver: string }
  | { readonly kind: 'noLimit' };

export function dayCautions(content: DayContent, divers: readonly DiverDay[]): readonly Caution[] {
  const cautions: Caution[] = [];
  for (const { diver, shortestIntervalMin } of divers) {
    if (shortestIntervalMin !== null && shortestIntervalMin < 0) cautions.push({ kind: 'overlap', diver });
    const lacksDepth = content.dives.some((dive) => dive.diver === diver && dive.maxDepthM === null);
    if (content.limits.maxDepthM !== null && lacksDepth) cautions.push({ kind: 'noDepth', diver });
  }
  const typed = Object.values(content.limits).some((limit) => limit !== null);
  if (content.dives.length > 0 && !typed) cautions.push({ kind: 'noLimit' });
  return cautions;
}

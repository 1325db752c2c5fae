/** What was left out, in lines: belts of one station with one reason together. */

import type { DensityAnswer, LeftOut } from '../estimates/answers.ts';
import { sentence } from './catalogue/sentence.ts';

/** Empty when nothing was. */
export function leftOutLines(answers: readonly Pick<DensityAnswer, 'leftOut'>[]): readonly string[] {
  const groups = new Map<string, LeftOut[]>();
  for (const one of answers.flatMap((answer) => answer.leftOut)) {
    const { station: _, transect: __, ...why } = one.reason.parameters;
    const key = JSON.stringify([one.station, one.reason.code, why]);
    const group = groups.get(key) ?? [];
    if (group.every((other) => other.transect !== one.transect)) groups.set(key, [...group, one]);
  }
  if (groups.size === 0) return [];
  return ['', '  Left out:', ...[...groups.values()].map((group) => `  - ${groupInWords(group)}`)];
}

function groupInWords(group: readonly LeftOut[]): string {
  const { reason } = group[0]!;
  const transects = group.flatMap((one) => (one.transect === null ? [] : [one.transect]));
  if (transects.length < 2) return sentence('en', reason);
  return sentence('en', { ...reason, parameters: { ...reason.parameters, transect: transects.join(', ') } });
}

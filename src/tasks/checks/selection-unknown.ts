import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';

/** Nobody wrote down how the stations were chosen. */
export const check = checkOf('selection-unknown', ({ inHand }) => {
  const { stations, survey } = inHand;
  const unknown = stations.filter((one) => one.record.selection === null).length;
  if (unknown === 0) return [];
  const parameters = { stations: unknown, of: stations.length };
  return [problemOf('selection-unknown', { survey: survey.name }, { value: unknown, parameters })];
});

import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';

/** Hand-picked stations speak for themselves, random ones for the area. */
export const check = checkOf('selection-mixed', ({ inHand }) => {
  const { stations, survey } = inHand;
  const handPicked = stations.filter((one) => one.record.selection === 'hand-picked').length;
  if (handPicked === 0 || handPicked === stations.length) return [];
  const parameters = { handPicked, random: stations.length - handPicked };
  return [problemOf('selection-mixed', { survey: survey.name }, { value: handPicked, parameters })];
});

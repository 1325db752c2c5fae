import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';

/** No list of target species was given, so one was made from what was seen. */
export const check = checkOf('targets-assumed', ({ inHand, targetList }) => {
  if (targetList.madeFrom === 'declared') return [];
  const list = targetList.species.map((species) => species.name).join(', ');
  const parameters = { species: list, madeFrom: targetList.madeFrom };
  const value = targetList.species.length;
  return [problemOf('targets-assumed', { survey: inHand.survey.name }, { value, parameters })];
});

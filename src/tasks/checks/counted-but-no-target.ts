import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';

/** Counted somewhere without being on the list of what was looked for: elsewhere it may not have been looked for. */
export const check = checkOf('counted-but-no-target', ({ inHand, targetList }) =>
  targetList.undeclared.map((species) =>
    problemOf(
      'counted-but-no-target',
      { survey: inHand.survey.name, species: species.name },
      { value: species.name },
    ),
  ),
);
